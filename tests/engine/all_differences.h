// SPDX-License-Identifier: MIT
#pragma once
// The rulebook's signed distance from its definition, slowly: a second opinion for the tests.

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork::testing {

/// The convex hull, counter-clockwise (Andrew's monotone chain).
inline Polygon hull(std::vector<Vec2> points) {
    std::sort(points.begin(), points.end(), [](Vec2 a, Vec2 b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    Polygon found;
    for (int half = 0; half < 2; ++half) {
        const std::size_t start = found.size();
        for (const Vec2 p : points) {
            while (found.size() >= start + 2 && cross(found.back() - found[found.size() - 2], p - found.back()) <= 0)
                found.pop_back();
            found.push_back(p);
        }
        found.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return found;
}

inline double distance_to(Vec2 p, const Segment& s) {
    const Vec2 along = s.to - s.from;
    const double share = std::fmin(1, std::fmax(0, dot(p - s.from, along) / dot(along, along)));
    return distance(p, s.from + share * along);
}

/// Shapes touch when one is shifted by a point on the border of the set of all differences (their
/// Minkowski difference), so the distance of the origin from that border is asked; negative inside.
inline double signed_distance_by_differences(const Polygon& a, const Polygon& b) {
    std::vector<Vec2> differences;
    for (const Vec2 p : a)
        for (const Vec2 q : b) differences.push_back(p - q);
    const Polygon all = hull(differences);
    double nearest = HUGE_VAL;
    bool inside = true;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Segment edge = side(all, i);
        nearest = std::fmin(nearest, distance_to({0, 0}, edge));
        inside = inside && cross(edge.to - edge.from, -edge.from) > 0;
    }
    return inside ? -nearest : nearest;
}

}  // namespace boughwork::testing
