// SPDX-License-Identifier: MIT
// What is typed, and what ruler and protractor say of it, against exact numbers: random shapes of all sizes, needles
// and ties among them, measured to all kinds of steps.
#include <algorithm>
#include <catch2/catch.hpp>
#include <random>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/typed_length.h"
#include "rules/measure.h"
#include "tests/oracles/exact_measures.h"

namespace boughwork::oracles {
namespace {

const Step steps[] = {{1, 1, Unit::mm}, {5, 1, Unit::mm}, {1, 2, Unit::mm},  {1, 1, Unit::cm}, {1, 10, Unit::cm},
                      {1, 8, Unit::in}, {1, 4, Unit::in}, {1, 2, Unit::in},  {1, 1, Unit::in}, {1, 16, Unit::in},
                      {1, 3, Unit::in}, {1, 7, Unit::mm}, {22, 7, Unit::cm}, {3, 1, Unit::in}};

class SizeDice {
public:
    explicit SizeDice(unsigned seed) : dice_(seed) {}

    std::int64_t whole(std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(dice_);
    }
    bool one_in(int n) { return whole(1, n) == 1; }
    const Step& step() { return steps[whole(0, std::size(steps) - 1)]; }
    Unit unit() { return static_cast<Unit>(whole(0, 2)); }

    /// Of any size up to 10 m, in decimals, in sixteenths of an inch, or half-way between two steps.
    std::int64_t length(const Step& step) {
        const int size = static_cast<int>(whole(1, 4));
        const std::int64_t most = size == 1 ? 100 : size == 2 ? 10'000 : size == 3 ? 1'000'000 : 20'000'000;
        if (one_in(4)) return 3175 * whole(1, std::max<std::int64_t>(1, most / 3175));
        const Rational tie = half_um_of(step) * (2 * whole(0, 100) + 1) / 2;
        if (one_in(4) && denominator(tie) == 1) return static_cast<std::int64_t>(numerator(tie));
        return one_in(2) ? whole(1, most) : 200 * whole(1, std::max<std::int64_t>(1, most / 200));
    }

    std::array<std::int64_t, 3> sides(const Step& step) {
        const std::int64_t a = length(step);
        if (one_in(4)) return {a, a, one_in(2) ? a : whole(1, 2 * a + 1)};
        if (one_in(20)) return {3 * a, 4 * a, 5 * a};
        const std::int64_t b = length(step);
        // Needles: nearly as long as the two together, or as their difference.
        if (one_in(4)) return {a, b, std::max<std::int64_t>(1, a + b - whole(0, 9))};
        if (one_in(4)) return {a, b, std::abs(a - b) + whole(0, 9)};
        return {a, b, whole(1, a + b)};
    }

private:
    std::mt19937_64 dice_;
};

bool is_near(double value, const FiftyDigits& exact, double relative) {
    return abs(FiftyDigits(value) - exact) <= relative * abs(exact);
}

TEST_CASE("A typed length is held exactly, or refused when it is no whole number of half-micrometres") {
    SizeDice dice(572);
    int held = 0;
    int too_fine = 0;
    int too_long = 0;
    for (int round = 0; round < 100'000; ++round) {
        const Unit unit = dice.unit();
        const std::int64_t whole = dice.one_in(20) ? dice.whole(0, 2'000'000) : dice.whole(0, 3000);
        std::string typed = std::to_string(whole);
        Rational value(whole);
        if (dice.one_in(2)) {
            const std::int64_t below = dice.one_in(2) ? 16 : dice.whole(1, 200);
            const std::int64_t above = dice.whole(0, below - 1);
            typed += " " + std::to_string(above) + "/" + std::to_string(below);
            value += Rational(above) / Rational(below);
        } else if (dice.one_in(2)) {
            typed += dice.one_in(2) ? "." : ",";
            Rational place(1);
            for (std::int64_t digits = dice.whole(1, 6); digits > 0; --digits) {
                const std::int64_t digit = dice.one_in(3) ? 0 : dice.whole(0, 9);
                typed += std::to_string(digit);
                place /= 10;
                value += digit * place;
            }
        }
        const bool names_it = dice.one_in(2);
        if (names_it) typed += std::string(dice.one_in(2) ? " " : "") + symbol_of(unit);
        const Rational half_um = value * half_um_of(unit);
        const bool exactly_held = denominator(half_um) == 1;
        const bool in_range = half_um > 0 && half_um <= 2'000'000'000;  // 1e6 mm
        CAPTURE(typed, symbol_of(unit));
        const Result<Length> length = parse_length(typed, names_it ? dice.unit() : unit);
        REQUIRE(static_cast<bool>(length) == (exactly_held && in_range));
        if (length) REQUIRE(Rational(length->half_um) == half_um);
        held += static_cast<bool>(length);
        too_fine += !exactly_held;
        too_long += half_um > 2'000'000'000;
    }
    CHECK(held > 20'000);
    CHECK(too_fine > 20'000);
    CHECK(too_long > 1000);
}

TEST_CASE("Triangles of all sizes are possible, measured and named as exact numbers say") {
    SizeDice dice(60);
    int possible_ones = 0;
    std::array<int, 6> met{};
    for (int round = 0; round < 40'000; ++round) {
        Challenge challenge;
        challenge.step = dice.step();
        challenge.right_within_deg = 0.001;
        const auto [a, b, c] = dice.sides(challenge.step);
        const Triangle triangle{{{{a}, {b}, {c}}}};
        CAPTURE(a, b, c, challenge.step.numerator, challenge.step.denominator, symbol_of(challenge.step.unit));
        const bool is_triangle = a + b > c && b + c > a && c + a > b;
        REQUIRE(static_cast<bool>(possible(triangle)) == is_triangle);
        if (!is_triangle) continue;
        ++possible_ones;

        const ExactTriangle exact{{Rational(a), Rational(b), Rational(c)}};
        const Rational step = half_um_of(challenge.step);
        const Measures m = measure(triangle, challenge);
        std::vector<std::int64_t> sides;
        for (const Rational& side : exact.sides) sides.push_back(nearest(side / step));
        REQUIRE(m.sides_in_steps == sides);
        REQUIRE(m.perimeter_in_steps == sides[0] + sides[1] + sides[2]);
        REQUIRE(m.height_in_steps == nearest_to_root_of(exact.squared_height() / (step * step)));
        REQUIRE(m.area_in_half_square_steps == *std::max_element(sides.begin(), sides.end()) * m.height_in_steps);

        REQUIRE(m.kinds);
        const int alike = (sides[0] == sides[1]) + (sides[1] == sides[2]) + (sides[2] == sides[0]);
        REQUIRE(m.kinds->by_sides == (alike == 3 ? Kind::equilateral : alike == 1 ? Kind::isosceles : Kind::scalene));
        const FiftyDigits degree = acos(FiftyDigits(-1)) / 180;
        const FiftyDigits short_of_right = asin(FiftyDigits(exact.least_cosine())) / degree;
        REQUIRE(m.kinds->by_angles == (abs(short_of_right) <= FiftyDigits(0.001) ? Kind::right
                                       : short_of_right > 0                      ? Kind::acute
                                                                                 : Kind::obtuse));
        ++met[static_cast<std::size_t>(m.kinds->by_sides)];
        ++met[static_cast<std::size_t>(m.kinds->by_angles)];

        const FiftyDigits mm(2000);
        REQUIRE(is_near(area_mm2(triangle), root_of(exact.squared_area()) / (mm * mm), 1e-15));
        REQUIRE(is_near(least_height_mm(triangle), root_of(exact.squared_height()) / mm, 1e-15));
        const std::vector<double> angles = angles_rad(triangle);
        for (std::size_t corner = 0; corner < 3; ++corner)
            REQUIRE(is_near(angles[corner], exact.angle_rad(corner), 1e-15));
    }
    CHECK(possible_ones > 20'000);
    for (const int often : met) CHECK(often > 50);
}

TEST_CASE("Cones of all sizes are possible and measured as exact numbers say") {
    SizeDice dice(205);
    int possible_ones = 0;
    for (int round = 0; round < 20'000; ++round) {
        Challenge challenge;
        challenge.step = dice.step();
        const std::int64_t radius = dice.length(challenge.step);
        const std::int64_t slant = dice.one_in(3) ? radius + dice.whole(0, 9) : dice.length(challenge.step);
        const Cone cone{{radius}, {slant}, ""};
        CAPTURE(radius, slant, challenge.step.numerator, challenge.step.denominator, symbol_of(challenge.step.unit));
        REQUIRE(static_cast<bool>(possible(cone)) == (slant > radius));
        if (slant <= radius) continue;
        ++possible_ones;

        const ExactTriangle seen{{Rational(2 * radius), Rational(slant), Rational(slant)}};
        const Rational step = half_um_of(challenge.step);
        const Measures m = measure(cone, challenge);
        const std::int64_t sloping = nearest(seen.sides[1] / step);
        REQUIRE(m.sides_in_steps == std::vector<std::int64_t>{nearest(seen.sides[0] / step), sloping, sloping});
        REQUIRE(m.height_in_steps == nearest_to_root_of(seen.squared_height() / (step * step)));
        REQUIRE(m.area_in_half_square_steps ==
                2 * nearest_to_root_of(seen.squared_area() / (step * step * step * step)));
    }
    CHECK(possible_ones > 8000);
}

/// Clockwise, the first side on top: corners of a grid, so that measures half-way between two steps are met.
std::vector<ExactPoint> grid_outline(SizeDice& dice) {
    const std::int64_t grid = dice.one_in(2) ? 1 : dice.one_in(2) ? 1000 : 3175;
    const std::int64_t most = dice.one_in(2) ? 40 : 2000;
    const std::int64_t width = dice.whole(2, most);
    const std::int64_t depth = dice.whole(1, most);
    const std::int64_t left = dice.whole(-most, most);
    const std::int64_t right = left + dice.whole(1, most);
    const auto point = [grid](std::int64_t x, std::int64_t y) { return ExactPoint{{grid * x}, {grid * y}}; };
    std::vector<ExactPoint> corners{point(0, 0), point(width, 0), point(right, -depth), point(left, -depth)};
    // Often a dent, or straight.
    if (dice.one_in(2)) corners.push_back(point(std::min<std::int64_t>(0, left) + dice.whole(-most, most), -depth / 2));
    return corners;
}

TEST_CASE("Outlines are possible and measured as exact numbers say") {
    SizeDice dice(7);
    int possible_ones = 0;
    int refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        Challenge challenge;
        challenge.step = dice.step();
        const Outline outline{grid_outline(dice)};
        ExactPolygon corners;
        for (const ExactPoint& c : outline.corners) corners.push_back({Rational(c.x.half_um), Rational(c.y.half_um)});
        const std::size_t n = corners.size();
        // Convex and clockwise: every corner lies to the right of every side that it is no end of.
        bool convex = true;
        Rational twice_area = 0;
        for (std::size_t i = 0; i < n; ++i) {
            const Place& from = corners[i];
            const Place& to = corners[(i + 1) % n];
            for (std::size_t k = 2; k < n; ++k) convex = convex && cross(to - from, corners[(i + k) % n] - from) < 0;
            twice_area -= cross(from, to);
        }
        REQUIRE(static_cast<bool>(possible(outline)) == convex);
        if (!convex) {
            ++refused;
            continue;
        }
        ++possible_ones;

        const Rational step = half_um_of(challenge.step);
        const Measures m = measure(outline, challenge);
        std::vector<std::int64_t> distances;
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = i + 1; k < n; ++k) {
                const Place apart = corners[k] - corners[i];
                distances.push_back(nearest_to_root_of(dot(apart, apart) / (step * step)));
            }
            const Place side = corners[(i + 1) % n] - corners[i];
            REQUIRE(m.sides_in_steps[i] == nearest_to_root_of(dot(side, side) / (step * step)));
        }
        std::sort(distances.begin(), distances.end());
        REQUIRE(likeness(outline, m, challenge.step).distances_in_steps == distances);
        REQUIRE(m.area_in_half_square_steps == 2 * nearest(twice_area / 2 / (step * step)));
        REQUIRE(is_near(area_mm2(outline), FiftyDigits(twice_area) / 2 / 4'000'000, 1e-15));
    }
    CHECK(possible_ones > 5000);
    CHECK(refused > 1000);
}

}  // namespace
}  // namespace boughwork::oracles
