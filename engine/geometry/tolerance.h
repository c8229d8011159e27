// SPDX-License-Identifier: MIT
#pragma once
// The fixed tolerances of geometry; the challenge's own tolerance t is passed in where it matters.

#include "engine/vec.h"

namespace boughwork {

/// Directions agree when they differ by at most this (rulebook 1).
inline constexpr double same_direction_rad = 5.0 / degrees_per_radian;

/// A nanometre. A limit itself is allowed, and places are doubles: a distance this near to a limit
/// is the limit, so that the verdict is the same after the plan is shifted, mirrored or saved.
/// Far above the rounding of doubles within 1e6 mm, far below anything paper can show.
inline constexpr double hair_mm = 1e-6;
inline constexpr double hair_rad = 1e-9;

inline bool at_most_mm(double value, double limit) { return value <= limit + hair_mm; }
inline bool more_than_mm(double value, double limit) { return !at_most_mm(value, limit); }

/// Two unit outward normals that face each other: opposite within same_direction_rad.
inline bool face_each_other(Vec2 normal_a, Vec2 normal_b) {
    static const double limit = -std::cos(same_direction_rad + hair_rad);
    return dot(normal_a, normal_b) <= limit;
}

/// Down or sideways, give or take same_direction_rad: what something can hang from.
inline bool points_down_or_sideways(Vec2 unit_normal) {
    static const double limit = std::sin(same_direction_rad) + hair_rad;
    return unit_normal.y <= limit;
}

}  // namespace boughwork
