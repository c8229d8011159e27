// SPDX-License-Identifier: MIT
#pragma once
// Where in the plan a finding is, as a mark over everything: a ring about a point, or a bar between
// two points with a stop at each end.

#include <vector>

#include "engine/drawing/drawing.h"

namespace boughwork {

/// `where_px` as the finding says it; empty: nothing is drawn.
void draw_finding(std::vector<Mark>& marks, const std::vector<Vec2>& where_px, double scale);

/// A bar with a stop at each end, as on a drawing with measures; of no length, a point.
void draw_bar(std::vector<Mark>& marks, Vec2 from, Vec2 to, Colour colour, double scale);

}  // namespace boughwork
