// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "engine/edit.h"
#include "engine/storage/plan_file.h"
#include "tests/engine/edited.h"

namespace boughwork {
namespace {

const Triangle first{{length_from_mm(80), length_from_mm(60), length_from_mm(50)}};

Scene two_pieces() {
    Scene scene = new_scene();
    scene.pieces = {{.number = {1}, .shape = first}, {.number = {2}, .shape = first}};
    return scene;
}

Challenge with(void (*change)(Challenge&)) {
    Challenge challenge;
    change(challenge);
    return challenge;
}

}  // namespace

TEST_CASE("a piece that gets another shape loses what was measured and answered about the old one") {
    Scene scene = after(two_pieces(), SetHandMeasured{{1}, {{length_from_mm(80), {}, length_from_mm(51)}, "star"}});
    scene = after(scene, SetAnswers{{1}, {.by_sides = Kind::scalene, .perimeter = length_from_mm(190)}});
    CHECK(after(scene, ReshapePiece{{1}, first}) == scene);
    const Triangle other{{length_from_mm(60), length_from_mm(60), length_from_mm(60)}};
    scene = after(scene, ReshapePiece{{1}, other});
    CHECK(scene.pieces[0].shape == Shape{other});
    CHECK(scene.pieces[0].by_hand == HandMeasured{});
    CHECK(scene.pieces[0].answers == Answers{});
    check_refused(scene, ReshapePiece{{1}, Triangle{{Length{2}, Length{2}, Length{4}}}}, "no triangle");
    check_refused(scene, ReshapePiece{{9}, first}, "no piece 9");
}

TEST_CASE("a piece is measured by hand side by side, or not at all") {
    check_refused(two_pieces(), SetHandMeasured{{1}, {{length_from_mm(80)}, "star"}}, "3 sides");
    check_refused(two_pieces(), SetHandMeasured{{1}, {{Length{0}, {}, {}}, "star"}}, "as long as that");
    check_refused(two_pieces(), SetHandMeasured{{1}, {{}, "\xFF"}}, "UTF-8");
    check_refused(two_pieces(), SetAnswers{{1}, {.perimeter = Length{-1}}}, "no such number");
}

TEST_CASE("a sealed challenge is changed by nothing but the breaking of its seal") {
    Challenge challenge;
    challenge.sealed = true;
    const Scene scene = after(two_pieces(), SetChallenge{challenge});
    challenge.tolerance_mm = 2;
    check_refused(scene, SetChallenge{challenge}, "sealed");
    challenge.sealed = false;
    check_refused(scene, SetChallenge{challenge}, "sealed");
    challenge.tolerance_mm = 1;
    const Scene open = after(scene, SetChallenge{challenge});
    challenge.tolerance_mm = 2;
    CHECK(after(open, SetChallenge{challenge}).challenge.tolerance_mm == 2);
}

TEST_CASE("a step is kept in lowest terms, as a file has it") {
    const Scene scene = after(two_pieces(), SetChallenge{with([](Challenge& c) { c.step = {2, 4, Unit::cm, ""}; })});
    CHECK(scene.challenge.step == Step{1, 2, Unit::cm, ""});
}

TEST_CASE("a challenge that cannot be meant is refused with the reason") {
    const Scene scene = two_pieces();
    const auto refused = [&](void (*change)(Challenge&), const std::string& reason) {
        check_refused(scene, SetChallenge{with(change)}, reason);
    };
    refused([](Challenge& c) { c.tolerance_mm = 0; }, "tolerance");
    refused([](Challenge& c) { c.step.numerator = 0; }, "step");
    refused([](Challenge& c) { c.step = {1, 1'000'000, Unit::mm, ""}; }, "step");
    refused([](Challenge& c) { c.right_within_deg = 91; }, "right angle");
    refused([](Challenge& c) { c.depth_limit = 0; }, "chain");
    refused([](Challenge& c) { c.limits.pieces = {5, 4}; }, "least");
    refused([](Challenge& c) { c.limits.side = {Length{2}, Length{1}}; }, "least");
    refused([](Challenge& c) { c.limits.sheets = -1; }, "limits");
    refused([](Challenge& c) { c.criteria = {{KindShare{Kind::right, 101}, ""}}; }, "criteria");
    refused([](Challenge& c) { c.score.bonuses = {{IfMet{0}, 5, ""}}; }, "bonus");
    refused([](Challenge& c) { c.score.bonuses = {{InWords{"neat"}, 1e9, ""}}; }, "points");
    refused([](Challenge& c) { c.name = "\xFF"; }, "UTF-8");
}

TEST_CASE("a tolerance that a branch cannot bear is refused, and the branch named") {
    Scene scene = two_pieces();
    scene.plans[0].tree.branches = {{.name = "b1", .path_mm = {{0, 100}, {100, 100}, {2, 103}}, .thickness_mm = 8}};
    check_refused(scene, SetChallenge{Challenge{}}, "branch b1 of Plan 1");
}

TEST_CASE("a piece is judged once on a built tree, and forgotten with the piece") {
    Built built{.piece = {1}, .found = Found::wrong, .broken = {Rule::ground}};
    Scene scene = after(two_pieces(), JudgeBuilt{built});
    built.ruling = Ruling{true, "the string slipped"};
    scene = after(scene, JudgeBuilt{built});
    CHECK(current_plan(scene).built == std::vector<Built>{built});
    CHECK(current_plan(after(scene, CopyPlan{"Plan 2"})).built.empty());
    CHECK(current_plan(after(scene, ForgetBuilt{{1}})).built.empty());
    CHECK(current_plan(after(scene, RemovePiece{{1}})).built.empty());
    check_refused(scene, JudgeBuilt{{.piece = {7}}}, "no piece 7");
}

TEST_CASE("a lesson has phases of whole minutes") {
    const Lesson lesson{.phases = {{"Plan", 10, ""}, {"Cut", 15, ""}}, .phase = 1, .spent_s = 30};
    CHECK(after(two_pieces(), SetLesson{lesson}).lesson == lesson);
    check_refused(two_pieces(), SetLesson{{.phases = {{"Plan", 0, ""}}}}, "minutes");
    check_refused(two_pieces(), SetLesson{{.phases = {}, .phase = 1}}, "phase");
    check_refused(two_pieces(), SetLesson{{.phases = std::vector<Phase>(21)}}, "too many");
}

TEST_CASE("the bell keeps every plan as it was, with its score, and work goes on") {
    Scene scene = after(two_pieces(), CopyPlan{"Plan 2"});
    scene = after(scene, Hang{{1}, {.at_mm = {40, 100}}});
    scene = after(scene, RingBell{{{"Plan 1", 0, 0}, {"Plan 2", 19, 1}}, ""});
    const Bell rung = scene.bells.front();
    CHECK(rung.name == "Bell 1");
    REQUIRE(rung.plans.size() == 2);
    CHECK(rung.plans[1].score == 19);
    CHECK(rung.plans[1].plan.hung.size() == 1);
    scene = after(scene, RemovePiece{{1}});
    CHECK(scene.bells.front() == rung);
    CHECK(after(scene, RingBell{{{"Plan 2", 0, 0}, {"Plan 1", 0, 0}}, ""}).bells[1].name == "Bell 2");
    check_refused(scene, RingBell{{{"Plan 1", 0, 0}}, ""}, "no score");
    check_refused(scene, RingBell{{{"Plan 1", 0, 0}, {"Plan 2", 0, -1}}, ""}, "no score");
    check_refused(scene, RingBell{{{"Plan 1", 0, 0}, {"Plan 2", 0, 0}}, "Bell 1"}, "bell Bell 1 already");
}

TEST_CASE("what a class begins with is whole, and can be saved and opened") {
    Scene scene = after(two_pieces(), SetChallenge{{.name = "Owl fair"}});
    const Scene begun = for_the_class(scene);
    CHECK(begun.title == "Owl fair");
    CHECK(begun.plans.front().tree == current_plan(scene).tree);
    CHECK(read_plan(write_plan(begun)).value() == begun);
    scene = after(scene, SetChallenge{});
    CHECK(for_the_class(scene).title == scene.title);
}

TEST_CASE("a criterion is taken out, and bonuses stay with theirs") {
    Challenge challenge;
    challenge.criteria = {{NoTwoAlike{3}, ""}, {KindAppears{}, ""}, {NoTwoAlike{5}, ""}};
    challenge.score.bonuses = {{IfMet{2}, 7, ""}, {PerDepth{2}, 3, ""}, {IfMet{0}, 5, ""}};
    CHECK(is_rewarded(challenge, 0));
    CHECK_FALSE(is_rewarded(challenge, 1));
    const Challenge without = without_criterion(challenge, 1);
    REQUIRE(without.criteria.size() == 2);
    CHECK(without.criteria[1].asks == std::variant<NoTwoAlike, KindAppears, KindShare>(NoTwoAlike{5}));
    CHECK(std::get<IfMet>(without.score.bonuses[0].for_what).criterion == 1);
    CHECK(std::get<IfMet>(without.score.bonuses[2].for_what).criterion == 0);
    CHECK(possible(without));
}

}  // namespace boughwork
