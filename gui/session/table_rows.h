// SPDX-License-Identifier: MIT
#pragma once
// The data table as rows of text: a heading, then one row for each piece of the scene. Numbers are
// decimals, in inches too, so that a spreadsheet can reckon with them.

#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// Whether cells that are kept back from pupils (rules/told.h) are written or left empty.
enum class Telling { everything, what_is_told };

/// All rows have the same number of cells. What a piece does not have is an empty cell. The sides that
/// pupils measured, and who they were, stand behind all else.
std::vector<std::vector<std::string>> table_rows(const Scene& scene, const Plan& plan, const Report& report,
                                                 Telling telling = Telling::everything);

/// As in the table: "7.5", "2.125".
std::string table_length(Length length, Unit unit);
/// What was written on the piece, and what is to be noted of it: "red one; rounded sides can't make this triangle".
std::string table_note(const Piece& piece, const Measures& measures, const Challenge& challenge);

/// What holds the piece: "b1", "piece 3, side 2"; else "in the envelope" or "nothing".
std::string hangs_from_words(const Plan& plan, const PieceReport& piece);

/// "counts", "does not count" or "in the envelope", as in the contract of `check --json`.
const char* name_of(PieceState state);

/// The rules that it breaks: "ground; trunk".
std::string reasons_words(const PieceReport& piece);

}  // namespace boughwork
