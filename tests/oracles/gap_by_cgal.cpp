// SPDX-License-Identifier: MIT
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/convex_hull_2.h>
#include <CGAL/minkowski_sum_2.h>

#include <iterator>

#include "tests/oracles/exact_gap.h"

namespace boughwork::oracles {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Point = Kernel::Point_2;
using CgalPolygon = CGAL::Polygon_2<Kernel>;

std::vector<Point> points(const Polygon& polygon) {
    std::vector<Point> made;
    for (const Vec2 corner : polygon) made.emplace_back(corner.x, corner.y);
    return made;
}

Rational rational(const Kernel::FT& number) { return Rational(CGAL::exact(number).get_mpq_t()); }

/// From the origin to the border of a convex polygon.
ExactGap gap_to(const CgalPolygon& differences) {
    const Point origin(CGAL::ORIGIN);
    Kernel::FT least = -1;
    bool inside = true;
    for (auto side = differences.edges_begin(); side != differences.edges_end(); ++side) {
        const Kernel::FT squared = CGAL::squared_distance(origin, Kernel::Segment_2(*side));
        if (least < 0 || squared < least) least = squared;
        inside = inside && CGAL::left_turn(side->source(), side->target(), origin);
    }
    return {rational(least), inside};
}

}  // namespace

ExactGap gap_by_cgal(const Polygon& a, const Polygon& b) {
    const std::vector<Point> of_b = points(b);
    std::vector<Point> differences;
    for (const Point& p : points(a))
        for (const Point& q : of_b) differences.push_back(CGAL::ORIGIN + (p - q));
    CgalPolygon hull;
    CGAL::convex_hull_2(differences.begin(), differences.end(), std::back_inserter(hull));
    return gap_to(hull);
}

ExactGap gap_by_cgal_minkowski_sum(const Polygon& a, const Polygon& b) {
    const std::vector<Point> of_a = points(a);
    CgalPolygon turned;
    for (const Point& q : points(b)) turned.push_back(CGAL::ORIGIN - (q - CGAL::ORIGIN));
    return gap_to(CGAL::minkowski_sum_2(CgalPolygon(of_a.begin(), of_a.end()), turned).outer_boundary());
}

ExactOutline measured_by_cgal(const Polygon& polygon) {
    const std::vector<Point> corners = points(polygon);
    Kernel::FT area = 0;
    CGAL::Vector_2<Kernel> weighted = CGAL::NULL_VECTOR;
    for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
        const Kernel::FT part = CGAL::area(corners[0], corners[i], corners[i + 1]);
        area += part;
        weighted = weighted + part * (CGAL::centroid(corners[0], corners[i], corners[i + 1]) - CGAL::ORIGIN);
    }
    return {rational(area), {rational(weighted.x() / area), rational(weighted.y() / area)}};
}

}  // namespace boughwork::oracles
