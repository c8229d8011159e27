// SPDX-License-Identifier: MIT
#include "rules/measure.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

constexpr double near_right_deg = 2.0;  // the corner of a card (common practice, no source)
constexpr double plainly_right_deg = 0.1;
constexpr double hair_deg = hair_rad * degrees_per_radian;

/// The whole number nearest to value / divisor, a half going up, where the value is given by the
/// square of its double: the largest k with (2 k - 1) divisor <= 2 value. Exact; the estimate is only
/// where the search begins.
std::int64_t nearest_multiple(Uint128 double_squared, Uint128 divisor) {
    const auto reaches = [&](std::int64_t k) {
        const Uint128 half_below = static_cast<Uint128>(2 * k - 1) * divisor;
        return half_below * half_below <= double_squared;
    };
    const long double value = std::sqrt(static_cast<long double>(double_squared)) / 2;
    auto k = static_cast<std::int64_t>(value / static_cast<long double>(divisor) + 0.5L);
    while (k > 0 && !reaches(k)) --k;
    while (reaches(k + 1)) ++k;
    return k;
}

std::int64_t measured_length(Length length, const StepSize& step) {
    const Int128 double_length = 2 * Int128{length.half_um} * step.denominator;
    return static_cast<std::int64_t>((double_length + step.numerator) / (2 * step.numerator));
}

std::int64_t measured_distance(const Shape& shape, std::size_t a, std::size_t b, const StepSize& step) {
    const auto squared = static_cast<Uint128>(squared_distance(shape, a, b));
    const auto d = static_cast<Uint128>(step.denominator);
    return nearest_multiple(4 * squared * d * d, static_cast<Uint128>(step.numerator));
}

Kind by_sides(const std::vector<std::int64_t>& sides) {
    const int pairs = (sides[0] == sides[1]) + (sides[1] == sides[2]) + (sides[2] == sides[0]);
    return pairs == 3 ? Kind::equilateral : pairs == 1 ? Kind::isosceles : Kind::scalene;
}

/// What the largest angle of a triangle, opposite its longest side, falls short of a right one.
double largest_short_of_right_deg(const Shape& shape) {
    std::size_t longest = 0;
    for (std::size_t i = 1; i < 3; ++i)
        if (squared_distance(shape, i, (i + 1) % 3) > squared_distance(shape, longest, (longest + 1) % 3)) longest = i;
    return short_of_right_rad(shape, (longest + 2) % 3) * degrees_per_radian;
}

Kind kind_of(double short_of_right_deg, double right_within_deg) {
    if (std::abs(short_of_right_deg) <= right_within_deg + hair_deg) return Kind::right;
    return short_of_right_deg > 0 ? Kind::acute : Kind::obtuse;
}

TriangleKinds kinds(const Shape& shape, const std::vector<std::int64_t>& sides, double right_within_deg) {
    const double short_of_right = largest_short_of_right_deg(shape);
    const double off = std::abs(short_of_right);
    return {.by_sides = by_sides(sides),
            .by_angles = kind_of(short_of_right, right_within_deg),
            .close_call = off <= near_right_deg + hair_deg && off > plainly_right_deg + hair_deg};
}

/// The height on the truly longest side; its double is 4 area / side.
std::int64_t measured_height(const Shape& shape, const StepSize& step) {
    Int128 longest = 0;
    for (std::size_t i = 0; i < 3; ++i) longest = std::max(longest, squared_distance(shape, i, (i + 1) % 3));
    const Uint128 four_areas = four_areas_squared(shape);
    const auto side = static_cast<Uint128>(longest);
    const auto d = static_cast<Uint128>(step.denominator);
    // A whole number is at most a quotient when it is at most the quotient rounded down.
    const Uint128 double_squared = four_areas / side * d * d + four_areas % side * d * d / side;
    return nearest_multiple(double_squared, static_cast<Uint128>(step.numerator));
}

/// To the nearest square step.
std::int64_t measured_area(const Shape& shape, const StepSize& step) {
    if (const auto* outline = std::get_if<Outline>(&shape)) {
        const Int128 square_step = step.numerator * step.numerator;
        return static_cast<std::int64_t>((twice_area(*outline) * step.denominator * step.denominator + square_step) /
                                         (2 * square_step));
    }
    const auto n = static_cast<Uint128>(step.numerator);
    const auto d = static_cast<Uint128>(step.denominator);
    return nearest_multiple(four_areas_squared(shape) * d * d * d * d, 2 * n * n);
}

}  // namespace

StepSize size_of(const Step& step) {
    const std::int64_t n = step.numerator * length_of(step.unit).half_um;
    const std::int64_t common = std::gcd(n, step.denominator);
    return {n / common, step.denominator / common};
}

Kind kind_by_angles(const Shape& shape, double right_within_deg) {
    return kind_of(largest_short_of_right_deg(shape), right_within_deg);
}

Kind kind_of_angle(const Shape& shape, std::size_t corner, double right_within_deg) {
    return kind_of(short_of_right_rad(shape, corner) * degrees_per_radian, right_within_deg);
}

std::int64_t measured_length(Length length, const Step& step) { return measured_length(length, size_of(step)); }

std::optional<Measures> with_hand_lengths(Measures measures, const HandMeasured& by_hand, const Step& step) {
    if (by_hand.sides.size() != measures.sides_in_steps.size()) return std::nullopt;
    for (std::size_t i = 0; i < by_hand.sides.size(); ++i) {
        if (!by_hand.sides[i]) return std::nullopt;
        measures.sides_in_steps[i] = measured_length(*by_hand.sides[i], step);
    }
    measures.perimeter_in_steps =
        std::accumulate(measures.sides_in_steps.begin(), measures.sides_in_steps.end(), std::int64_t{0});
    if (measures.kinds)
        measures.area_in_half_square_steps =
            *std::max_element(measures.sides_in_steps.begin(), measures.sides_in_steps.end()) *
            measures.height_in_steps;
    return measures;
}

Measures measure(const Shape& shape, const Challenge& challenge) {
    const StepSize step = size_of(challenge.step);
    const bool cone = std::holds_alternative<Cone>(shape);
    const std::size_t n = corner_count(shape);
    Measures m;
    m.sides_in_steps.reserve(n);
    if (const auto sides = three_sides(shape))
        for (const Length side : *sides) m.sides_in_steps.push_back(measured_length(side, step));
    else
        for (std::size_t i = 0; i < n; ++i) m.sides_in_steps.push_back(measured_distance(shape, i, (i + 1) % n, step));
    m.perimeter_in_steps = std::accumulate(m.sides_in_steps.begin(), m.sides_in_steps.end(), std::int64_t{0});
    if (n == 3) m.height_in_steps = measured_height(shape, step);
    if (n == 3 && !cone) {
        // Half of base times height: pupils can work it out from what they measured.
        m.area_in_half_square_steps =
            *std::max_element(m.sides_in_steps.begin(), m.sides_in_steps.end()) * m.height_in_steps;
        m.kinds = kinds(shape, m.sides_in_steps, challenge.right_within_deg);
    } else {
        m.area_in_half_square_steps = 2 * measured_area(shape, step);
    }
    return m;
}

double in_units(std::int64_t steps, const Step& step, Unit unit) {
    const StepSize size = size_of(step);
    return static_cast<double>(steps * size.numerator) /
           static_cast<double>(size.denominator * length_of(unit).half_um);
}

double area_in_units(std::int64_t half_square_steps, const Step& step, Unit unit) {
    const StepSize size = size_of(step);
    const Int128 one = length_of(unit).half_um;
    Int128 above = half_square_steps * size.numerator * size.numerator;
    Int128 below = 2 * size.denominator * size.denominator * one * one;
    for (Int128 a = above, b = below; a != 0;) {  // Euclid's algorithm: both then fit a double exactly
        const Int128 rest = b % a;
        b = a;
        a = rest;
        if (a == 0) {
            above /= b;
            below /= b;
        }
    }
    return static_cast<double>(above) / static_cast<double>(below);
}

std::size_t LikenessHash::operator()(const Likeness& likeness) const {
    std::uint64_t hash = likeness.cone;
    for (const std::int64_t steps : likeness.distances_in_steps)
        hash = hash * 0x9E3779B97F4A7C15 + static_cast<std::uint64_t>(steps);  // the golden ratio's bits (Knuth 6.4)
    return static_cast<std::size_t>(hash ^ hash >> 32);
}

Likeness likeness(const Shape& shape, const Measures& measures, const Step& step) {
    Likeness result{.cone = std::holds_alternative<Cone>(shape), .distances_in_steps = measures.sides_in_steps};
    const std::size_t n = measures.sides_in_steps.size();
    if (n > 3) {
        const StepSize size = size_of(step);
        for (std::size_t a = 0; a + 2 < n; ++a)
            for (std::size_t b = a + 2; b < n; ++b)
                if (a > 0 || b + 1 < n)  // those are sides, measured already
                    result.distances_in_steps.push_back(measured_distance(shape, a, b, size));
    }
    std::sort(result.distances_in_steps.begin(), result.distances_in_steps.end());
    return result;
}

bool is_of_kind(const TriangleKinds& kinds, Kind kind, bool equilateral_is_isosceles) {
    return kinds.by_sides == kind || kinds.by_angles == kind ||
           (equilateral_is_isosceles && kind == Kind::isosceles && kinds.by_sides == Kind::equilateral);
}

}  // namespace boughwork
