// SPDX-License-Identifier: MIT
#include "engine/geometry/polygon.h"

#include <algorithm>
#include <cassert>

namespace boughwork {

Box bounds(const Polygon& polygon) {
    assert(!polygon.empty());
    Box box{polygon.front(), polygon.front()};
    for (const Vec2 p : polygon) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

double signed_area(const Polygon& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        // Seen from the first corner, so that a shape far from the origin loses no digits.
        const Segment s = side(polygon, i);
        twice += cross(s.from - polygon.front(), s.to - polygon.front());
    }
    return twice / 2;
}

Vec2 centroid(const Polygon& polygon) {
    assert(!polygon.empty());
    const Vec2 origin = polygon.front();
    Vec2 weighted;
    Vec2 mean;
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 a = side(polygon, i).from - origin;
        const Vec2 b = side(polygon, i).to - origin;
        weighted = weighted + cross(a, b) * (a + b);
        twice += cross(a, b);
        mean = mean + a;
    }
    if (twice == 0) return origin + (1.0 / static_cast<double>(polygon.size())) * mean;
    return origin + (1.0 / (3 * twice)) * weighted;
}

bool contains(const Polygon& convex, Vec2 point) {
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment s = side(convex, i);
        if (cross(s.to - s.from, point - s.from) < 0) return false;
    }
    return true;
}

}  // namespace boughwork
