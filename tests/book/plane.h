// SPDX-License-Identifier: MIT
#pragma once
// The book's own plane: points and segments in long double, so that its rounding is far below every
// tolerance. Plain textbook formulas; nothing here is shared with engine/geometry.

#include <cmath>
#include <utility>
#include <vector>

#include "engine/vec.h"

namespace boughwork::book {

using Real = long double;

inline constexpr Real half_turn_deg = 180;
inline constexpr Real half_turn_rad = 3.14159265358979323846264338327950288L;

struct Point {
    Real x = 0;
    Real y = 0;

    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend Point operator-(Point a) { return {-a.x, -a.y}; }
    friend Point operator*(Real k, Point a) { return {k * a.x, k * a.y}; }
};

inline Point point(Vec2 v) { return {v.x, v.y}; }
inline Real dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
inline Real cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
inline Real length(Point a) { return std::sqrt(dot(a, a)); }
inline Point unit(Point a) { return (1 / length(a)) * a; }
inline Point left_of(Point a) { return {-a.y, a.x}; }
/// 0 to 180.
inline Real angle_between_deg(Point a, Point b) {
    return std::atan2(std::abs(cross(a, b)), dot(a, b)) * half_turn_deg / half_turn_rad;
}

struct Segment {
    Point from;
    Point to;
};

inline Real length(const Segment& s) { return length(s.to - s.from); }
inline Point direction(const Segment& s) { return unit(s.to - s.from); }
inline Point at(const Segment& s, Real share) { return s.from + share * (s.to - s.from); }

/// A point for a segment without length.
Real distance(Point p, const Segment& s);

/// Its corners in either order round about.
using Corners = std::vector<Point>;

std::vector<Segment> sides_of(const Corners& corners);
/// Inside, or on the rim, of a convex shape.
bool inside(Point p, const Corners& convex);
/// The outward normal, of length 1, of side `index` of a convex shape.
Point outward_normal(const Corners& convex, std::size_t index);

/// A part of a segment, as shares of its length.
struct Part {
    Real from = 0;
    Real to = 0;
};

/// Where on `s` (as shares) the distance from `other` may pass through `reach`: more places than
/// necessary do no harm.
std::vector<Real> places_at_distance(const Segment& s, const Segment& other, Real reach);

/// The parts of `s` on which `holds` says yes, given all places where its answer may change.
template <class Holds>
std::vector<Part> parts_where(const Segment& s, std::vector<Real> changes, Holds holds);

/// `changes` in order, with both ends, without those off the segment or next to each other.
std::vector<Real> in_order(const Segment& s, std::vector<Real> changes);

template <class Holds>
std::vector<Part> parts_where(const Segment& s, std::vector<Real> changes, Holds holds) {
    changes = in_order(s, std::move(changes));
    std::vector<Part> parts;
    for (std::size_t i = 0; i + 1 < changes.size(); ++i) {
        if (!holds(at(s, (changes[i] + changes[i + 1]) / 2))) continue;
        if (!parts.empty() && parts.back().to == changes[i])
            parts.back().to = changes[i + 1];
        else
            parts.push_back({changes[i], changes[i + 1]});
    }
    return parts;
}

}  // namespace boughwork::book
