// SPDX-License-Identifier: MIT
#pragma once
// What ruler and protractor say of a piece (rulebook 7): sides at the challenge's step, kinds,
// height, area. Whatever could hang on a tie or on a flat triangle is decided on whole numbers.

#include <cstdint>
#include <vector>

#include "engine/geometry/shape.h"
#include "rules/report.h"

namespace boughwork {

/// A step in half-micrometres, as a fraction in lowest terms; the denominator is nearly always 1.
struct StepSize {
    Int128 numerator;
    Int128 denominator;
};
StepSize size_of(const Step& step);

/// Right, acute or obtuse: of the true shape, a triangle.
Kind kind_by_angles(const Shape& shape, double right_within_deg);

/// The same of the angle at one corner (from 0) of a triangle.
Kind kind_of_angle(const Shape& shape, std::size_t corner, double right_within_deg);

/// Of a possible shape.
Measures measure(const Shape& shape, const Challenge& challenge);

/// A length at the step: the nearest multiple, a half going up.
std::int64_t measured_length(Length length, const Step& step);

/// The measures with the sides that were read off a ruler, at the step; absent unless all of them were. Kinds,
/// height and likeness stay those of the true shape.
std::optional<Measures> with_hand_lengths(Measures measures, const HandMeasured& by_hand, const Step& step);

/// `steps` of the ruler in `unit`: one exact fraction, rounded once.
double in_units(std::int64_t steps, const Step& step, Unit unit);
/// Halves of a square step in squares of `unit`.
double area_in_units(std::int64_t half_square_steps, const Step& step, Unit unit);

/// The measured distances between all corners, sorted; equal for alike pieces. Cones are alike to cones only.
struct Likeness {
    bool cone = false;
    std::vector<std::int64_t> distances_in_steps;
    friend bool operator==(const Likeness&, const Likeness&) = default;
};
struct LikenessHash {
    std::size_t operator()(const Likeness& likeness) const;
};
/// `measures` are those of the shape.
Likeness likeness(const Shape& shape, const Measures& measures, const Step& step);

/// True when a piece of these kinds counts as `kind`; an equilateral one may count as isosceles too.
bool is_of_kind(const TriangleKinds& kinds, Kind kind, bool equilateral_is_isosceles);

}  // namespace boughwork
