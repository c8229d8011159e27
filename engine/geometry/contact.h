// SPDX-License-Identifier: MIT
#pragma once
// How two convex shapes stand to each other (rulebook 1).

#include "engine/geometry/polygon.h"

namespace boughwork {

/// The signed distance, and where it is measured.
struct Gap {
    double distance_mm = 0;  ///< Euclidean when apart; minus the penetration depth when overlapping.
    Segment between;         ///< From a point of the first shape to a point of the second.
    Vec2 way_out;            ///< Unit: moving the second shape this way opens the gap soonest.
};

/// Of two convex polygons with area. The penetration depth is the shortest push that separates
/// them; for convex polygons it is along the normal of a side of one of them.
Gap gap(const Polygon& a, const Polygon& b);

enum class Contact { apart, touching, overlapping };

Contact contact(double signed_distance_mm, double tolerance_mm);

enum class Touch { along_a_side, corner_to_corner, corner_to_side };

/// The kind of a touch; meaningful when contact() says touching.
/// Along a side: two sides face each other and the part of one that is within t of the other is
/// longer than 3 t. Corner to corner, if not: two corners within 2 t. Corner to side: the rest.
Touch touch(const Polygon& a, const Polygon& b, double tolerance_mm);

}  // namespace boughwork
