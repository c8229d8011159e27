// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 8: points and bonuses.

#include "rules/report.h"
#include "tests/book/paper.h"

namespace boughwork::book {

/// By longest side, perimeter or area, in half steps (of an area half square steps): a whole number.
std::int64_t points_in_half_steps(const Measures& measures, ScoreBy by);

/// In the unit of one point.
double points(const Measures& measures, const Challenge& challenge);

/// Of one bonus, once the pieces and the criteria have been decided.
double points(const Bonus& bonus, const Report& report, const Challenge& challenge);

}  // namespace boughwork::book
