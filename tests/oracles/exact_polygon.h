// SPDX-License-Identifier: MIT
#pragma once
// Outlines in exact rational numbers, for the oracles: a double is a rational, and is taken as exactly
// that one. Nothing is rounded.

#include <boost/multiprecision/gmp.hpp>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork::oracles {

using Rational = boost::multiprecision::number<boost::multiprecision::gmp_rational, boost::multiprecision::et_off>;

struct Place {
    Rational x;
    Rational y;

    friend Place operator-(const Place& a, const Place& b) { return {a.x - b.x, a.y - b.y}; }
};

inline Rational dot(const Place& a, const Place& b) { return a.x * b.x + a.y * b.y; }
inline Rational cross(const Place& a, const Place& b) { return a.x * b.y - a.y * b.x; }

/// Convex, counter-clockwise.
using ExactPolygon = std::vector<Place>;

inline Place exact(Vec2 place) { return {Rational(place.x), Rational(place.y)}; }

inline ExactPolygon exact(const Polygon& polygon) {
    ExactPolygon places;
    for (const Vec2 corner : polygon) places.push_back(exact(corner));
    return places;
}

}  // namespace boughwork::oracles
