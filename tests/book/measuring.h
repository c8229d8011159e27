// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 7: what ruler and protractor say, and how a piece is named.

#include "engine/challenge.h"
#include "rules/description.h"
#include "rules/report.h"
#include "tests/book/paper.h"
#include "tests/book/tolerance.h"

namespace boughwork::book {

/// Rulebook 7's own words for a note.
inline constexpr const char* cannot_make_it = "rounded sides can't make this triangle";

/// Sides, perimeter, height, area and kinds.
Measures measured(const Shape& shape, const Challenge& challenge, Scales& scales);

/// Angles and notes. The name in words is left out.
Description described(const Shape& shape, const Measures& measures, const Challenge& challenge, Scales& scales);

/// A piece counts for its side kind and for its angle kind; an equilateral one may be isosceles too.
bool is_of_kind(const Measures& measures, Kind kind, const Challenge& challenge);

/// Two pieces are alike when all their measured distances between corners, sorted, agree.
bool alike(const Shape& a, const Shape& b, const Step& step);

}  // namespace boughwork::book
