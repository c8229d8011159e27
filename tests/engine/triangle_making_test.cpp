// SPDX-License-Identifier: MIT
#include "engine/geometry/triangle_making.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "engine/geometry/shape.h"
#include "engine/typed_angle.h"
#include "tests/engine/triangle_mm.h"

using namespace boughwork;

namespace {

const Stop exact{};
const Stop at_1_mm{Step{1, 1, Unit::mm}};
const Stop at_1_cm{Step{1, 1, Unit::cm}};
const Stop at_quarter_inch{Step{1, 4, Unit::in}};

Length mm(double value) { return length_from_mm(value); }

double side_mm(const Triangle& t, std::size_t side) { return to_mm(t.sides[side - 1]); }
double angle_deg(const Triangle& t, std::size_t corner) { return angles_rad(t)[corner - 1] * degrees_per_radian; }

}  // namespace

TEST_CASE("Three sides make one triangle, or the reason why not (Euclid I.8, I.20)") {
    CHECK(*triangle_of_sides(mm(30), mm(40), mm(50)) == triangle_mm(30, 40, 50));
    CHECK_FALSE(triangle_of_sides(mm(30), mm(40), mm(70)));
    CHECK_FALSE(triangle_of_sides(mm(30), mm(40), mm(0)));
}

TEST_CASE("Two sides and the angle between make one triangle (Euclid I.4)") {
    // 3-4-5 and 5-12-13 (Euclid I.47); half an equilateral triangle: 30, 60, 90 degrees (I.1, I.12).
    CHECK(*triangle_of_angle_between(mm(30), mm(40), 90, exact) == triangle_mm(30, 40, 50));
    CHECK(*triangle_of_angle_between(mm(50), mm(120), 90, at_1_mm) == triangle_mm(50, 120, 130));
    CHECK(*triangle_of_angle_between(mm(40), mm(80), 60, exact) == triangle_mm(40, 80, 40 * std::sqrt(3)));
    CHECK(*triangle_of_angle_between(mm(70), mm(70), 60, at_1_cm) == triangle_mm(70, 70, 70));
    // The law of cosines by whole numbers: 7^2 = 3^2 + 5^2 + 3 * 5 at 120 degrees, 7^2 = 3^2 + 8^2 - 3 * 8 at 60.
    CHECK(*triangle_of_angle_between(mm(30), mm(50), 120, exact) == triangle_mm(30, 50, 70));
    CHECK(*triangle_of_angle_between(mm(30), mm(80), 60, exact) == triangle_mm(30, 80, 70));
}

TEST_CASE("A side and its two angles make one triangle (Euclid I.26)") {
    CHECK(*triangle_of_two_angles(mm(60), 60, 60, exact) == triangle_mm(60, 60, 60));
    // 30, 60, 90: the side opposite 90 is twice that opposite 30.
    CHECK(*triangle_of_two_angles(mm(80), 30, 60, exact) == triangle_mm(80, 40, 40 * std::sqrt(3)));
    // The law of sines with a right isosceles triangle.
    CHECK(*triangle_of_two_angles(mm(50), 90, 45, exact) == triangle_mm(50, 50 * std::sqrt(2), 50));
    CHECK_FALSE(triangle_of_two_angles(mm(60), 100, 80, exact));
    CHECK_FALSE(triangle_of_two_angles(mm(60), 90, 120, exact));
}

TEST_CASE("Two sides and an angle opposite one of them may make two triangles, one, or none") {
    // 7 opposite 60 degrees beside 8: 8^2 - 8 x + x^2 = 7^2 gives 5 and 3.
    const auto two = triangles_of_angle_opposite(mm(70), mm(80), 60, exact);
    REQUIRE(two);
    CHECK(*two == std::vector<Triangle>{triangle_mm(70, 80, 50), triangle_mm(70, 80, 30)});
    // As long as the height: it stands square. 30 degrees: half of it.
    CHECK(*triangles_of_angle_opposite(mm(40), mm(80), 30, exact) ==
          std::vector<Triangle>{triangle_mm(40, 80, 40 * std::sqrt(3))});
    // Not shorter than the other side: the second would lie on the far side of the corner.
    CHECK(triangles_of_angle_opposite(mm(80), mm(80), 30, exact)->size() == 1);
    CHECK(triangles_of_angle_opposite(mm(90), mm(80), 30, exact)->size() == 1);
    CHECK(*triangles_of_angle_opposite(mm(70), mm(30), 120, exact) == std::vector<Triangle>{triangle_mm(70, 30, 50)});
    CHECK(*triangles_of_angle_opposite(mm(50), mm(40), 90, exact) == std::vector<Triangle>{triangle_mm(50, 40, 30)});
    CHECK_FALSE(triangles_of_angle_opposite(mm(39), mm(80), 30, exact));
    CHECK_FALSE(triangles_of_angle_opposite(mm(80), mm(80), 90, exact));
    CHECK_FALSE(triangles_of_angle_opposite(mm(30), mm(70), 120, exact));
    // At a coarse step the two become one.
    CHECK(triangles_of_angle_opposite(mm(49.9), mm(50), 86, at_1_cm)->size() == 1);
    CHECK(triangles_of_angle_opposite(mm(40.01), mm(80), 30, at_1_cm)->size() == 1);
}

TEST_CASE("Only a side that was worked out stops at the step") {
    CHECK(*triangle_of_angle_between(mm(33), mm(47), 90, at_1_cm) == triangle_mm(33, 47, 60));  // 57.4
    CHECK(*triangle_of_angle_between(mm(25.4), mm(25.4), 90, at_quarter_inch) == triangle_mm(25.4, 25.4, 38.1));
    CHECK(*triangle_of_two_angles(mm(61), 40, 70, at_1_cm) == triangle_mm(61, 40, 60));  // 41.7 and 61
    // Flat at the step: 1.0 and 1.0 and 2.
    const auto flat = triangle_of_two_angles(mm(20), 20, 20, at_1_cm);
    REQUIRE_FALSE(flat);
    CHECK(flat.problem().to_do == "Make it larger, or ask for exact lengths.");
    CHECK(triangle_of_two_angles(mm(20), 20, 20, at_1_mm));
}

TEST_CASE("Lengths stop at the nearest step, a half going up, and never at nothing") {
    CHECK(stopped(84.5, at_1_mm) == mm(85));
    CHECK(stopped(84.4, at_1_cm) == mm(80));
    CHECK(stopped(0.2, at_1_cm) == mm(10));
    CHECK(stopped(0, exact) == Length{1});
    CHECK(multiple_of({1, 3, Unit::mm}, 2) == Length{1333});  // 1333 1/3
    CHECK(multiple_of({1, 16, Unit::in}, 3) == Length{3 * 3175});
}

TEST_CASE("The angles that were typed come back from exact lengths") {
    std::mt19937 dice(4);
    std::uniform_real_distribution<double> side(20, 200);
    std::uniform_real_distribution<double> angle(5, 170);
    for (int i = 0; i < 2000; ++i) {
        const Length a = mm(side(dice));
        const Length b = mm(side(dice));
        const double alpha = angle(dice);
        const double beta = angle(dice);
        const auto between = triangle_of_angle_between(a, b, alpha, exact);
        REQUIRE(between);
        // Half-micrometres of sides of 20 mm and more, at angles of 5 degrees and more.
        CHECK(angle_deg(*between, 2) == Approx(alpha).margin(0.02));
        if (alpha + beta < 175) {
            const auto two = triangle_of_two_angles(a, alpha, beta, exact);
            REQUIRE(two);
            CHECK(angle_deg(*two, 1) == Approx(alpha).margin(0.02));
            CHECK(angle_deg(*two, 2) == Approx(beta).margin(0.02));
        }
        if (const auto opposite = triangles_of_angle_opposite(a, b, alpha, exact))
            for (const Triangle& made : *opposite)
                if (side_mm(made, 3) > 10) CHECK(angle_deg(made, 3) == Approx(alpha).margin(0.02));
    }
}

TEST_CASE("A needle keeps its digits") {
    // Kahan, "Miscalculating Area and Angles of a Needle-like Triangle" (2014): equal sides and a hair's angle, where
    // a^2 + b^2 - 2 a b cos C is nothing but rounding. 100 m at 0.0001 degrees: 2 a sin(C / 2) = 0.17453 mm.
    const auto needle = triangle_of_angle_between(mm(100000), mm(100000), 0.0001, exact);
    REQUIRE(needle);
    CHECK(side_mm(*needle, 3) == Approx(2 * 100000 * std::sin(0.00005 * pi / 180)).margin(0.0003));
    // The second triangle of the ambiguous case, worked out without a difference: 8 mm from 100 m.
    const auto two = triangles_of_angle_opposite(mm(99995), mm(100000), 50, exact);
    REQUIRE(two);
    REQUIRE(two->size() == 2);
    CHECK(side_mm((*two)[1], 3) == Approx(7.77890).margin(0.0005));
    // 180 degrees but a hair: the third side is all but the other two together, and that is still a triangle.
    const auto flat = triangle_of_angle_between(mm(100), mm(100), 179, exact);
    REQUIRE(flat);
    CHECK(side_mm(*flat, 3) == Approx(199.99238).margin(0.0005));
    CHECK_FALSE(triangle_of_angle_between(mm(100), mm(100), 179.9, exact));
    CHECK_FALSE(triangle_of_two_angles(mm(1000), 89.99999, 89.99999, exact));  // past a kilometre
}

TEST_CASE("Angles are typed as decimals of a degree") {
    CHECK(*parse_angle_deg("60") == 60);
    CHECK(*parse_angle_deg(" 22,5 ") == 22.5);
    CHECK(*parse_angle_deg("22.5°") == 22.5);
    CHECK(*parse_angle_deg("179.999") == 179.999);
    for (const char* wrong : {"", " ", "sixty", "6O", "60.", ".", "1.2.3", "-5", "0", "180", "200", "1e2", "60 °°"}) {
        INFO(wrong);
        CHECK_FALSE(parse_angle_deg(wrong));
    }
    CHECK(angle_number(22.46) == "22.5");
    CHECK(angle_number(90.0) == "90");
    CHECK(angle_number(9.96) == "10");
}
