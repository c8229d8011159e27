// SPDX-License-Identifier: MIT
#include "rules/told.h"

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

TEST_CASE("Everything is told unless the teacher keeps it back") {
    const SceneBuilder plan = with_level_branch().hang(triangle(1, 50, 40, 30), under(100));
    for (const Mathematics what : {Mathematics::lengths, Mathematics::kinds, Mathematics::sums, Mathematics::points}) {
        CHECK(is_told(plan.scene, what, plan.scene.pieces[0]));
        CHECK(is_told(plan.scene, what, current_plan(plan.scene)));
    }
}

TEST_CASE("What waits for an answer is told piece by piece, and of the plan once all have theirs") {
    SceneBuilder plan =
        with_level_branch().hang(triangle(1, 50, 40, 30), under(100)).hang(triangle(2, 50, 40, 30), under(200));
    plan.challenge().shown.kinds = Shows::after_an_answer;
    std::vector<Piece>& pieces = plan.scene.pieces;
    const auto told = [&](std::size_t i) { return is_told(plan.scene, Mathematics::kinds, pieces[i]); };
    pieces[0].answers.by_sides = Kind::scalene;
    CHECK_FALSE(told(0));
    pieces[0].answers.by_angles = Kind::acute;  // a wrong answer is an answer
    CHECK(told(0));
    CHECK_FALSE(told(1));
    CHECK_FALSE(is_told(plan.scene, Mathematics::kinds, current_plan(plan.scene)));
    pieces[1].answers = pieces[0].answers;
    CHECK(is_told(plan.scene, Mathematics::kinds, current_plan(plan.scene)));
    CHECK(is_told(plan.scene, Mathematics::sums, pieces[0]));
}

TEST_CASE("Lengths that wait for an answer are told when all sides were measured, and not beside a slip") {
    SceneBuilder it = with_level_branch();
    it.challenge().step = {.numerator = 5, .denominator = 1, .unit = Unit::mm};
    it.challenge().shown.lengths = Shows::after_an_answer;
    it.keep(triangle(1, 100, 80, 60));
    const auto told = [&](std::optional<double> second_mm) {
        std::vector<std::optional<Length>>& sides = it.scene.pieces[0].by_hand.sides;
        sides = {length_from_mm(100), std::nullopt, length_from_mm(60)};
        if (second_mm) sides[1] = length_from_mm(*second_mm);
        return is_told(it.scene, Mathematics::lengths, it.scene.pieces[0]);
    };
    CHECK_FALSE(told(std::nullopt));
    CHECK_FALSE(told(90));
    CHECK(told(80));
}

TEST_CASE("What waits for the end of the lesson is told by no answer") {
    SceneBuilder plan = with_level_branch().hang(triangle(1, 50, 40, 30), under(100));
    plan.challenge().shown = {.lengths = Shows::after_the_lesson, .points = Shows::after_an_answer};
    Piece& piece = plan.scene.pieces[0];
    piece.by_hand.sides.assign(3, length_from_mm(50));
    CHECK_FALSE(is_told(plan.scene, Mathematics::lengths, piece));
    CHECK_FALSE(is_told(plan.scene, Mathematics::points, piece));
    plan.scene.lesson.over = true;
    CHECK(is_told(plan.scene, Mathematics::lengths, piece));
    CHECK(is_told(plan.scene, Mathematics::points, piece));
}

TEST_CASE("A piece without kinds keeps none back") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 50, 40), under(100)).hang(cone(2, 10, 40), under(200));
    plan.challenge().shown.kinds = Shows::after_the_lesson;
    CHECK(is_told(plan.scene, Mathematics::kinds, current_plan(plan.scene)));
}

}  // namespace
}  // namespace boughwork::testing
