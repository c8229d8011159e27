// SPDX-License-Identifier: MIT
#pragma once
// Shapes of paper: what is possible (decided exactly), and their outlines in the plan.

#include <array>
#include <cstdint>
#include <vector>

#include "engine/geometry/polygon.h"
#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

/// Why the shape cannot be cut, or Done. Exact: a triangle needs any two sides longer together than
/// the third (Euclid I.20); an outline must be convex, clockwise, with no straight corner; a cone's
/// slant must be longer than its radius; every length must be positive.
Result<Done> possible(const Shape& shape);

/// The corners in the piece's own frame, in the order of their numbers (clockwise, y up): corner 1
/// at (0, 0), corner 2 along +x from it for triangles and cones, the rest below.
std::vector<Vec2> corners_mm(const Shape& shape);

/// The corners where the pose puts them, still in the order of their numbers.
std::vector<Vec2> corners_mm(const Shape& shape, const Pose& pose);

/// The posed outline counter-clockwise. `side_numbers[i]` is the number, from 1, of the paper side
/// that lies on side i of `outline`.
struct PosedShape {
    Polygon outline;
    std::vector<int> side_numbers;
};
PosedShape posed(const Shape& shape, const Pose& pose);

/// How many sides the piece can hang by, counted from side 1: all, or a cone's base alone.
std::size_t hanging_sides(const Shape& shape);

/// The squared length, in half-micrometres squared, of the distance between two corners: exact.
/// `__int128` because a square of 1e6 mm is 4e18 and sums of two must fit.
__extension__ using Int128 = __int128;
std::vector<std::vector<Int128>> squared_distances(const Shape& shape);

}  // namespace boughwork
