// SPDX-License-Identifier: MIT
#pragma once
// Ruler and protractor of rulebook 7 in exact numbers: what a length or an area is whose square is a
// rational number, rounded to whole steps with a half going up; and angles to 50 digits.

#include <algorithm>
#include <array>
#include <cstdint>

#include "engine/scene.h"
#include "tests/oracles/exact_polygon.h"
#include "tests/oracles/fifty_digits.h"

namespace boughwork::oracles {

using Integer = boost::multiprecision::number<boost::multiprecision::gmp_int, boost::multiprecision::et_off>;

inline Integer whole_part(const Rational& positive) { return numerator(positive) / denominator(positive); }

inline std::int64_t nearest(const Rational& positive) {
    return static_cast<std::int64_t>(whole_part(positive + Rational(1, 2)));
}

/// The whole number nearest to the root: of twice the root the whole part, halved, what is odd going up.
inline std::int64_t nearest_to_root_of(const Rational& positive) {
    return static_cast<std::int64_t>(Integer((sqrt(whole_part(4 * positive)) + 1) / 2));
}

inline FiftyDigits root_of(const Rational& positive) { return sqrt(FiftyDigits(positive)); }

/// In half-micrometres, as typed: 1 in = 25.4 mm exactly (National Bureau of Standards, Addendum to Circular 572).
inline Rational half_um_of(Unit unit) {
    return unit == Unit::mm ? Rational(2000) : unit == Unit::cm ? Rational(20'000) : Rational(50'800);
}

inline Rational half_um_of(const Step& step) {
    return Rational(step.numerator) / Rational(step.denominator) * half_um_of(step.unit);
}

/// Three sides, a triangle. Corner i lies between side i and the side before it.
struct ExactTriangle {
    std::array<Rational, 3> sides;

    const Rational& longest() const { return *std::max_element(sides.begin(), sides.end()); }

    /// Heron: the square of four times the area.
    Rational squared_four_areas() const {
        const auto& [a, b, c] = sides;
        return (a + b + c) * (-a + b + c) * (a - b + c) * (a + b - c);
    }
    Rational squared_area() const { return squared_four_areas() / 16; }
    Rational squared_height() const { return squared_four_areas() / (4 * longest() * longest()); }

    /// Law of cosines.
    Rational cosine(std::size_t corner) const {
        const Rational& one = sides[corner];
        const Rational& opposite = sides[(corner + 1) % 3];
        const Rational& other = sides[(corner + 2) % 3];
        return (one * one + other * other - opposite * opposite) / (2 * one * other);
    }
    FiftyDigits angle_rad(std::size_t corner) const { return acos(FiftyDigits(cosine(corner))); }
    Rational least_cosine() const { return std::min({cosine(0), cosine(1), cosine(2)}); }
};

}  // namespace boughwork::oracles
