// SPDX-License-Identifier: MIT
#pragma once
// Stretches along a line, and where a line runs inside a shape. Places along a segment are
// distances in mm from its first end.

#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

/// From `low` to `high`; empty when high <= low.
struct Interval {
    double low = 0;
    double high = 0;

    bool empty() const { return high <= low; }
    double size() const { return empty() ? 0 : high - low; }
    friend bool operator==(const Interval&, const Interval&) = default;
};

Interval intersection(Interval a, Interval b);

/// What is left of `whole` without the `parts`, in order.
std::vector<Interval> without(Interval whole, std::vector<Interval> parts);

/// The stretch of `segment` inside a convex polygon.
Interval inside_convex(const Segment& segment, const Polygon& convex);

/// The stretch of `segment` that is within `reach_mm` of `other` (its capsule, which is convex).
Interval within_reach(const Segment& segment, const Segment& other, double reach_mm);

}  // namespace boughwork
