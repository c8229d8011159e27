// SPDX-License-Identifier: MIT
// Too near to the ground, the trunk or a branch.
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A trunk with upright sides, 40 mm wide, in the middle, and a level branch out of it to the right.
SceneBuilder with_post() {
    SceneBuilder plan = with_level_branch();
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    return plan;
}

/// A level branch whose upper edge is 308 mm above the ground, below the one at 400 mm.
SceneBuilder with_two_levels() { return with_level_branch().branch("b2", {{0, 304}, {400, 304}}); }

/// A branch along y = 400 that bends down at x = 200; the run that goes down is at x = 196 to 204.
SceneBuilder with_bend() { return SceneBuilder().branch("b1", {{0, 404}, {200, 404}, {200, 300}}); }

/// Hangs from the level run of with_bend() and reaches to that x further down.
Piece reaching_to(double x) { return outline(1, {{0, 0}, {90, 0}, {x - 100, -40}, {0, -40}}); }

TEST_CASE("A hanging piece must be more than the tolerance above the ground") {
    const auto reaching_down = [](double mm) {
        return SceneBuilder()
            .branch("b1", {{0, 104}, {400, 104}})
            .hang(rectangle(1, 40, mm), {.at_mm = {100, 100}})
            .check();
    };
    CHECK(counts(reaching_down(98.99), 1));
    CHECK(broken(reaching_down(99.0), 1) == std::vector{Rule::ground});
    CHECK(broken(reaching_down(99.01), 1) == std::vector{Rule::ground});
    CHECK(hangs(reaching_down(99.01), 1));
    CHECK(finding(reaching_down(99.2), Rule::ground, {1}).amount == Approx(0.8));
    const Finding below = finding(reaching_down(103.2), Rule::ground, {1});
    CHECK(below.amount == Approx(-3.2));
    CHECK(below.unit == AmountIn::mm);
    CHECK(values(below.at_fault) == std::vector{1});
    REQUIRE_FALSE(below.where_mm.empty());
    for (const Vec2 place : below.where_mm) {
        CHECK(place.x >= 100 - 1e-6);
        CHECK(place.x <= 140 + 1e-6);
        CHECK(place.y >= -3.2 - 1e-6);
        CHECK(place.y <= 1e-6);
    }
}

TEST_CASE("A piece that does not hang must be off the ground and the trunk all the same") {
    SceneBuilder plan = with_post();
    plan.hang(rectangle(1, 40, 30), {.at_mm = {100, 30.5}});
    plan.hang(rectangle(2, 40, 30), {.at_mm = {20.5, 300}});
    plan.hang(rectangle(3, 40, 30), {.at_mm = {100, 300}});
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing, Rule::ground});
    CHECK(broken(report, 2) == std::vector{Rule::held_by_nothing, Rule::trunk});
    CHECK(broken(report, 3) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("A hanging piece must be more than the tolerance from the trunk") {
    const auto beside = [](double x) { return with_post().hang(rectangle(1, 40, 30), under(x)).check(); };
    CHECK(counts(beside(21.01), 1));
    CHECK(broken(beside(21), 1) == std::vector{Rule::trunk});
    CHECK(broken(beside(20.99), 1) == std::vector{Rule::trunk});
    CHECK(finding(beside(20.8), Rule::trunk, {1}).amount == Approx(0.8));
    CHECK(hangs(beside(18.5), 1));
    const Finding inside = finding(beside(18.5), Rule::trunk, {1});
    CHECK(inside.amount == Approx(-1.5));
    CHECK(values(inside.at_fault) == std::vector{1});
}

TEST_CASE("Where the span ends inside the trunk, the piece runs past its end") {
    const Report report = with_post().hang(rectangle(1, 40, 30), under(15)).check();
    CHECK(breaks(report, 1, Rule::runs_past_the_end));
    CHECK(breaks(report, 1, Rule::trunk));
    CHECK(finding(report, Rule::runs_past_the_end, {1}).amount == Approx(4));  // The span begins at x = 19.
}

TEST_CASE("A piece hangs from the span beyond a branch that crosses, and is over that branch when it crosses it") {
    SceneBuilder plan = with_level_branch().branch("b2", {{200, 300}, {200, 500}});
    plan.hang(rectangle(1, 40, 30), under(100));
    plan.hang(rectangle(2, 40, 30), under(300));
    const Report report = plan.check();
    CHECK(piece(report, 1).hangs_from->span == 0);
    CHECK(piece(report, 2).hangs_from->span == 1);
    CHECK(report.score == 280);
    const Report across =
        with_level_branch().branch("b2", {{200, 300}, {200, 500}}).hang(rectangle(1, 40, 30), under(180)).check();
    CHECK(breaks(across, 1, Rule::runs_past_the_end));
}

TEST_CASE("A hanging piece must be apart from every branch but its own") {
    const auto reaching_down = [](double mm) {
        return with_two_levels().hang(rectangle(1, 40, mm), under(100)).check();
    };
    CHECK(counts(reaching_down(90.99), 1));
    CHECK(broken(reaching_down(91), 1) == std::vector{Rule::other_branch});
    CHECK(broken(reaching_down(91.01), 1) == std::vector{Rule::other_branch});
    CHECK(hangs(reaching_down(91.01), 1));
    CHECK(finding(reaching_down(91.2), Rule::other_branch, {1}).amount == Approx(0.8));
    CHECK(finding(reaching_down(95), Rule::other_branch, {1}).amount == Approx(-3));
    CHECK(values(finding(reaching_down(95), Rule::other_branch, {1}).at_fault) == std::vector{1});
}

TEST_CASE("Only a hanging piece is asked for its distance from other branches") {
    // In the air, standing on the lower branch: not by a whole side, and no other branch.
    const Report report = with_two_levels().hang(rectangle(1, 40, 30), {.at_mm = {100, 338.5}}).check();
    CHECK(broken(report, 1) == std::vector{Rule::not_by_a_whole_side});
}

TEST_CASE("A piece in a chain must be apart from the branches that do not carry it") {
    SceneBuilder plan = with_two_levels();
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 40, 50), under(100));
    plan.hang_from(1, 3, rectangle(2, 40, 41.5), {});
    const Report report = plan.check();
    CHECK(counts(report, 1));
    CHECK(hangs(report, 2));
    CHECK(broken(report, 2) == std::vector{Rule::other_branch});
}

TEST_CASE("The branch that carries a piece may be touched and not overlapped") {
    const auto reaching = [](double x) { return with_bend().hang(reaching_to(x), under(100)).check(); };
    CHECK(counts(reaching(195), 1));
    CHECK(counts(reaching(196.99), 1));
    CHECK(counts(reaching(197), 1));
    CHECK(hangs(reaching(197.01), 1));
    CHECK(broken(reaching(197.01), 1) == std::vector{Rule::over_a_branch});
    CHECK(finding(reaching(198), Rule::over_a_branch, {1}).amount == Approx(-2));
}

TEST_CASE("A piece in a chain may touch the branch that carries it") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 100, 60), under(100));
    // Its left side lies on the banner's right one; a corner rises to the branch.
    const auto beside = [&](double rise_mm) {
        SceneBuilder one = plan;
        one.hang(outline(2, {{0, 0}, {30, rise_mm}, {30, -50}, {0, -40}}), {.at_mm = {200, 390}});
        return one.check();
    };
    CHECK(counts(beside(10), 2));
    CHECK(piece(beside(10), 2).depth == 2);
    CHECK(counts(beside(10.99), 2));
    CHECK(broken(beside(11.01), 2) == std::vector{Rule::over_a_branch});
}

TEST_CASE("A piece in a chain that overlaps the branch that carries it is over a branch though it hangs") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 100, 60), under(100));
    plan.hang(outline(2, {{0, 0}, {30, 14}, {30, -50}, {0, -40}}), {.at_mm = {200, 390}});
    const Report report = plan.check();
    CHECK(hangs(report, 2));
    CHECK(finding(report, Rule::over_a_branch, {2}).amount == Approx(-4));
    CHECK(counts(report, 1));
}

TEST_CASE("Ground, trunk and branch are all told of one piece") {
    SceneBuilder plan;
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    plan.branch("b1", {{0, 54}, {200, 54}}).branch("b2", {{100, 30}, {200, 30}});
    plan.hang(rectangle(1, 90, 50), {.at_mm = {20.5, 50}});
    CHECK(broken(plan.check(), 1) == std::vector{Rule::ground, Rule::trunk, Rule::other_branch});
}

}  // namespace
}  // namespace boughwork::testing
