// SPDX-License-Identifier: MIT
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// 3-4-5 in cm, hung by its longest side.
const Piece corner = triangle(1, 50, 40, 30);

/// One hanging piece in a challenge that shows cm and measures to a step.
SceneBuilder in_cm(const Piece& piece, ScoreBy by, Step step = {}) {
    SceneBuilder plan = with_level_branch().hang(piece, under(100));
    plan.challenge().units = Unit::cm;
    plan.challenge().step = step;
    plan.challenge().score.by = by;
    return plan;
}

double total(const std::vector<BonusLine>& lines) {
    double sum = 0;
    for (const BonusLine& line : lines) sum += line.points;
    return sum;
}

TEST_CASE("A piece scores its longest measured side") {
    CHECK(in_cm(corner, ScoreBy::longest_side).check().score == 5.0);
    CHECK(in_cm(triangle(1, 80.4, 60, 50), ScoreBy::longest_side).check().score == 8.0);
    CHECK(in_cm(triangle(1, 50, 80.5, 60), ScoreBy::longest_side).check().score == 8.1);
    CHECK(in_cm(triangle(1, 84, 60, 50), ScoreBy::longest_side, whole_cm).check().score == 8.0);
}

TEST_CASE("A piece scores its perimeter, the sum of its measured sides") {
    CHECK(Challenge{}.score.by == ScoreBy::perimeter);
    CHECK(in_cm(triangle(1, 80, 60, 50), ScoreBy::perimeter).check().score == 19.0);
    // 4.4 + 4.4 + 4.4 is 13.2, but the sides measure 4 each.
    CHECK(in_cm(triangle(1, 44, 44, 44), ScoreBy::perimeter, whole_cm).check().score == 12.0);
    CHECK(in_cm(rectangle(1, 25, 30), ScoreBy::perimeter, whole_cm).check().score == 12.0);
}

TEST_CASE("Lengths measured by hand score where the challenge says so, and all sides were measured") {
    Piece measured = triangle(1, 80, 60, 50);
    measured.by_hand.sides = {length_from_mm(81), length_from_mm(60), length_from_mm(49.5)};
    SceneBuilder plan = in_cm(measured, ScoreBy::perimeter);
    CHECK(plan.check().score == 19.0);
    plan.challenge().hand_lengths_score = true;
    CHECK(plan.check().score == 19.1);  // 8.1 + 6 + 5: a half goes up
    CHECK(plan.check().pieces[0].points == 19.1);
    plan.challenge().score.by = ScoreBy::longest_side;
    CHECK(plan.check().score == 8.1);
    plan.challenge().step = whole_cm;
    CHECK(plan.check().score == 8.0);
    plan.challenge().step = {};
    plan.challenge().score.by = ScoreBy::perimeter;
    plan.scene.pieces[0].by_hand.sides[1].reset();
    CHECK(plan.check().score == 19.0);
}

TEST_CASE("A piece keeps its kinds and its likeness whatever the hands measured") {
    Piece measured = triangle(1, 60, 60, 60);
    measured.by_hand.sides = {length_from_mm(61), length_from_mm(60), length_from_mm(59)};
    SceneBuilder plan = in_cm(measured, ScoreBy::area);
    plan.challenge().hand_lengths_score = true;
    const Report report = plan.check();
    CHECK(report.pieces[0].measures.kinds->by_sides == Kind::equilateral);
    CHECK(report.score == Approx(6.1 * 5.2 / 2));  // the height is the referee's
}

TEST_CASE("A triangle scores half its measured longest side times its measured height") {
    CHECK(in_cm(corner, ScoreBy::area).check().score == 6.0);            // 50 x 24 / 2 square mm.
    CHECK(in_cm(corner, ScoreBy::area, whole_cm).check().score == 5.0);  // 5 x 2 / 2, as a pupil works it out.
    // True area 56 x 22.6 / 2: to the step 6 x 2 / 2 on the truly longest side.
    CHECK(in_cm(triangle(1, 56, 64, 26), ScoreBy::area, whole_cm).check().score == 6.0);
}

TEST_CASE("Another shape scores its true area to the nearest square step") {
    CHECK(in_cm(rectangle(1, 25, 30), ScoreBy::area, whole_cm).check().score == 8.0);  // 7.5
    CHECK(in_cm(rectangle(1, 40, 30), ScoreBy::area).check().score == 12.0);
}

TEST_CASE("One point is one of the score's own unit, or else of the challenge's") {
    SceneBuilder plan = in_cm(corner, ScoreBy::perimeter);
    plan.challenge().units = Unit::mm;
    CHECK(plan.check().score == 120);
    plan.challenge().score.unit = Unit::cm;
    CHECK(plan.check().score == 12);
    plan.challenge().score.by = ScoreBy::area;
    CHECK(plan.check().score == 6);
    plan.challenge().score.unit = Unit::mm;
    CHECK(plan.check().score == 600);
}

TEST_CASE("Inches score in inches") {
    SceneBuilder plan = with_level_branch().hang(triangle(1, 5 * 25.4, 4 * 25.4, 3 * 25.4), under(100));
    plan.challenge().units = Unit::in;
    plan.challenge().step = {1, 8, Unit::in};
    CHECK(plan.check().score == 12.0);
    plan.challenge().score.by = ScoreBy::area;
    // The height is 2.4 in: 19 eighths, and 40 x 19 / 2 square eighths are 5.9375 square inches.
    CHECK(plan.check().score == 5.9375);
}

TEST_CASE("The score is the sum of the pieces that count") {
    SceneBuilder plan = in_cm(corner, ScoreBy::perimeter);
    plan.hang(triangle(2, 80, 60, 50), under(200));
    plan.hang(triangle(3, 80, 60, 50), {.at_mm = {100, 250}});
    plan.keep(triangle(4, 80, 60, 50));
    const Report report = plan.check();
    CHECK(piece(report, 1).points == 12.0);
    CHECK(piece(report, 2).points == 19.0);
    CHECK(piece(report, 3).points == 0);
    CHECK(piece(report, 4).points == 0);
    CHECK(report.score == 31.0);
}

TEST_CASE("Many points of tenths add up without a crumb") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {2000, 404}});
    plan.challenge().units = Unit::cm;
    for (int number = 1; number <= 60; ++number) plan.hang(triangle(number, 11, 11, 11), under(30 * number));
    CHECK(plan.check().score == 198.0);  // 60 x 3.3; added up one by one in doubles it is 198.00000000000017.
}

TEST_CASE("A bonus is paid for each counting piece of a kind") {
    SceneBuilder plan = with_level_branch();
    plan.hang(triangle(1, 30, 30, 30), under(20)).hang(triangle(2, 30, 30, 30), under(70));
    plan.hang(triangle(3, 50, 40, 30), under(120)).hang(triangle(4, 30, 30, 30), {.at_mm = {100, 200}});
    plan.challenge().score.bonuses = {{.for_what = PerPiece{Kind::equilateral}, .points = 5}};
    const Report report = plan.check();
    REQUIRE(report.bonuses.size() == 1);
    CHECK(report.bonuses[0].points == 10);
    CHECK(contains(report.bonuses[0].words, "equilateral"));
    CHECK(report.score == 90 + 90 + 120 + 10);
    CHECK(piece(report, 1).points == 90);  // Bonuses are lines of their own.

    plan.challenge().score.bonuses[0].for_what = PerPiece{Kind::right};
    CHECK(plan.check().bonuses.at(0).points == 5);
}

TEST_CASE("A bonus for isosceles is paid for equilateral pieces only where those count as isosceles") {
    SceneBuilder plan = with_level_branch();
    plan.hang(triangle(1, 30, 30, 30), under(20)).hang(triangle(2, 30, 40, 40), under(70));
    plan.challenge().score.bonuses = {{.for_what = PerPiece{Kind::isosceles}, .points = 5}};
    CHECK(total(plan.check().bonuses) == 5);
    plan.challenge().equilateral_is_isosceles = true;
    CHECK(total(plan.check().bonuses) == 10);
}

TEST_CASE("A bonus is paid for each counting piece at a depth") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 100, 30), under(100));
    plan.challenge().depth_limit.reset();
    plan.hang_from(1, 3, rectangle(2, 30, 30), {});
    plan.hang_from(1, 3, rectangle(3, 30, 30), {.from_mm = 50});
    plan.hang_from(3, 3, rectangle(4, 30, 30), {});
    plan.challenge().score.bonuses = {{.for_what = PerDepth{2}, .points = 3}};
    CHECK(plan.check().bonuses.at(0).points == 6);
    CHECK(plan.check().score == 260 + 3 * 120 + 6);
}

TEST_CASE("A bonus is paid once for a criterion that is met") {
    SceneBuilder plan = in_cm(corner, ScoreBy::perimeter);
    plan.challenge().criteria = {{KindAppears{Kind::equilateral, 1}, ""}, {KindAppears{Kind::right, 1}, ""}};
    plan.challenge().score.bonuses = {{.for_what = IfMet{1}, .points = 10}};
    CHECK(total(plan.check().bonuses) == 10);
    CHECK(plan.check().score == 22);
    plan.challenge().score.bonuses[0].for_what = IfMet{0};
    CHECK(total(plan.check().bonuses) == 0);
    CHECK(plan.check().score == 12);
}

TEST_CASE("A bonus can be the teacher's own words, and points can be taken off") {
    SceneBuilder plan = in_cm(corner, ScoreBy::perimeter);
    plan.challenge().score.bonuses = {{.for_what = InWords{"Neatest labels"}, .points = 2},
                                      {.for_what = InWords{"Glue on the table"}, .points = -0.5}};
    const Report report = plan.check();
    REQUIRE(report.bonuses.size() == 2);
    CHECK(report.bonuses[0].words == "Neatest labels");
    CHECK(report.bonuses[0].points == 2);
    CHECK(report.bonuses[1].words == "Glue on the table");
    CHECK(report.score == 13.5);
}

TEST_CASE("Each bonus is a line of its own, in the order of the challenge") {
    SceneBuilder plan = in_cm(corner, ScoreBy::perimeter);
    plan.challenge().criteria = {{KindAppears{Kind::right, 1}, ""}};
    plan.challenge().score.bonuses = {{.for_what = IfMet{0}, .points = 10},
                                      {.for_what = PerPiece{Kind::scalene}, .points = 4},
                                      {.for_what = InWords{"Neatest labels"}, .points = 2},
                                      {.for_what = PerDepth{1}, .points = 1}};
    const Report report = plan.check();
    REQUIRE(report.bonuses.size() == 4);
    CHECK(report.bonuses[0].points == 10);
    CHECK(report.bonuses[1].points == 4);
    CHECK(report.bonuses[2].points == 2);
    CHECK(report.bonuses[3].points == 1);
    CHECK(report.score == 12 + 17);
}

}  // namespace
}  // namespace boughwork::testing
