// SPDX-License-Identifier: MIT
#pragma once
// A closed outline in the plan, counter-clockwise. Nearly all are convex (pieces, trunk, runs of a
// branch); functions that need that say so.

#include <cstddef>
#include <vector>

#include "engine/vec.h"

namespace boughwork {

struct Segment {
    Vec2 from;
    Vec2 to;
    friend bool operator==(const Segment&, const Segment&) = default;
};

using Polygon = std::vector<Vec2>;

/// Side i runs from corner i to the next; the inside lies on its left.
inline Segment side(const Polygon& polygon, std::size_t i) {
    return {polygon[i], polygon[i + 1 < polygon.size() ? i + 1 : 0]};
}

/// Unit length; zero for a segment without length.
inline Vec2 direction(const Segment& s) { return unit(s.to - s.from); }
/// To the right of the segment: out of a counter-clockwise polygon.
inline Vec2 outward_normal(const Segment& s) { return -quarter_turned_ccw(direction(s)); }
inline double length(const Segment& s) { return distance(s.from, s.to); }

struct Box {
    Vec2 low;
    Vec2 high;
};

/// Of at least one corner.
Box bounds(const Polygon& polygon);

/// True when the boxes are no farther apart than `gap_mm` along both axes.
inline bool within_gap(const Box& a, const Box& b, double gap_mm) {
    return a.low.x <= b.high.x + gap_mm && b.low.x <= a.high.x + gap_mm && a.low.y <= b.high.y + gap_mm &&
           b.low.y <= a.high.y + gap_mm;
}

/// The point half-way in area, of at least three corners with area; else the corners' mean.
Vec2 centroid(const Polygon& polygon);

/// Positive for a counter-clockwise outline (shoelace).
double signed_area(const Polygon& polygon);

/// The boundary counts as inside. Convex polygons only.
bool contains(const Polygon& convex, Vec2 point);

}  // namespace boughwork
