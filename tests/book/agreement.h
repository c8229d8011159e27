// SPDX-License-Identifier: MIT
#pragma once
// Where the program's report and the book's part ways, in words for the one who looks for the reason.

#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork::book {

/// Nothing when they agree wholly in what is decided: pieces, findings, lines, bonuses and score.
std::vector<std::string> disagreements(const Report& program, const Report& book);

/// The scene with all taken out that the disagreement does not need.
Scene shrunk(Scene scene);

}  // namespace boughwork::book
