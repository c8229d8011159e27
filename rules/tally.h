// SPDX-License-Identifier: MIT
#pragma once
// What counts, in points (rulebook 8). The one place where a score comes from.

#include <cstdint>
#include <vector>

#include "rules/report.h"

namespace boughwork {

/// What a piece is worth by the challenge's way of scoring, in whole steps (in half square steps for
/// area), so that two worths compare exactly.
std::int64_t worth(const Measures& measures, const Scoring& scoring);

/// A worth, or a sum of worths, in points.
double points(std::int64_t worth, const Challenge& challenge);

/// One line for each bonus of the challenge, earned or not. Needs the pieces' states and depths and
/// the challenge's lines of `report`.
std::vector<BonusLine> bonus_lines(const Challenge& challenge, const Report& report);

/// Of the pieces that count: their perimeters together, and their points without bonuses.
std::int64_t counting_perimeter_in_steps(const Report& report);
double counting_points(const Challenge& challenge, const Report& report);

/// The points of the pieces that count, and the bonuses.
double score(const Challenge& challenge, const Report& report);

}  // namespace boughwork
