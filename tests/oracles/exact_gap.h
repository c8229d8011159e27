// SPDX-License-Identifier: MIT
#pragma once
// The signed distance of rulebook 1 in exact numbers, by two libraries that know nothing of each other
// nor of this program. The shortest push that separates two shapes is the way from the origin to the
// border of their Minkowski difference, the hull of all differences of their corners.

#include "tests/oracles/exact_polygon.h"

namespace boughwork::oracles {

/// The square of the distance or depth, and which it is: the distance itself is hardly ever rational.
struct ExactGap {
    Rational squared_mm2;
    bool overlapping = false;  ///< By more than nothing.

    friend bool operator==(const ExactGap& a, const ExactGap& b) {
        return a.squared_mm2 == b.squared_mm2 && a.overlapping == b.overlapping;
    }
};

/// True when the signed distance is more than `limit_mm`, which may be negative.
inline bool is_more_than(const ExactGap& gap, const Rational& limit_mm) {
    const Rational squared = limit_mm * limit_mm;
    if (gap.overlapping) return limit_mm < 0 && gap.squared_mm2 < squared;
    return limit_mm < 0 || gap.squared_mm2 > squared;
}

/// CGAL, exact kernel: the convex hull of the differences.
ExactGap gap_by_cgal(const Polygon& a, const Polygon& b);

/// CGAL, exact kernel: minkowski_sum_2 of one and the other turned half round. Slower.
ExactGap gap_by_cgal_minkowski_sum(const Polygon& a, const Polygon& b);

/// Boost.Geometry on rational numbers: the distance of the outlines themselves, and the hull of the differences
/// where they meet. Slower still.
ExactGap gap_by_boost(const Polygon& a, const Polygon& b);

/// Of one outline, by CGAL: the sum of the triangles around its first corner.
struct ExactOutline {
    Rational area_mm2;
    Place centroid;
};
ExactOutline measured_by_cgal(const Polygon& polygon);

/// Of a place and an outline, by Boost.Geometry. The border counts as inside.
struct ExactPlace {
    bool inside = false;
    Rational squared_mm2_from_border;
};
ExactPlace placed_by_boost(Vec2 place, const Polygon& polygon);

}  // namespace boughwork::oracles
