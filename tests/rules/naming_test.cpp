// SPDX-License-Identifier: MIT
#include "rules/description.h"
#include "rules/measure.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

TriangleKinds named(const Piece& piece, Challenge challenge = {}) {
    const std::optional<TriangleKinds> kinds = measure(piece.shape, challenge).kinds;
    REQUIRE(kinds);
    return *kinds;
}
Kind by_sides(const Piece& piece, Challenge challenge = {}) { return named(piece, challenge).by_sides; }
Kind by_angles(const Piece& piece, Challenge challenge = {}) { return named(piece, challenge).by_angles; }
bool close_call(const Piece& piece, Challenge challenge = {}) { return named(piece, challenge).close_call; }

Challenge right_within(double deg) { return {.right_within_deg = deg}; }

/// Legs of 60 and 80 mm with that angle between them, to half a micrometre.
Piece with_angle(double deg) {
    const double angle_rad = deg / degrees_per_radian;
    return triangle(1, 60, 80, std::sqrt(60.0 * 60 + 80.0 * 80 - 2 * 60 * 80 * std::cos(angle_rad)));
}

std::string name(const Piece& piece, Challenge challenge = {}) {
    return describe(piece.shape, measure(piece.shape, challenge), challenge).name;
}
bool has(const std::string& text, const std::string& word) { return text.find(word) != std::string::npos; }

// Euclid, Elements I, Def. 20 (Heath): equilateral has three sides equal, isosceles two alone, scalene none.
TEST_CASE("By its sides a triangle is equilateral, isosceles or scalene") {
    CHECK(by_sides(triangle(1, 60, 60, 60)) == Kind::equilateral);
    CHECK(by_sides(triangle(1, 60, 60, 50)) == Kind::isosceles);
    CHECK(by_sides(triangle(1, 60, 50, 60)) == Kind::isosceles);
    CHECK(by_sides(triangle(1, 50, 60, 60)) == Kind::isosceles);
    CHECK(by_sides(triangle(1, 60, 55, 50)) == Kind::scalene);
}

TEST_CASE("Sides are compared as they are measured") {
    CHECK(by_sides(triangle(1, 60.4, 59.6, 60)) == Kind::equilateral);
    CHECK(by_sides(triangle(1, 60.4, 59.4, 50)) == Kind::scalene);
    CHECK(by_sides(triangle(1, 60.5, 60.4, 50)) == Kind::scalene);  // 61 and 60.
    CHECK(by_sides(triangle(1, 64, 56, 55), {.step = {1, 1, Unit::cm}}) == Kind::equilateral);
    CHECK(by_sides(triangle(1, 60, 59.5, 40), {.step = {1, 2, Unit::mm}}) == Kind::scalene);
}

TEST_CASE("An equilateral triangle is isosceles too only where the challenge says so") {
    const TriangleKinds equilateral = named(triangle(1, 60, 60, 60));
    CHECK(is_of_kind(equilateral, Kind::equilateral, false));
    CHECK_FALSE(is_of_kind(equilateral, Kind::isosceles, false));  // Euclid.
    CHECK(is_of_kind(equilateral, Kind::equilateral, true));
    CHECK(is_of_kind(equilateral, Kind::isosceles, true));  // At least two equal: modern usage and OEIS.
    CHECK_FALSE(is_of_kind(equilateral, Kind::scalene, true));
    const TriangleKinds isosceles = named(triangle(1, 60, 60, 50));
    CHECK(is_of_kind(isosceles, Kind::isosceles, false));
    CHECK_FALSE(is_of_kind(isosceles, Kind::equilateral, true));
    CHECK_FALSE(is_of_kind(named(triangle(1, 60, 55, 50)), Kind::isosceles, true));
    CHECK_FALSE(Challenge{}.equilateral_is_isosceles);
}

// Euclid, Elements I, Def. 21 (Heath).
TEST_CASE("By its angles a triangle is right, acute or obtuse") {
    CHECK(by_angles(triangle(1, 30, 40, 50)) == Kind::right);
    CHECK(by_angles(triangle(1, 50, 30, 40)) == Kind::right);
    CHECK(by_angles(triangle(1, 60, 60, 60)) == Kind::acute);
    CHECK(by_angles(triangle(1, 80, 50, 40)) == Kind::obtuse);
}

TEST_CASE("A largest angle within one degree of a right one is right, unless the challenge is finer or coarser") {
    CHECK(by_angles(with_angle(89.01)) == Kind::right);
    CHECK(by_angles(with_angle(90.99)) == Kind::right);
    CHECK(by_angles(with_angle(88.99)) == Kind::acute);
    CHECK(by_angles(with_angle(91.01)) == Kind::obtuse);
    CHECK(by_angles(with_angle(88.01), right_within(2)) == Kind::right);
    CHECK(by_angles(with_angle(87.99), right_within(2)) == Kind::acute);
    CHECK(by_angles(with_angle(92.01), right_within(2)) == Kind::obtuse);
    CHECK(by_angles(with_angle(89.91), right_within(0.1)) == Kind::right);
    CHECK(by_angles(with_angle(89.89), right_within(0.1)) == Kind::acute);
    CHECK(by_angles(with_angle(90.11), right_within(0.1)) == Kind::obtuse);
    CHECK(by_angles(with_angle(90), right_within(0.001)) == Kind::right);
}

TEST_CASE("Angles are judged on the true shape, not on the measured sides") {
    // To the nearest centimetre this is 3-4-5; its largest angle has 95 degrees.
    const Piece nearly = triangle(1, 31, 39, 52);
    CHECK(measure(nearly.shape, {.step = {1, 1, Unit::cm}}).sides_in_steps == std::vector<std::int64_t>{3, 4, 5});
    CHECK(by_angles(nearly, {.step = {1, 1, Unit::cm}}) == Kind::obtuse);
}

TEST_CASE("A nearly right angle is a close call, whatever the challenge calls right") {
    for (const double within : {0.1, 1.0, 2.0}) {
        CAPTURE(within);
        CHECK_FALSE(close_call(with_angle(90), right_within(within)));
        CHECK_FALSE(close_call(with_angle(90.09), right_within(within)));
        CHECK(close_call(with_angle(90.11), right_within(within)));
        CHECK(close_call(with_angle(89.89), right_within(within)));
        CHECK(close_call(with_angle(91.99), right_within(within)));
        CHECK(close_call(with_angle(88.01), right_within(within)));
        CHECK_FALSE(close_call(with_angle(92.01), right_within(within)));
        CHECK_FALSE(close_call(with_angle(87.99), right_within(within)));
    }
    CHECK_FALSE(close_call(triangle(1, 60, 60, 60)));
}

TEST_CASE("A three-cornered outline has a kind like any triangle") {
    const Piece corner = outline(1, {{0, 0}, {40, 0}, {0, -30}});
    CHECK(by_angles(corner) == Kind::right);
    CHECK(by_sides(corner) == Kind::scalene);
}

TEST_CASE("Only three-cornered pieces of flat paper have a kind") {
    CHECK_FALSE(measure(rectangle(1, 40, 30).shape, {}).kinds);
    CHECK_FALSE(measure(cone(1, 20, 60).shape, {}).kinds);
}

TEST_CASE("A triangle's name says both kinds") {
    CHECK(has(name(triangle(1, 30, 40, 50)), "scalene"));
    CHECK(has(name(triangle(1, 30, 40, 50)), "right"));
    CHECK(has(name(triangle(1, 60, 60, 60)), "equilateral"));
    CHECK(has(name(triangle(1, 60, 60, 60)), "acute"));
}

TEST_CASE("Other polygons are named by the number of their sides, regular ones as regular") {
    const auto regular = [](int n) {
        std::vector<Vec2> corners{{0, 0}};
        for (int i = 0; i + 1 < n; ++i) corners.push_back(corners.back() + turned_ccw({50, 0}, -2 * pi * i / n));
        return outline(1, corners);
    };
    CHECK(has(name(regular(6)), "hexagon"));
    CHECK(has(name(regular(6)), "regular"));
    CHECK(has(name(regular(5)), "pentagon"));
    CHECK(has(name(regular(5)), "regular"));
    CHECK(has(name(regular(8)), "octagon"));
    CHECK(has(name(regular(12)), "dodecagon"));
    CHECK(has(name(regular(13)), "13"));
    CHECK(has(name(regular(13)), "regular"));
    const Piece hexagon = outline(1, {{0, 0}, {60, 0}, {90, -30}, {60, -60}, {0, -60}, {-30, -30}});
    CHECK(has(name(hexagon), "hexagon"));
    CHECK_FALSE(has(name(hexagon), "regular"));
}

TEST_CASE("Equal sides without equal angles, and equal angles without equal sides, are not regular") {
    CHECK_FALSE(has(name(outline(1, {{0, 0}, {50, 0}, {80, -40}, {30, -40}})), "regular"));
    CHECK_FALSE(has(name(rectangle(1, 60, 40)), "regular"));
}

TEST_CASE("A cone is named a cone") { CHECK(has(name(cone(1, 20, 60)), "cone")); }

TEST_CASE("Pieces in the envelope are measured and named too") {
    const Report report = SceneBuilder().keep(triangle(4, 80, 60, 50)).check();
    CHECK(piece(report, 4).state == PieceState::in_the_envelope);
    CHECK(piece(report, 4).measures == measure(triangle(4, 80, 60, 50).shape, Challenge{.units = Unit::mm}));
    CHECK(piece(report, 4).points == 0);
    CHECK(report.score == 0);
}

}  // namespace
}  // namespace boughwork::testing
