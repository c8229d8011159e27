// SPDX-License-Identifier: MIT
#include "engine/geometry/interval.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace boughwork {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr Interval nothing{infinity, -infinity};

/// Where low <= start + slope * s <= high.
Interval between(double start, double slope, double low, double high) {
    if (slope == 0) return start >= low && start <= high ? Interval{-infinity, infinity} : nothing;
    const double a = (low - start) / slope;
    const double b = (high - start) / slope;
    return {std::min(a, b), std::max(a, b)};
}

/// Where the line from + s * along (unit) runs through the disc.
Interval inside_disc(Vec2 from, Vec2 along, Vec2 middle, double radius) {
    const double foot = dot(middle - from, along);
    const double off = cross(along, middle - from);
    if (std::abs(off) > radius) return nothing;
    const double half = std::sqrt((radius - off) * (radius + off));
    return {foot - half, foot + half};
}

/// The smallest interval that holds both; what is empty adds nothing.
Interval hull(Interval a, Interval b) {
    if (a.high < a.low) return b;
    if (b.high < b.low) return a;
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

}  // namespace

Interval intersection(Interval a, Interval b) { return {std::max(a.low, b.low), std::min(a.high, b.high)}; }

std::vector<Interval> without(Interval whole, std::vector<Interval> parts) {
    std::sort(parts.begin(), parts.end(), [](Interval a, Interval b) { return a.low < b.low; });
    std::vector<Interval> left;
    double from = whole.low;
    for (const Interval part : parts) {
        if (part.empty()) continue;
        const Interval before{from, std::min(part.low, whole.high)};
        if (!before.empty()) left.push_back(before);
        from = std::max(from, part.high);
    }
    const Interval rest{from, whole.high};
    if (!rest.empty()) left.push_back(rest);
    return left;
}

Interval inside_convex(const Segment& segment, const Polygon& convex) {
    const Vec2 along = direction(segment);
    Interval inside{0, length(segment)};
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment s = side(convex, i);
        const Vec2 normal = outward_normal(s);
        inside = intersection(inside, between(dot(segment.from - s.from, normal), dot(along, normal), -infinity, 0));
    }
    return inside;
}

Interval within_reach(const Segment& segment, const Segment& other, double reach_mm) {
    const Vec2 along = direction(segment);
    const Vec2 other_along = direction(other);
    const Vec2 start = segment.from - other.from;
    // The capsule is a rectangle and two discs; being convex it meets a line in one interval,
    // so the hull of the three meetings is the whole of it.
    const Interval rectangle =
        intersection(between(dot(start, other_along), dot(along, other_along), 0, length(other)),
                     between(cross(other_along, start), cross(other_along, along), -reach_mm, reach_mm));
    const Interval first = inside_disc(segment.from, along, other.from, reach_mm);
    const Interval last = inside_disc(segment.from, along, other.to, reach_mm);
    return intersection({0, length(segment)}, hull(rectangle, hull(first, last)));
}

}  // namespace boughwork
