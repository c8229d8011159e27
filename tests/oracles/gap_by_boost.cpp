// SPDX-License-Identifier: MIT
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/multi_point.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include "tests/oracles/exact_gap.h"

namespace boughwork::oracles {
namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<Rational>;
using BoostPolygon = bg::model::polygon<Point, /*ClockWise=*/false, /*Closed=*/true>;

Point point(const Place& place) { return {place.x, place.y}; }

BoostPolygon outline(const ExactPolygon& places) {
    BoostPolygon made;
    for (const Place& place : places) bg::append(made.outer(), point(place));
    bg::append(made.outer(), point(places.front()));
    return made;
}

bg::model::linestring<Point> border(const BoostPolygon& polygon) {
    return {polygon.outer().begin(), polygon.outer().end()};
}

}  // namespace

ExactGap gap_by_boost(const Polygon& a, const Polygon& b) {
    const ExactPolygon of_a = exact(a);
    const ExactPolygon of_b = exact(b);
    // Comparable is the square: rational numbers have no root.
    const Rational apart = bg::comparable_distance(outline(of_a), outline(of_b));
    if (apart > 0) return {apart, false};

    bg::model::multi_point<Point> differences;
    for (const Place& p : of_a)
        for (const Place& q : of_b) bg::append(differences, point(p - q));
    BoostPolygon hull;
    bg::convex_hull(differences, hull);
    const Point origin(0, 0);
    return {bg::comparable_distance(origin, border(hull)), bg::within(origin, hull)};
}

ExactPlace placed_by_boost(Vec2 place, const Polygon& polygon) {
    const BoostPolygon made = outline(exact(polygon));
    const Point at = point(exact(place));
    return {bg::covered_by(at, made), bg::comparable_distance(at, border(made))};
}

}  // namespace boughwork::oracles
