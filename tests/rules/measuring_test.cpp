// SPDX-License-Identifier: MIT
#include "rules/description.h"
#include "rules/measure.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

using Steps = std::vector<std::int64_t>;

Challenge measured_in(Step step) {
    Challenge challenge;
    challenge.step = step;
    return challenge;
}
const Step half_mm{1, 2, Unit::mm};

Steps sides(const Piece& piece, Step step) { return measure(piece.shape, measured_in(step)).sides_in_steps; }

bool notes(const Piece& piece, Step step, const std::string& words) {
    const Challenge challenge = measured_in(step);
    for (const std::string& note : describe(piece.shape, measure(piece.shape, challenge), challenge).notes)
        if (note.find(words) != std::string::npos) return true;
    return false;
}

// School rounding is half up; standards and IEEE 754 default to half even; they differ only at ties.
TEST_CASE("A measure half-way between two steps goes up") {
    CHECK(sides(triangle(1, 2.5, 2.5, 2.5), whole_mm) == Steps{3, 3, 3});                // Half even: 2.
    CHECK(sides(triangle(1, 2.25, 2.25, 2.25), half_mm) == Steps{5, 5, 5});              // 2.5; half even: 2.0.
    CHECK(sides(triangle(1, 3.25, 3.25, 3.25), half_mm) == Steps{7, 7, 7});              // 3.5; half even: 3.0.
    CHECK(sides(triangle(1, 1.125, 1.125, 1.125), {1, 4, Unit::mm}) == Steps{5, 5, 5});  // 1.25; half even: 1.00.
    const double sixteenth = 25.4 / 16;
    CHECK(sides(triangle(1, sixteenth, sixteenth, sixteenth), {1, 8, Unit::in}) == Steps{1, 1, 1});  // Half even: 0.
}

TEST_CASE("A measure just below half-way goes down") {
    CHECK(sides(triangle(1, 2.4995, 2.4995, 2.4995), whole_mm) == Steps{2, 2, 2});
    CHECK(sides(triangle(1, 84.9995, 84.9995, 84.9995), {5, 1, Unit::mm}) == Steps{17, 17, 17});
    CHECK(sides(triangle(1, 82.4995, 82.4995, 82.4995), {5, 1, Unit::mm}) == Steps{16, 16, 16});
    CHECK(sides(triangle(1, 82.5, 82.5, 82.5), {5, 1, Unit::mm}) == Steps{17, 17, 17});
}

TEST_CASE("Ties of typed decimals are decided exactly, not in binary fractions") {
    // In doubles 1.15 / 0.1 is 11.499999999999998, and 8.05 / 0.1 is 80.50000000000001 but 80.5 is meant.
    REQUIRE(1.15 / 0.1 < 11.5);
    const Step tenth_cm{1, 10, Unit::cm};
    CHECK(sides(triangle(1, 11.5, 11.5, 11.5), tenth_cm) == Steps{12, 12, 12});
    for (int tenths = 5; tenths < 20'000; tenths += 10) {
        const double mm = tenths / 10.0;  // 0.5, 1.5, 2.5 ...
        REQUIRE(sides(triangle(1, mm, mm, mm), tenth_cm)[0] == tenths / 10 + 1);
    }
}

TEST_CASE("Every odd sixteenth of an inch goes up to the next eighth") {
    for (int sixteenths = 1; sixteenths < 800; sixteenths += 2) {
        const double mm = sixteenths * 25.4 / 16;
        REQUIRE(sides(triangle(1, mm, mm, mm), {1, 8, Unit::in})[0] == (sixteenths + 1) / 2);
    }
}

TEST_CASE("Sides are measured by the ruler of the challenge") {
    // Steps by grade: Common Core State Standards for Mathematics 2.MD, 3.MD.B.4, 4.MD.B.4 and 5.MD.B.2.
    const Piece pennant = triangle(1, 80, 62.4, 57.6);
    CHECK(sides(pennant, whole_mm) == Steps{80, 62, 58});
    CHECK(sides(pennant, {5, 1, Unit::mm}) == Steps{16, 12, 12});
    CHECK(sides(pennant, whole_cm) == Steps{8, 6, 6});
    // 3.1496, 2.4567 and 2.2677 inches.
    CHECK(sides(pennant, {1, 8, Unit::in}) == Steps{25, 20, 18});
    CHECK(sides(pennant, {1, 4, Unit::in}) == Steps{13, 10, 9});
    CHECK(sides(pennant, {1, 2, Unit::in}) == Steps{6, 5, 5});
    CHECK(sides(pennant, {1, 1, Unit::in}) == Steps{3, 2, 2});
    CHECK(measure(pennant.shape, measured_in(whole_cm)).perimeter_in_steps == 20);
    CHECK(measure(pennant.shape, measured_in(whole_mm)).perimeter_in_steps == 200);
}

TEST_CASE("Steps are given in any unit as one exact fraction") {
    CHECK(in_units(190, whole_mm, Unit::cm) == 19.0);
    CHECK(in_units(3, {1, 8, Unit::in}, Unit::in) == 0.375);
    CHECK(in_units(8, {1, 8, Unit::in}, Unit::mm) == 25.4);
    CHECK(in_units(127, {1, 10, Unit::cm}, Unit::in) == 5.0);
    CHECK(in_units(3, whole_mm, Unit::cm) == 0.3);
    // 2 x area = 25 square half-inches: 3.125 square inches.
    CHECK(area_in_units(25, {1, 2, Unit::in}, Unit::in) == 3.125);
    CHECK(area_in_units(1200, whole_mm, Unit::cm) == 6.0);
}

TEST_CASE("The sides of an outline are measured too, its ties exactly") {
    // 1.5-2-2.5: the slanting side is exactly 2.5 mm.
    CHECK(sides(outline(1, {{0, 0}, {2, 0}, {0, -1.5}}), whole_mm) == Steps{2, 3, 2});
    // One half-micrometre less is below half-way: 1.5 x 1.9995.
    CHECK(sides(outline(1, {{0, 0}, {1.9995, 0}, {0, -1.5}}), whole_mm) == Steps{2, 2, 2});
    CHECK(sides(rectangle(1, 25, 30), whole_cm) == Steps{3, 3, 3, 3});
}

TEST_CASE("The height stands on the truly longest side") {
    const Measures in_mm = measure(triangle(1, 30, 40, 50).shape, measured_in(whole_mm));
    CHECK(in_mm.height_in_steps == 24);
    CHECK(in_mm.area_in_half_square_steps == 50 * 24);
    const Measures in_cm = measure(triangle(1, 30, 40, 50).shape, measured_in(whole_cm));
    CHECK(in_cm.height_in_steps == 2);  // 2.4
    CHECK(in_cm.area_in_half_square_steps == 5 * 2);
    // Two sides measure 6 cm; the height on the truly longest, 64 mm, is 22.6 mm, on the other 25.9 mm.
    const Measures near = measure(triangle(1, 56, 64, 26).shape, measured_in(whole_cm));
    CHECK(near.sides_in_steps == Steps{6, 6, 3});
    CHECK(near.height_in_steps == 2);
}

TEST_CASE("The height of a triangle is rounded half up where it is exactly half-way") {
    // The height of 25-25-30 is 20, that of 3.75-5-6.25 (a quarter of 15-20-25) is 3.
    CHECK(measure(triangle(1, 25, 30, 25).shape, measured_in({8, 1, Unit::mm})).height_in_steps == 3);     // 20 / 8
    CHECK(measure(triangle(1, 3.75, 5, 6.25).shape, measured_in({2, 1, Unit::mm})).height_in_steps == 2);  // 3 / 2
}

TEST_CASE("The area of other shapes is the true one, to the nearest square step") {
    CHECK(measure(rectangle(1, 25, 30).shape, measured_in(whole_cm)).area_in_half_square_steps == 2 * 8);  // 7.5
    CHECK(measure(rectangle(1, 24, 31).shape, measured_in(whole_cm)).area_in_half_square_steps == 2 * 7);  // 7.44
    CHECK(measure(rectangle(1, 40, 30).shape, measured_in(whole_mm)).area_in_half_square_steps == 2 * 1200);
    // A step that no one has, whose squares leave 64 bits: (120 x 9973)^2.
    CHECK(measure(rectangle(1, 120, 120).shape, measured_in({1, 9973, Unit::mm})).area_in_half_square_steps ==
          2 * std::int64_t{1'432'234'497'600});
}

TEST_CASE("Angles are those of the true shape, at their corners") {
    const Shape shape = triangle(1, 30, 40, 50).shape;
    const Challenge challenge = measured_in(whole_cm);
    const std::vector<double> angles = describe(shape, measure(shape, challenge), challenge).angles_deg;
    REQUIRE(angles.size() == 3);
    // Corner 1 is opposite to side 2, corner 2 to side 3, corner 3 to side 1.
    CHECK(angles[0] == Approx(53.13010235));
    CHECK(angles[1] == Approx(90).epsilon(1e-14));
    CHECK(angles[2] == Approx(36.86989765));
}

TEST_CASE("Rounded sides that make no triangle are noted") {
    // True 4.4, 4.4, 8.6 is a triangle; 4, 4, 9 is not.
    const std::string words = "rounded sides can't make this triangle";
    CHECK(sides(triangle(1, 4.4, 4.4, 8.6), whole_mm) == Steps{4, 4, 9});
    CHECK(notes(triangle(1, 4.4, 4.4, 8.6), whole_mm, words));
    CHECK(notes(triangle(1, 44, 44, 86), whole_cm, words));
    CHECK_FALSE(notes(triangle(1, 44, 44, 86), whole_mm, words));
}

TEST_CASE("Rounded sides can seem to make a triangle where there is none") {
    CHECK_FALSE(possible(triangle(1, 3.5, 4.5, 8.1).shape));
    CHECK(possible(triangle(1, 4, 5, 8).shape));
}

TEST_CASE("Rounded sides that can't make the kind by angles are noted") {
    const std::string words = "rounded sides can't make this triangle";
    // Legs of 6.8 and 3.4 cm measure 7 and 3, the side across 8: a triangle 7-3-8 has 98 degrees there.
    const double hypotenuse = std::sqrt(68.0 * 68 + 34.0 * 34);
    const Piece right = triangle(1, 68, 34, hypotenuse);
    REQUIRE(measure(right.shape, measured_in(whole_cm)).kinds->by_angles == Kind::right);
    CHECK(sides(right, whole_cm) == Steps{7, 3, 8});
    CHECK(notes(right, whole_cm, words));
    CHECK_FALSE(notes(right, whole_mm, words));
    CHECK_FALSE(notes(triangle(1, 30, 40, 50), whole_cm, words));
    CHECK_FALSE(notes(triangle(1, 60, 60, 60), whole_cm, words));
}

TEST_CASE("A side shorter than a step is noted") {
    CHECK(notes(triangle(1, 80, 80, 7), whole_cm, "shorter"));
    CHECK_FALSE(notes(triangle(1, 80, 80, 10), whole_cm, "shorter"));
    CHECK_FALSE(notes(triangle(1, 80, 80, 7), whole_mm, "shorter"));
}

namespace {

bool alike(const Piece& a, const Piece& b, Step step) {
    const auto likeness_of = [&](const Piece& p) {
        return likeness(p.shape, measure(p.shape, measured_in(step)), step);
    };
    return likeness_of(a) == likeness_of(b);
}

}  // namespace

TEST_CASE("Two pieces are alike when their measured sides agree in any order") {
    CHECK(alike(triangle(1, 80, 60, 50), triangle(2, 50, 80, 60), whole_mm));
    CHECK(alike(triangle(1, 80, 60, 50), triangle(2, 60, 80, 50), whole_mm));  // Mirrored.
    CHECK(alike(triangle(1, 80, 60, 50), triangle(2, 80.4, 59.6, 50), whole_mm));
    CHECK_FALSE(alike(triangle(1, 80, 60, 50), triangle(2, 80.5, 60, 50), whole_mm));
    CHECK(alike(triangle(1, 80, 60, 50), triangle(2, 80.5, 60, 50), whole_cm));
    CHECK(alike(triangle(1, 50, 40, 30), outline(2, {{0, 0}, {40, 0}, {0, -30}}), whole_mm));
}

TEST_CASE("Two four-cornered pieces of the same sides are not alike when they lean differently") {
    const Piece square = rectangle(1, 50, 50);
    const Piece leaning = outline(2, {{0, 0}, {50, 0}, {80, -40}, {30, -40}});  // All sides 50.
    CHECK_FALSE(alike(square, leaning, whole_mm));
    const Piece mirrored = outline(3, {{0, 0}, {50, 0}, {20, -40}, {-30, -40}});
    CHECK(alike(leaning, mirrored, whole_mm));
}

}  // namespace
}  // namespace boughwork::testing
