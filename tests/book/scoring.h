// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 8: points and bonuses.

#include "rules/report.h"
#include "tests/book/paper.h"

namespace boughwork::book {

/// By longest side, perimeter or area, in the smallest parts that points come in: steps, or half square
/// steps of an area. A whole number.
std::int64_t points_in_parts(const Measures& measures, ScoreBy by);

/// One such part, in the unit of one point.
Real one_part(const Challenge& challenge);

/// In the unit of one point.
double points(const Measures& measures, const Challenge& challenge);

/// Of one bonus, once the pieces and the criteria have been decided.
double points(const Bonus& bonus, const Report& report, const Challenge& challenge);

}  // namespace boughwork::book
