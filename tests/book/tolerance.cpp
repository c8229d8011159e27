// SPDX-License-Identifier: MIT
#include "tests/book/tolerance.h"

#include <algorithm>

namespace boughwork::book {

namespace {

/// Counter-clockwise, by walking along the lower and then the upper rim from left to right.
Corners convex_hull(Corners points) {
    std::sort(points.begin(), points.end(), [](Point a, Point b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
    const auto rim = [](const Corners& in_order) {
        Corners kept;
        for (const Point p : in_order) {
            while (kept.size() > 1 && cross(kept.back() - kept[kept.size() - 2], p - kept.back()) <= 0) kept.pop_back();
            kept.push_back(p);
        }
        kept.pop_back();
        return kept;
    };
    Corners hull = rim(points);
    std::reverse(points.begin(), points.end());
    for (const Point p : rim(points)) hull.push_back(p);
    return hull;
}

constexpr Real agreement_deg = 5;

/// How much of `a` is within `reach` of `b`.
Real part_near(const Segment& a, const Segment& b, Real reach) {
    Real near = 0;
    for (const Part part :
         parts_where(a, places_at_distance(a, b, reach), [&](Point p) { return distance(p, b) <= reach; }))
        near += (part.to - part.from) * length(a);
    return near;
}

/// Rulebook 1: "the part of one of them that is within t of the other is longer than 3 t".
bool face_for_long(const Segment& a, const Segment& b, Scales& scales) {
    const auto longest_part = [&](Real reach) { return std::max(part_near(a, b, reach), part_near(b, a, reach)); };
    const Real least = 3 * scales.t;
    // Sides that run t apart and nearly parallel come near on a long part all at once.
    if ((longest_part(scales.t + hair_mm / 2) > least) != (longest_part(scales.t + hair_mm * 2) > least))
        scales.doubt();
    return scales.more(longest_part(scales.t + hair_mm), least);
}

bool along_a_side(const Corners& a, const Corners& b, Scales& scales) {
    const std::vector<Segment> sides_a = sides_of(a);
    const std::vector<Segment> sides_b = sides_of(b);
    bool found = false;
    for (std::size_t i = 0; i < sides_a.size(); ++i)
        for (std::size_t j = 0; j < sides_b.size(); ++j)
            if (agree(outward_normal(a, i), -outward_normal(b, j), scales) &&
                face_for_long(sides_a[i], sides_b[j], scales))
                found = true;
    return found;
}

bool corner_to_corner(const Corners& a, const Corners& b, Scales& scales) {
    for (const Point p : a)
        for (const Point q : b)
            if (scales.at_most(length(p - q), 2 * scales.t)) return true;
    return false;
}

}  // namespace

Real signed_distance(const Corners& a, const Corners& b) {
    // The shapes meet just where the difference of a point of each is zero; those differences fill the
    // convex hull of the corners' differences. The way from zero to its rim is what parts or joins them.
    Corners differences;
    for (const Point p : a)
        for (const Point q : b) differences.push_back(q - p);
    const Corners hull = convex_hull(std::move(differences));
    Real to_rim = INFINITY;
    for (const Segment& s : sides_of(hull)) to_rim = std::min(to_rim, distance(Point{}, s));
    return inside(Point{}, hull) ? -to_rim : to_rim;
}

bool agree(Point a, Point b, Scales& scales) { return !scales.beyond(angle_between_deg(a, b), agreement_deg); }

bool down_or_sideways(Point normal, Scales& scales) {
    return !scales.beyond(normal.y, std::sin(agreement_deg * half_turn_rad / half_turn_deg));
}

Contact contact(Real d, Scales& scales) {
    if (scales.more(d, scales.t)) return Contact::apart;
    return scales.less(d, -scales.t) ? Contact::overlapping : Contact::touching;
}

Touch touch(const Corners& a, const Corners& b, Scales& scales) {
    if (along_a_side(a, b, scales)) return Touch::along_a_side;
    return corner_to_corner(a, b, scales) ? Touch::corner_to_corner : Touch::corner_to_side;
}

}  // namespace boughwork::book
