// SPDX-License-Identifier: MIT
#include "engine/geometry/contact.h"

#include <algorithm>
#include <limits>

#include "engine/geometry/interval.h"
#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

/// Of places that differ by no more than the noise of reckoning, the first is taken: a gap is told at the same place
/// after the plan is shifted, and on every machine. How wide it is remains exact.
constexpr double noise_mm = 1e-11;

/// The side of `convex` outside whose line `other` stays farthest, and how far (negative: inside).
struct Separation {
    double distance_mm = -std::numeric_limits<double>::infinity();
    Segment side;
};

double least_beyond(const Segment& side, const Polygon& other) {
    const Vec2 normal = outward_normal(side);
    double least = std::numeric_limits<double>::infinity();
    for (const Vec2 corner : other) least = std::min(least, dot(normal, corner - side.from));
    return least;
}

Separation widest_separation(const Polygon& convex, const Polygon& other) {
    Separation widest;
    double beyond_side = widest.distance_mm;
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment s = side(convex, i);
        const double beyond = least_beyond(s, other);
        widest.distance_mm = std::max(widest.distance_mm, beyond);
        if (beyond <= beyond_side + noise_mm) continue;
        beyond_side = beyond;
        widest.side = s;
    }
    return widest;
}

/// From the side to the part of `other` that lies deepest behind it: of a corner its foot on the side; of
/// a parallel side the middle of what the two share.
Segment deepest(const Separation& separation, const Polygon& other) {
    const Vec2 along = direction(separation.side);
    const Vec2 normal = outward_normal(separation.side);
    Interval reaches{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    for (const Vec2 corner : other) {
        const Vec2 place = corner - separation.side.from;
        if (more_than_mm(dot(normal, place), separation.distance_mm)) continue;
        reaches = {std::min(reaches.low, dot(along, place)), std::max(reaches.high, dot(along, place))};
    }
    const Interval shared = intersection(reaches, {0, length(separation.side)});
    const Vec2 foot = separation.side.from + (shared.low + shared.high) / 2 * along;
    return {foot, foot + separation.distance_mm * normal};
}

Vec2 nearest_on(const Segment& s, Vec2 point) {
    const Vec2 along = s.to - s.from;
    const double l2 = dot(along, along);
    const double share = l2 > 0 ? std::clamp(dot(point - s.from, along) / l2, 0.0, 1.0) : 0.0;
    return s.from + share * along;
}

/// The shortest way from a corner of one shape to a side of another.
struct Way {
    double length_mm = std::numeric_limits<double>::infinity();
    Segment between;
};

Way shortest_to_side(const Polygon& corners, const Polygon& sides) {
    Way shortest;
    double along_way = shortest.length_mm;
    for (const Vec2 corner : corners) {
        for (std::size_t i = 0; i < sides.size(); ++i) {
            const Vec2 foot = nearest_on(side(sides, i), corner);
            const double d = distance(corner, foot);
            shortest.length_mm = std::min(shortest.length_mm, d);
            if (d + noise_mm >= along_way) continue;
            along_way = d;
            shortest.between = {corner, foot};
        }
    }
    return shortest;
}

bool touch_along_a_side(const Polygon& a, const Polygon& b, double tolerance_mm) {
    const double reach = tolerance_mm + hair_mm;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const Segment of_a = side(a, i);
        const Vec2 normal_a = outward_normal(of_a);
        for (std::size_t k = 0; k < b.size(); ++k) {
            const Segment of_b = side(b, k);
            if (!face_each_other(normal_a, outward_normal(of_b))) continue;
            const double shared =
                std::max(within_reach(of_a, of_b, reach).size(), within_reach(of_b, of_a, reach).size());
            if (more_than_mm(shared, 3 * tolerance_mm)) return true;
        }
    }
    return false;
}

}  // namespace

Gap gap(const Polygon& a, const Polygon& b) {
    const Separation from_a = widest_separation(a, b);
    const Separation from_b = widest_separation(b, a);
    const bool by_a = from_a.distance_mm + noise_mm >= from_b.distance_mm;
    const Separation widest{std::max(from_a.distance_mm, from_b.distance_mm), by_a ? from_a.side : from_b.side};
    const Vec2 away = by_a ? outward_normal(widest.side) : -outward_normal(widest.side);
    if (widest.distance_mm <= 0) {
        const Segment depth = deepest(widest, by_a ? b : a);
        return {.distance_mm = widest.distance_mm,
                .between = by_a ? depth : Segment{depth.to, depth.from},
                .way_out = away};
    }

    // Apart: two convex shapes are nearest at a corner of one and a side of the other.
    const Way a_to_b = shortest_to_side(a, b);
    const Way b_to_a = shortest_to_side(b, a);
    const Segment between = a_to_b.length_mm <= b_to_a.length_mm + noise_mm
                                ? a_to_b.between
                                : Segment{b_to_a.between.to, b_to_a.between.from};
    const double apart = std::min(a_to_b.length_mm, b_to_a.length_mm);
    return {.distance_mm = apart, .between = between, .way_out = apart > hair_mm ? direction(between) : away};
}

Contact contact(double signed_distance_mm, double tolerance_mm) {
    if (more_than_mm(signed_distance_mm, tolerance_mm)) return Contact::apart;
    return at_most_mm(-signed_distance_mm, tolerance_mm) ? Contact::touching : Contact::overlapping;
}

Touch touch(const Polygon& a, const Polygon& b, double tolerance_mm) {
    if (touch_along_a_side(a, b, tolerance_mm)) return Touch::along_a_side;
    for (const Vec2 corner_a : a)
        for (const Vec2 corner_b : b)
            if (at_most_mm(distance(corner_a, corner_b), 2 * tolerance_mm)) return Touch::corner_to_corner;
    return Touch::corner_to_side;
}

}  // namespace boughwork
