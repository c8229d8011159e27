// SPDX-License-Identifier: MIT
#include "rules/measure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

constexpr double near_right_deg = 2.0;  // the corner of a card (common practice, no source)
constexpr double plainly_right_deg = 0.1;
constexpr double hair_deg = hair_rad * degrees_per_radian;

/// A step in half-micrometres as a fraction in lowest terms; the denominator is nearly always 1.
struct StepSize {
    Int128 numerator;
    Int128 denominator;
};

StepSize size_of(const Step& step) {
    const std::int64_t n = step.numerator * length_of(step.unit).half_um;
    const std::int64_t common = std::gcd(n, step.denominator);
    return {n / common, step.denominator / common};
}

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

std::int64_t measured_distance(const Shape& shape, std::size_t a, std::size_t b, const StepSize& step) {
    const auto squared = static_cast<Uint128>(squared_distance(shape, a, b));
    const auto d = static_cast<Uint128>(step.denominator);
    return nearest_multiple(4 * squared * d * d, static_cast<Uint128>(step.numerator));
}

/// By the largest angle, given as what it falls short of a right one.
Kind by_angles(double short_of_right_deg, double right_within_deg) {
    if (std::abs(short_of_right_deg) <= right_within_deg + hair_deg) return Kind::right;
    return short_of_right_deg > 0 ? Kind::acute : Kind::obtuse;
}

double largest_angle_short_of_right_deg(const Shape& shape) {
    double least = short_of_right_rad(shape, 0);
    for (std::size_t corner = 1; corner < 3; ++corner) least = std::min(least, short_of_right_rad(shape, corner));
    return least * degrees_per_radian;
}

Kind by_sides(const std::vector<std::int64_t>& sides) {
    const int pairs = (sides[0] == sides[1]) + (sides[1] == sides[2]) + (sides[2] == sides[0]);
    return pairs == 3 ? Kind::equilateral : pairs == 1 ? Kind::isosceles : Kind::scalene;
}

TriangleKinds kinds(const Shape& shape, const std::vector<std::int64_t>& sides, double right_within_deg) {
    const double short_of_right = largest_angle_short_of_right_deg(shape);
    const double off = std::abs(short_of_right);
    return {.by_sides = by_sides(sides),
            .by_angles = by_angles(short_of_right, right_within_deg),
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
    const auto n = static_cast<Uint128>(step.numerator);
    const auto d = static_cast<Uint128>(step.denominator);
    return nearest_multiple(four_areas_squared(shape) * d * d * d * d, 2 * n * n);
}

bool is_regular(const std::vector<std::int64_t>& sides, const std::vector<double>& angles_deg, double within_deg) {
    const double n = static_cast<double>(angles_deg.size());
    const double each = 180 - 360 / n;
    const auto same_angle = [&](double a) { return std::abs(a - each) <= within_deg + hair_deg; };
    return std::all_of(sides.begin(), sides.end(), [&](std::int64_t s) { return s == sides[0]; }) &&
           std::all_of(angles_deg.begin(), angles_deg.end(), same_angle);
}

std::string polygon_name(std::size_t corners, bool regular) {
    if (corners == 4 && regular) return "square";
    static const std::array<const char*, 9> names{"quadrilateral", "pentagon", "hexagon",    "heptagon", "octagon",
                                                  "nonagon",       "decagon",  "hendecagon", "dodecagon"};
    const std::string name =
        corners - 4 < names.size() ? names[corners - 4] : std::to_string(corners) + "-sided polygon";
    return regular ? "regular " + name : name;
}

std::vector<std::string> notes(const Shape& shape, const Measures& m, const Challenge& challenge) {
    const StepSize step = size_of(challenge.step);
    std::vector<std::string> notes;
    const std::size_t n = m.sides_in_steps.size();
    for (std::size_t i = 0; i < n; ++i)
        if (squared_distance(shape, i, (i + 1) % n) * step.denominator * step.denominator <
            step.numerator * step.numerator)
            notes.push_back("side " + std::to_string(i + 1) + " is shorter than one step of the ruler");
    if (!m.kinds) return notes;

    Triangle rounded;
    for (std::size_t i = 0; i < 3; ++i)
        rounded.sides[i] = {m.sides_in_steps[i] * static_cast<std::int64_t>(step.numerator)};
    if (!possible(rounded) ||
        by_angles(largest_angle_short_of_right_deg(rounded), challenge.right_within_deg) != m.kinds->by_angles)
        notes.push_back("rounded sides can't make this triangle");
    return notes;
}

}  // namespace

Measures measure(const Shape& shape, const Challenge& challenge) {
    const StepSize step = size_of(challenge.step);
    const bool cone = std::holds_alternative<Cone>(shape);
    const std::size_t n = corner_count(shape);
    Measures m;
    for (std::size_t i = 0; i < n; ++i) m.sides_in_steps.push_back(measured_distance(shape, i, (i + 1) % n, step));
    m.perimeter_in_steps = std::accumulate(m.sides_in_steps.begin(), m.sides_in_steps.end(), std::int64_t{0});
    for (const double angle : angles_rad(shape)) m.angles_deg.push_back(angle * degrees_per_radian);
    if (n == 3) m.height_in_steps = measured_height(shape, step);
    if (n == 3 && !cone) {
        // Half of base times height: pupils can work it out from what they measured.
        m.area_in_half_square_steps =
            *std::max_element(m.sides_in_steps.begin(), m.sides_in_steps.end()) * m.height_in_steps;
        m.kinds = kinds(shape, m.sides_in_steps, challenge.right_within_deg);
        m.name = std::string(name_of(m.kinds->by_sides)) + ", " + name_of(m.kinds->by_angles);
    } else {
        m.area_in_half_square_steps = 2 * measured_area(shape, step);
        m.name =
            cone ? "cone" : polygon_name(n, is_regular(m.sides_in_steps, m.angles_deg, challenge.right_within_deg));
    }
    m.notes = notes(shape, m, challenge);
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

Likeness likeness(const Shape& shape, const Step& step) {
    const StepSize size = size_of(step);
    Likeness result{.cone = std::holds_alternative<Cone>(shape), .distances_in_steps = {}};
    for (std::size_t a = 0; a < corner_count(shape); ++a)
        for (std::size_t b = a + 1; b < corner_count(shape); ++b)
            result.distances_in_steps.push_back(measured_distance(shape, a, b, size));
    std::sort(result.distances_in_steps.begin(), result.distances_in_steps.end());
    return result;
}

bool is_of_kind(const TriangleKinds& kinds, Kind kind, bool equilateral_is_isosceles) {
    return kinds.by_sides == kind || kinds.by_angles == kind ||
           (equilateral_is_isosceles && kind == Kind::isosceles && kinds.by_sides == Kind::equilateral);
}

}  // namespace boughwork
