// SPDX-License-Identifier: MIT
#include "tests/book/measuring.h"

#include <algorithm>

namespace boughwork::book {

namespace {

/// In half-micrometres; 1 inch = 25.4 mm exactly.
std::int64_t exactly_one(Unit unit) {
    switch (unit) {
        case Unit::mm: return 2000;
        case Unit::cm: return 20000;
        case Unit::in: return 50800;
    }
    return 0;
}

/// Rulebook 7, "nearest step, a half goes up": of the length whose square is `above / below`
/// half-micrometres squared. k is right when (k - 1/2) step <= length < (k + 1/2) step; squared, and
/// multiplied out, that is a question about whole numbers.
std::int64_t nearest_step(Whole128 above, Whole128 below, const Step& step) {
    const Whole128 step_above = static_cast<Whole128>(step.numerator) * exactly_one(step.unit);
    const Whole128 step_below = step.denominator;
    const auto reaches = [&](Whole128 k) {
        return (2 * k - 1) * (2 * k - 1) * step_above * step_above * below <= 4 * step_below * step_below * above;
    };
    std::int64_t k = 0;
    while (reaches(k + 1)) ++k;
    return k;
}

/// Rulebook 8: "for other shapes the true area to the nearest step squared", a half up: the k with
/// (k - 1/2) step^2 <= area < (k + 1/2) step^2, both sides squared and multiplied out.
std::int64_t nearest_square_step(const Shape& shape, const Step& step) {
    const Whole128 above = static_cast<Whole128>(step.numerator) * exactly_one(step.unit);
    const Whole128 below = step.denominator;
    const Whole128 step_above = above * above * above * above;  // The step to the fourth power.
    const Whole128 step_below = below * below * below * below;
    const auto reaches = [&](Whole128 k) {
        return 4 * (2 * k - 1) * (2 * k - 1) * step_above <= area_squared_times_16(shape) * step_below;
    };
    std::int64_t k = 0;
    while (reaches(k + 1)) ++k;
    return k;
}

Kind kind_by_sides(std::vector<std::int64_t> sides) {
    std::sort(sides.begin(), sides.end());
    if (sides[0] == sides[2]) return Kind::equilateral;
    return sides[0] == sides[1] || sides[1] == sides[2] ? Kind::isosceles : Kind::scalene;
}

/// The angles at the corners. Of a triangle from its sides: 16 A^2 = (2 a b sin C)^2, and
/// a^2 + b^2 - c^2 = 2 a b cos C.
std::vector<Real> angles_deg(const Shape& shape) {
    std::vector<Real> angles;
    const std::size_t n = corners_of(shape);
    if (n == 3) {
        const Real sine = std::sqrt(static_cast<Real>(area_squared_times_16(shape)));
        for (std::size_t k = 0; k < 3; ++k) {
            const std::size_t next = (k + 1) % 3;
            const std::size_t last = (k + 2) % 3;
            const auto cosine = static_cast<Real>(squared_distance(shape, k, next) + squared_distance(shape, k, last) -
                                                  squared_distance(shape, next, last));
            angles.push_back(std::atan2(sine, cosine) * half_turn_deg / half_turn_rad);
        }
        return angles;
    }
    const Corners corners = on_paper(shape);
    for (std::size_t k = 0; k < n; ++k)
        angles.push_back(angle_between_deg(corners[(k + 1) % n] - corners[k], corners[(k + n - 1) % n] - corners[k]));
    return angles;
}

Kind kind_by_angles(const std::vector<Real>& angles, const Challenge& challenge, Scales& scales) {
    const Real largest = *std::max_element(angles.begin(), angles.end());
    if (!scales.beyond(std::abs(largest - 90), challenge.right_within_deg)) return Kind::right;
    return largest < 90 ? Kind::acute : Kind::obtuse;
}

TriangleKinds kinds_of(const std::vector<std::int64_t>& sides, const std::vector<Real>& angles,
                       const Challenge& challenge, Scales& scales) {
    constexpr Real card_deg = 2;
    constexpr Real by_calculation_deg = 0.1L;
    const Real off = std::abs(*std::max_element(angles.begin(), angles.end()) - 90);
    return {.by_sides = kind_by_sides(sides),
            .by_angles = kind_by_angles(angles, challenge, scales),
            .close_call = !scales.beyond(off, card_deg) && scales.beyond(off, by_calculation_deg)};
}

/// Rulebook 7, "noted on the piece": "a side shorter than a step", one note each; "measured sides that
/// cannot make its kind by angles, or any triangle".
std::vector<std::string> notes_on(const Shape& shape, const Measures& m, const Challenge& challenge, Scales& scales) {
    std::vector<std::string> notes;
    const Step& step = challenge.step;
    const Whole128 above = static_cast<Whole128>(step.numerator) * exactly_one(step.unit);
    for (int side = 1; side <= static_cast<int>(corners_of(shape)); ++side)
        if (squared_side(shape, side) * step.denominator * step.denominator < above * above)
            notes.push_back("a side shorter than a step");
    if (!m.kinds) return notes;
    const auto& s = m.sides_in_steps;
    const bool makes_a_triangle = s[0] < s[1] + s[2] && s[1] < s[2] + s[0] && s[2] < s[0] + s[1];
    const Triangle rounded{{Length{s[0]}, Length{s[1]}, Length{s[2]}}};  // Any unit: angles are the same.
    if (!makes_a_triangle || kind_by_angles(angles_deg(rounded), challenge, scales) != m.kinds->by_angles)
        notes.push_back(cannot_make_it);
    return notes;
}

std::vector<std::int64_t> measured_distances(const Shape& shape, const Step& step) {
    std::vector<std::int64_t> distances;
    for (std::size_t i = 0; i < corners_of(shape); ++i)
        for (std::size_t k = i + 1; k < corners_of(shape); ++k)
            distances.push_back(nearest_step(squared_distance(shape, i, k), 1, step));
    std::sort(distances.begin(), distances.end());
    return distances;
}

}  // namespace

Measures measured(const Shape& shape, const Challenge& challenge, Scales& scales) {
    Measures m;
    Whole128 longest = 0;
    for (int side = 1; side <= static_cast<int>(corners_of(shape)); ++side) {
        m.sides_in_steps.push_back(nearest_step(squared_side(shape, side), 1, challenge.step));
        m.perimeter_in_steps += m.sides_in_steps.back();
        longest = std::max(longest, squared_side(shape, side));
    }
    const std::vector<Real> angles = angles_deg(shape);
    if (corners_of(shape) == 3) {
        // Twice the area is height times longest side: height^2 = 16 A^2 / (4 longest^2).
        m.height_in_steps = nearest_step(area_squared_times_16(shape), 4 * longest, challenge.step);
        if (!is_cone(shape)) m.kinds = kinds_of(m.sides_in_steps, angles, challenge, scales);
    }
    // Rulebook 8: of triangles what pupils can work out, of other shapes (a cone is one) the true area.
    m.area_in_half_square_steps =
        m.kinds ? *std::max_element(m.sides_in_steps.begin(), m.sides_in_steps.end()) * m.height_in_steps
                : 2 * nearest_square_step(shape, challenge.step);
    return m;
}

Description described(const Shape& shape, const Measures& measures, const Challenge& challenge, Scales& scales) {
    Description told;
    for (const Real angle : angles_deg(shape)) told.angles_deg.push_back(static_cast<double>(angle));
    told.notes = notes_on(shape, measures, challenge, scales);
    return told;
}

bool is_of_kind(const Measures& measures, Kind kind, const Challenge& challenge) {
    if (!measures.kinds) return false;
    if (measures.kinds->by_sides == kind || measures.kinds->by_angles == kind) return true;
    return kind == Kind::isosceles && measures.kinds->by_sides == Kind::equilateral &&
           challenge.equilateral_is_isosceles;
}

bool alike(const Shape& a, const Shape& b, const Step& step) {
    return is_cone(a) == is_cone(b) && measured_distances(a, step) == measured_distances(b, step);
}

}  // namespace boughwork::book
