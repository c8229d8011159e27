// SPDX-License-Identifier: MIT
#include "tests/book/plane.h"

#include <algorithm>

namespace boughwork::book {

Real distance(Point p, const Segment& s) {
    const Real l = length(s);
    if (l == 0) return length(p - s.from);
    const Real along = dot(p - s.from, direction(s));
    if (along <= 0) return length(p - s.from);
    if (along >= l) return length(p - s.to);
    return std::abs(cross(direction(s), p - s.from));
}

std::vector<Segment> sides_of(const Corners& corners) {
    std::vector<Segment> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back({corners[i], corners[(i + 1) % corners.size()]});
    return sides;
}

namespace {

Point middle_of(const Corners& corners) {
    Point sum;
    for (const Point c : corners) sum = sum + c;
    return (Real{1} / static_cast<Real>(corners.size())) * sum;
}

}  // namespace

Point outward_normal(const Corners& convex, std::size_t index) {
    const Segment s = sides_of(convex)[index];
    const Point normal = left_of(direction(s));
    return dot(normal, middle_of(convex) - s.from) < 0 ? normal : -normal;
}

bool inside(Point p, const Corners& convex) {
    for (std::size_t i = 0; i < convex.size(); ++i)
        if (dot(p - convex[i], outward_normal(convex, i)) > 0) return false;
    return true;
}

std::vector<Real> places_at_distance(const Segment& s, const Segment& other, Real reach) {
    std::vector<Real> places;
    const Point step = s.to - s.from;
    // The round ends about the corners of `other` ...
    for (const Point centre : {other.from, other.to}) {
        const Real a = dot(step, step);
        const Real b = dot(step, s.from - centre);
        const Real c = dot(s.from - centre, s.from - centre) - reach * reach;
        const Real under_root = b * b - a * c;
        if (under_root < 0) continue;
        places.push_back((-b - std::sqrt(under_root)) / a);
        places.push_back((-b + std::sqrt(under_root)) / a);
    }
    // ... and the two lines beside it.
    const Point normal = left_of(direction(other));
    const Real slope = dot(step, normal);
    if (slope != 0)
        for (const Real side : {-reach, reach}) places.push_back((side - dot(s.from - other.from, normal)) / slope);
    return places;
}

std::vector<Real> in_order(const Segment& s, std::vector<Real> changes) {
    const Real next_to = 1e-10L / length(s);
    std::sort(changes.begin(), changes.end());
    std::vector<Real> kept{0};
    for (const Real place : changes)
        if (place > kept.back() + next_to && place < 1 - next_to) kept.push_back(place);
    kept.push_back(1);
    return kept;
}

}  // namespace boughwork::book
