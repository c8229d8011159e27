// SPDX-License-Identifier: MIT
#include "rules/built_tree.h"

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// Three hang from the branch, of which 3 is too small to count; 4 was never planned.
SceneBuilder table() {
    SceneBuilder plan = with_level_branch()
                            .hang(triangle(1, 50, 40, 30), under(20))
                            .hang(triangle(2, 60, 50, 40), under(120))
                            .hang(triangle(3, 10, 9, 8), under(240));
    plan.scene.pieces.push_back(triangle(4, 70, 60, 50));
    plan.challenge().limits.side.least = length_from_mm(20);
    return plan;
}

Report tree_says(const SceneBuilder& table) {
    return built_report(table.scene, current_plan(table.scene), table.check());
}
PieceState state_of(const Report& report, int piece) { return find_piece(report, {piece})->state; }

void judge(SceneBuilder& table, Built built) { table.scene.plans[0].built.push_back(std::move(built)); }

TEST_CASE("What nobody has looked at scores nothing yet, and is still to judge") {
    const SceneBuilder plan = table();
    CHECK(plan.check().score == 120 + 150);
    CHECK(tree_says(plan).score == 0);
    CHECK(left_to_judge(current_plan(plan.scene)) == 3);
}

TEST_CASE("A piece as planned does as it does in the plan; one that is not there scores nothing") {
    SceneBuilder plan = table();
    judge(plan, {.piece = {1}});
    judge(plan, {.piece = {2}, .found = Found::not_there});
    judge(plan, {.piece = {3}});
    const Report report = tree_says(plan);
    CHECK(state_of(report, 1) == PieceState::counts);
    CHECK(state_of(report, 2) == PieceState::in_the_envelope);
    CHECK(state_of(report, 3) == PieceState::does_not_count);
    CHECK(find_piece(report, {3})->broken == std::vector<Rule>{Rule::wrong_size});
    CHECK(report.score == 120);
    CHECK(left_to_judge(current_plan(plan.scene)) == 0);
}

TEST_CASE("What is wrong on the table does not count, whatever the plan says") {
    SceneBuilder plan = table();
    judge(plan, {.piece = {2}, .found = Found::wrong, .broken = {Rule::ground}});
    CHECK(find_piece(tree_says(plan), {2})->broken == std::vector<Rule>{Rule::ground});
    CHECK(tree_says(plan).score == 0);
}

TEST_CASE("A piece that was never planned counts when it hangs there as it should") {
    SceneBuilder plan = table();
    judge(plan, {.piece = {4}});
    CHECK(tree_says(plan).score == 180);
    plan.scene.plans[0].built[0].found = Found::wrong;
    CHECK(tree_says(plan).score == 0);
}

TEST_CASE("A ruling wins over plan and eye, both ways") {
    SceneBuilder plan = table();
    judge(plan, {.piece = {1}, .ruling = Ruling{false, "held by a finger"}});
    judge(plan,
          {.piece = {2}, .found = Found::wrong, .broken = {Rule::ground}, .ruling = Ruling{true, "the table shook"}});
    judge(plan, {.piece = {4}, .found = Found::not_there, .ruling = Ruling{true, "it fell when the bell rang"}});
    const Report report = tree_says(plan);
    CHECK(state_of(report, 1) == PieceState::does_not_count);
    CHECK(state_of(report, 2) == PieceState::counts);
    CHECK(report.score == 150 + 180);
}

TEST_CASE("Limits are applied to what stands there, and a ruling to count stays one") {
    SceneBuilder plan = table();
    plan.challenge().limits.pieces.most = 1;
    judge(plan, {.piece = {1}, .found = Found::not_there});
    judge(plan, {.piece = {2}});
    judge(plan, {.piece = {4}});
    CHECK(plan.check().score == 120);  // 2 is over the limit in the plan
    CHECK(tree_says(plan).score == 150);
    CHECK(find_piece(tree_says(plan), {4})->broken == std::vector<Rule>{Rule::over_the_limit});
    plan.scene.plans[0].built[2].ruling = Ruling{true, "hung before the bell"};
    CHECK(tree_says(plan).score == 150 + 180);
    plan.challenge().over_limit = OverLimit::noted;
    plan.scene.plans[0].built[2].ruling.reset();
    CHECK(tree_says(plan).score == 150 + 180);
}

TEST_CASE("The limit on one branch is applied to the pieces that were planned there") {
    SceneBuilder plan = table();
    plan.challenge().limits.pieces_per_branch.most = 1;
    judge(plan, {.piece = {1}});
    judge(plan, {.piece = {2}});
    judge(plan, {.piece = {4}});
    CHECK(tree_says(plan).score == 120 + 180);
}

TEST_CASE("Lines and bonuses of the challenge are those of the tree that stands there") {
    SceneBuilder plan = table();
    plan.challenge().criteria = {{KindAppears{Kind::right, 1}, ""}};
    plan.challenge().score.bonuses = {{IfMet{0}, 10, ""}};
    judge(plan, {.piece = {1}, .found = Found::not_there});
    judge(plan, {.piece = {2}});
    CHECK(plan.check().score == 280);
    CHECK(tree_says(plan).score == 150);
    CHECK(tree_says(plan).challenge[0].met == false);
}

}  // namespace
}  // namespace boughwork::testing
