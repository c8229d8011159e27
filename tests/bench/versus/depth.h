// SPDX-License-Identifier: MIT
#pragma once
// How deep one convex outline is in another: what no library but Box2D answers, and what tells
// touching from overlapping. The same few lines for all that lack it.

#include <algorithm>
#include <limits>

#include "engine/geometry/polygon.h"

namespace boughwork {

/// How far outside of a side of `a` all of `b` stays at the most; negative: how far it reaches behind each.
inline double most_outside_mm(const Polygon& a, const Polygon& b) {
    double most = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < a.size(); ++i) {
        const Segment s = side(a, i);
        double least = std::numeric_limits<double>::infinity();
        for (const Vec2 corner : b) least = std::min(least, cross(corner - s.from, s.to - s.from));
        most = std::max(most, least / length(s));
    }
    return most;
}

/// The shortest push that separates two outlines that overlap.
inline double depth_mm(const Polygon& a, const Polygon& b) {
    return -std::max(most_outside_mm(a, b), most_outside_mm(b, a));
}

}  // namespace boughwork
