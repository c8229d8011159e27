// SPDX-License-Identifier: MIT
#pragma once
// The data table as rows of text: a heading, then one row for each piece of the scene. Numbers are
// decimals, in inches too, so that a spreadsheet can reckon with them.

#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// All rows have the same number of cells. What a piece does not have is an empty cell.
std::vector<std::vector<std::string>> table_rows(const Scene& scene, const Plan& plan, const Report& report);

/// What holds the piece: "b1", "piece 3, side 2"; else "in the envelope" or "nothing".
std::string hangs_from_words(const Plan& plan, const PieceReport& piece);

/// "counts", "does not count" or "in the envelope", as in the contract of `check --json`.
const char* name_of(PieceState state);

/// The rules that it breaks: "ground; trunk".
std::string reasons_words(const PieceReport& piece);

}  // namespace boughwork
