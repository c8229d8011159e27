// SPDX-License-Identifier: MIT
#pragma once
// Shapes of paper: what is possible (decided exactly), and their outlines in the plan.

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "engine/geometry/polygon.h"
#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

/// More than paper and scissors can make; it bounds the time that all pairs of corners take.
inline constexpr std::size_t most_corners = 100;

/// Why the shape cannot be cut, or Done. Exact: a triangle needs any two sides longer together than
/// the third (Euclid I.20); an outline must be convex, clockwise, with no straight corner; a cone's
/// slant must be longer than its radius; every length must be positive. At most most_corners.
Result<Done> possible(const Shape& shape);

/// The corners in the piece's own frame, in the order of their numbers (clockwise, y up): corner 1
/// at (0, 0), corner 2 along +x from it for triangles and cones, the rest below.
std::vector<Vec2> corners_mm(const Shape& shape);

/// The corners where the pose puts them, still in the order of their numbers.
std::vector<Vec2> corners_mm(const Shape& shape, const Pose& pose);

/// The posed outline counter-clockwise.
struct PosedShape {
    Polygon outline;
    bool flipped = false;

    /// The number, from 1, of the paper side that lies on side i of `outline`. Clockwise on paper, a
    /// flipped shape is counter-clockwise already; else the corners are taken backwards, n ... 1.
    int side_number(std::size_t i) const {
        const std::size_t n = outline.size();
        return static_cast<int>(flipped ? i + 1 : i + 1 < n ? n - 1 - i : n);
    }
};
PosedShape posed(const Shape& shape, const Pose& pose);

/// How many sides the piece can hang by, counted from side 1: all, or a cone's base alone.
std::size_t hanging_sides(const Shape& shape);

/// True area; and the least height, the smallest distance between a side and the corner farthest from it.
double area_mm2(const Shape& shape);
double least_height_mm(const Shape& shape);

/// The inner angle at each corner, corner 1 first; true to the last digits even for needles.
std::vector<double> angles_rad(const Shape& shape);

// Exact values, for what must not hang on the last binary digit. Wide enough for squares and
// products of lengths up to 1e6 mm (2e9 half-micrometres).
__extension__ using Int128 = __int128;
__extension__ using Uint128 = unsigned __int128;

std::size_t corner_count(const Shape& shape);

/// Of a triangle, and of a cone seen from the side; absent for outlines.
std::optional<std::array<Length, 3>> three_sides(const Shape& shape);

/// The squared distance of two corners (from 0), in half-micrometres squared.
Int128 squared_distance(const Shape& shape, std::size_t corner_a, std::size_t corner_b);

/// How far the angle at a corner (from 0) is from a right one: positive when acute, 0 exactly when right.
double short_of_right_rad(const Shape& shape, std::size_t corner);

/// Twice the area, in half-micrometres squared.
Int128 twice_area(const Outline& outline);

/// (4 x area)^2 in half-micrometres^4. (Of outlines past half a kilometre: the largest number there is.)
Uint128 four_areas_squared(const Shape& shape);

}  // namespace boughwork
