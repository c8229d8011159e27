// SPDX-License-Identifier: MIT
#include "rules/nearest_of_kind.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "engine/geometry/shape.h"
#include "rules/measure.h"
#include "tests/engine/triangle_mm.h"

using namespace boughwork;

namespace {

Challenge challenge_at(const Step& step, double right_within_deg = 1) {
    Challenge challenge;
    challenge.step = step;
    challenge.right_within_deg = right_within_deg;
    return challenge;
}

const Step one_mm{1, 1, Unit::mm};
const Step one_cm{1, 1, Unit::cm};
const Step quarter_inch{1, 4, Unit::in};

double change(const Triangle& from, const Triangle& to) {
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i) sum += std::pow(to_mm(to.sides[i] - from.sides[i]), 2);
    return sum;
}

TriangleKinds kinds(const Triangle& t, const Challenge& challenge) { return *measure(t, challenge).kinds; }

/// Any triangle of 20 to 150 mm, on the step or not.
Triangle any_triangle(std::mt19937& dice, const Stop& stop) {
    std::uniform_real_distribution<double> side(20, 150);
    for (;;) {
        const Triangle t{{stopped(side(dice), stop), stopped(side(dice), stop), stopped(side(dice), stop)}};
        if (possible(t)) return t;
    }
}

bool on_step(const Triangle& t, const Step& step) {
    for (const Length side : t.sides)
        if (!(multiple_of(step, measured_length(side, step)) == side)) return false;
    return true;
}

}  // namespace

TEST_CASE("What was made right, isosceles or equilateral is called so by the referee") {
    std::mt19937 dice(11);
    for (const Step& step : {one_mm, one_cm, quarter_inch})
        for (const double within_deg : {2.0, 1.0, 0.1})
            for (const Stop& stop : {Stop{step}, Stop{}})
                for (int i = 0; i < 60; ++i) {
                    const Challenge challenge = challenge_at(step, within_deg);
                    const Triangle t = any_triangle(dice, i % 2 == 0 ? stop : Stop{});
                    INFO(to_mm(t.sides[0]) << ", " << to_mm(t.sides[1]) << ", " << to_mm(t.sides[2]));
                    const Triangle right = nearest_right(t, challenge, stop);
                    const Triangle isosceles = nearest_isosceles(t, challenge, stop);
                    const Triangle equilateral = nearest_equilateral(t, challenge, stop);
                    for (const Triangle& made : {right, isosceles, equilateral}) REQUIRE(possible(made));
                    CHECK(kinds(right, challenge).by_angles == Kind::right);
                    CHECK(kinds(isosceles, challenge).by_sides == Kind::isosceles);
                    CHECK(kinds(equilateral, challenge).by_sides == Kind::equilateral);
                    CHECK(nearest_right(right, challenge, stop) == right);
                    CHECK(nearest_isosceles(isosceles, challenge, stop) == isosceles);
                    CHECK(nearest_equilateral(equilateral, challenge, stop) == equilateral);
                    if (!stop) CHECK_FALSE(kinds(right, challenge).close_call);
                    if (stop && on_step(t, step)) {
                        CHECK(on_step(right, step));
                        CHECK(on_step(isosceles, step));
                        CHECK(on_step(equilateral, step));
                    }
                }
}

TEST_CASE("No smaller change does it: every triangle around, tried one by one") {
    std::mt19937 dice(5);
    const Challenge challenge = challenge_at(one_cm);
    for (int i = 0; i < 40; ++i) {
        const Triangle t = any_triangle(dice, one_cm);
        const Triangle right = nearest_right(t, challenge, one_cm);
        const Triangle isosceles = nearest_isosceles(t, challenge, one_cm);
        const Triangle equilateral = nearest_equilateral(t, challenge, one_cm);
        const bool close_call = kinds(right, challenge).close_call;
        constexpr int around = 4;
        for (int a = -around; a <= around; ++a)
            for (int b = -around; b <= around; ++b)
                for (int c = -around; c <= around; ++c) {
                    Triangle other = t;
                    const int by[] = {a, b, c};
                    for (std::size_t k = 0; k < 3; ++k)
                        other.sides[k] = other.sides[k] + Length{by[k] * length_of(Unit::cm).half_um};
                    if (!possible(other)) continue;
                    const double by_change = change(t, other) + 1e-9;
                    const TriangleKinds found = kinds(other, challenge);
                    INFO(to_mm(t.sides[0])
                         << ", " << to_mm(t.sides[1]) << ", " << to_mm(t.sides[2]) << " to " << to_mm(other.sides[0])
                         << ", " << to_mm(other.sides[1]) << ", " << to_mm(other.sides[2]));
                    if (found.by_sides == Kind::isosceles) CHECK(change(t, isosceles) <= by_change);
                    if (found.by_sides == Kind::equilateral) CHECK(change(t, equilateral) <= by_change);
                    if (found.by_angles == Kind::right && found.close_call == close_call)
                        CHECK(change(t, right) <= by_change);
                }
    }
}

TEST_CASE("On whole centimetres a right triangle is one of 3, 4, 5 and its like") {
    const Challenge challenge = challenge_at(one_cm);
    CHECK(nearest_right(triangle_mm(30, 40, 60), challenge, one_cm) == triangle_mm(30, 40, 50));
    CHECK(nearest_right(triangle_mm(120, 130, 40), challenge, one_cm) == triangle_mm(120, 130, 50));
    CHECK(nearest_right(triangle_mm(60, 80, 100), challenge, one_cm) == triangle_mm(60, 80, 100));
}

TEST_CASE("Exactly right: the legs keep their ratio, and legs and hypotenuse meet halfway") {
    const Triangle made = nearest_right(triangle_mm(30, 40, 54), challenge_at(one_mm), {});
    CHECK(made == triangle_mm(31.2, 41.6, 52));
    // A close call is made plain.
    const Challenge challenge = challenge_at(one_mm);
    const Triangle nearly = triangle_mm(120, 160, 199);
    REQUIRE(kinds(nearly, challenge).by_angles == Kind::right);
    REQUIRE(kinds(nearly, challenge).close_call);
    CHECK_FALSE(kinds(nearest_right(nearly, challenge, one_mm), challenge).close_call);
}

TEST_CASE("Two sides meet in the middle, and the third stays") {
    const Challenge challenge = challenge_at(one_mm);
    CHECK(nearest_isosceles(triangle_mm(80, 60, 50), challenge, {}) == triangle_mm(80, 55, 55));
    CHECK(nearest_isosceles(triangle_mm(80, 72, 50), challenge, one_mm) == triangle_mm(76, 76, 50));
    // An equilateral one is isosceles where the challenge says so, else one side gives way.
    Challenge both = challenge;
    both.equilateral_is_isosceles = true;
    CHECK(nearest_isosceles(triangle_mm(60, 60, 60), both, one_mm) == triangle_mm(60, 60, 60));
    CHECK(change(triangle_mm(60, 60, 60), nearest_isosceles(triangle_mm(60, 60, 60), challenge, one_mm)) == Approx(1));
}

TEST_CASE("All sides become their mean") {
    const Challenge challenge = challenge_at(one_mm);
    CHECK(nearest_equilateral(triangle_mm(80, 60, 51), challenge, one_mm) == triangle_mm(64, 64, 64));
    CHECK(nearest_equilateral(triangle_mm(80, 60, 51.5), challenge, {}).sides[0] == length_from_mm(191.5 / 3));
}
