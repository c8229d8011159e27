// SPDX-License-Identifier: MIT
#pragma once
// Convex outlines in the picture: cut off, made narrower or wider, and the roomiest place inside
// one. In px; every outline has a positive signed_area(), so its inside lies to the left of its
// sides as engine/geometry counts them, whatever way the eye sees it.

#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

/// All that lies in the direction of `inward` from a line; `inward` has unit length.
struct HalfPlane {
    Vec2 inward;
    double offset = 0;  ///< Inside: dot(inward, point) >= offset.
};

/// The half-plane whose edge goes through `point`.
inline HalfPlane half_plane(Vec2 point, Vec2 inward) { return {inward, dot(inward, point)}; }

/// One half-plane a side, in the order of the sides; `by` moves the edges inward.
std::vector<HalfPlane> half_planes(const Polygon& convex, double by = 0);

/// What of the outline lies in the half-plane; empty: nothing.
Polygon cut(const Polygon& convex, const HalfPlane& half_plane);
/// What of the outline lies in all of `window`.
Polygon cut(const Polygon& convex, const Polygon& window);
/// The stretches of a line that lie in `window`.
std::vector<Segment> cut_line(const std::vector<Vec2>& points, bool closed, const Polygon& window);

/// True when the two have more than an edge in common; without making the part that they share.
bool overlapping(const Polygon& a, const Polygon& b);

/// Every side moved inward; empty when nothing is left.
Polygon shrunk(const Polygon& convex, double by);
/// Every side moved outward, sharp corners cut off.
Polygon grown(const Polygon& convex, double by);

/// In enough corners to look round.
Polygon circle(Vec2 centre, double radius);
Polygon rectangle(Vec2 centre, Vec2 size);

/// Turned, if need be, so that its signed_area() is positive.
Polygon inside_left(Polygon outline);

/// Where in the half-planes (which together close an area) a rectangle of half that size stands
/// with most to spare on its narrowest side; negative: it sticks out by as much.
struct Room {
    Vec2 at;
    double to_spare = 0;
};
Room roomiest(const std::vector<HalfPlane>& half_planes, Vec2 half_size);

}  // namespace boughwork
