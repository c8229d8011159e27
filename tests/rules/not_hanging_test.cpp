// SPDX-License-Identifier: MIT
// Why a piece does not hang: the first that fits of five reasons.
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// What it broke of the five; the rest of `broken` is about ground, trunk, size and neighbours.
std::vector<Rule> reasons(const Report& report, int number) {
    std::vector<Rule> five;
    for (const Rule rule : broken(report, number))
        if (rule <= Rule::held_by_nothing) five.push_back(rule);
    return five;
}

/// Its upper corner is at (200, `y`), under the middle of the level branch.
Report tip_at(double y) {
    return with_level_branch().hang(outline(1, {{0, 0}, {40, -60}, {-40, -60}}), {.at_mm = {200, y}}).check();
}

void check_not_hanging(const Report& report, int number) {
    CHECK_FALSE(hangs(report, number));
    CHECK(piece(report, number).state == PieceState::does_not_count);
    CHECK(piece(report, number).depth == 0);
    CHECK(piece(report, number).side == 0);
    CHECK(piece(report, number).points == 0);
}

TEST_CASE("A piece that sticks out past the end of its branch is told by how much") {
    const Piece pennant = triangle(3, 80, 60, 50);
    const Report right = with_level_branch().hang(pennant, under(341)).check();
    check_not_hanging(right, 3);
    CHECK(broken(right, 3) == std::vector{Rule::runs_past_the_end});
    const Finding& found = finding(right, Rule::runs_past_the_end, {3});
    CHECK(found.amount == Approx(21));
    CHECK(found.unit == AmountIn::mm);
    CHECK(values(found.at_fault) == std::vector{3});
    for (const Vec2 place : found.where_mm) {
        CHECK(place.x >= 400 - 1e-6);
        CHECK(place.x <= 421 + 1e-6);
        CHECK(place.y == Approx(400));
    }
    CHECK_FALSE(found.where_mm.empty());

    const Report left = with_level_branch().hang(pennant, under(-12.5)).check();
    CHECK(finding(left, Rule::runs_past_the_end, {3}).amount == Approx(12.5));
    for (const Vec2 place : finding(left, Rule::runs_past_the_end, {3}).where_mm) CHECK(place.x <= 1e-6);
}

TEST_CASE("A piece that is longer than its branch runs past the end") {
    const Report report =
        SceneBuilder().branch("b1", {{100, 404}, {160, 404}}).hang(rectangle(1, 100, 40), under(90)).check();
    CHECK(reasons(report, 1) == std::vector{Rule::runs_past_the_end});
}

TEST_CASE("Of two branches that it fits, the one that it shares more of is told") {
    const auto at = [](double x) {
        const Report report = SceneBuilder()
                                  .branch("b1", {{0, 404}, {100, 404}})
                                  .branch("b2", {{120, 404}, {300, 404}})
                                  .hang(rectangle(1, 100, 50), under(x))
                                  .check();
        CHECK(reasons(report, 1) == std::vector{Rule::runs_past_the_end});
        return finding(report, Rule::runs_past_the_end, {1});
    };
    CHECK(at(45).amount == Approx(45));  // 55 shared with the first, 25 with the second.
    CHECK(at(50).amount == Approx(50));
    for (const Vec2 place : at(50).where_mm) CHECK(place.x >= 100 - 1e-6);
    CHECK(at(70).amount == Approx(50));  // 30 and 50: past the left end of the second.
    for (const Vec2 place : at(70).where_mm) CHECK(place.x <= 120 + 1e-6);
    CHECK(at(75).amount == Approx(45));
}

TEST_CASE("A piece runs past the end of a piece, too") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 60, 40), under(100));
    plan.challenge().depth_limit.reset();
    plan.hang_from(1, 3, rectangle(2, 80, 30), {});
    const Report report = plan.check();
    CHECK(reasons(report, 2) == std::vector{Rule::runs_past_the_end});
    CHECK(finding(report, Rule::runs_past_the_end, {2}).amount == Approx(20));
    CHECK(counts(report, 1));
}

TEST_CASE("A side must share more than the tolerance with a branch to run past its end") {
    const auto sharing = [](double mm) {
        return with_level_branch().hang(rectangle(1, 50, 30), under(400 - mm)).check();
    };
    CHECK(reasons(sharing(1.01), 1) == std::vector{Rule::runs_past_the_end});
    CHECK(reasons(sharing(0.99), 1) == std::vector{Rule::not_by_a_whole_side});
    CHECK(finding(sharing(1.01), Rule::runs_past_the_end, {1}).amount == Approx(48.99));
}

TEST_CASE("A side that is too far from the branch's line does not run past its end") {
    CHECK(reasons(with_level_branch().hang(rectangle(1, 50, 30), under(380, 1.01)).check(), 1) ==
          std::vector{Rule::held_by_nothing});
    CHECK(reasons(with_level_branch().hang(rectangle(1, 50, 30), under(380, 0.99)).check(), 1) ==
          std::vector{Rule::runs_past_the_end});
}

TEST_CASE("Only the first reason is told: past the end before over another branch") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {200, 404}}).branch("b2", {{230, 450}, {230, 350}});
    plan.hang(rectangle(1, 80, 50), under(170));
    CHECK(broken(plan.check(), 1) == std::vector{Rule::runs_past_the_end});
}

TEST_CASE("A piece over a branch is told how deep") {
    const Report report = with_level_branch().hang(rectangle(1, 40, 40), {.at_mm = {100, 430}}).check();
    check_not_hanging(report, 1);
    CHECK(broken(report, 1) == std::vector{Rule::over_a_branch});
    // Up by 408 - 390 = 18 mm is the shortest way out.
    CHECK(finding(report, Rule::over_a_branch, {1}).amount == Approx(-18));
    CHECK(finding(report, Rule::over_a_branch, {1}).unit == AmountIn::mm);
}

TEST_CASE("Up to the tolerance a corner in a branch touches it; beyond, it is over the branch") {
    CHECK(reasons(tip_at(400.99), 1) == std::vector{Rule::not_by_a_whole_side});
    CHECK(reasons(tip_at(401.01), 1) == std::vector{Rule::over_a_branch});
    CHECK(finding(tip_at(401.01), Rule::over_a_branch, {1}).amount == Approx(-1.01));
    CHECK(reasons(tip_at(399.01), 1) == std::vector{Rule::not_by_a_whole_side});
    CHECK(reasons(tip_at(398.99), 1) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("Over a branch that bends, the deepest part counts") {
    // The square is 2 mm in the level run and 3 mm in the one that goes down.
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {200, 404}, {200, 300}});
    plan.hang(rectangle(1, 40, 40), {.at_mm = {159, 402}});
    CHECK(finding(plan.check(), Rule::over_a_branch, {1}).amount == Approx(-3));
}

TEST_CASE("A piece that touches a branch by a corner or from on top does not hang by a whole side") {
    check_not_hanging(tip_at(400), 1);
    const Finding by_a_corner = finding(tip_at(400), Rule::not_by_a_whole_side, {1});
    CHECK(values(by_a_corner.at_fault) == std::vector{1});
    CHECK(by_a_corner.amount == Approx(0).margin(1e-9));
    CHECK(contains(by_a_corner.says, "corner"));
    const Report on_top = with_level_branch().hang(rectangle(1, 40, 20), {.at_mm = {100, 428.5}}).check();
    CHECK(broken(on_top, 1) == std::vector{Rule::not_by_a_whole_side});
    CHECK(contains(finding(on_top, Rule::not_by_a_whole_side, {1}).says, "from above"));
}

TEST_CASE("At a bend a piece touches along a side if it does so with either run, whichever way the branch grows") {
    // The lower corner of the bend is at (201.04, 400); the slanting top passes just there, 3 degrees off the level
    // run.
    const Vec2 bend{200 + 4 * std::tan(std::atan2(56, 100) / 2), 400};
    const double slant_rad = 3 / degrees_per_radian;
    const Pose through_it{.at_mm = bend - 50 * Vec2{std::cos(slant_rad), std::sin(slant_rad)}, .turn_ccw_deg = 3};
    std::vector<Vec2> path{{0, 404}, {200, 404}, {300, 460}};
    for (const char* grows : {"to the right", "to the left"}) {
        CAPTURE(grows);
        const Report report = SceneBuilder().branch("b1", path).hang(rectangle(1, 100, 40), through_it).check();
        check_not_hanging(report, 1);
        const Finding& found = finding(report, Rule::not_by_a_whole_side, {1});
        CHECK(found.amount == Approx(0).margin(1e-6));
        CHECK(contains(found.says, "along part of a side"));
        std::reverse(path.begin(), path.end());
    }
}

TEST_CASE("A piece that touches or overlaps a hanging piece does not hang by a whole side") {
    const auto tip_in_banner = [](double deep_mm) {
        return with_level_branch()
            .hang(rectangle(1, 100, 40), under(100))
            .hang(outline(2, {{0, 0}, {40, -60}, {-40, -60}}), {.at_mm = {150, 360 + deep_mm}})
            .check();
    };
    for (const double deep_mm : {-0.99, 0.99, 1.01, 25.0}) {
        CAPTURE(deep_mm);
        CHECK(reasons(tip_in_banner(deep_mm), 2) == std::vector{Rule::not_by_a_whole_side});
        CHECK(counts(tip_in_banner(deep_mm), 1));
    }
    CHECK(reasons(tip_in_banner(-1.01), 2) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("Only the first reason is told: over a branch before not by a whole side") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 50, 40), under(100));
    plan.hang(rectangle(2, 50, 40), {.at_mm = {148, 404}});  // 4 mm over the branch, 2 mm over piece 1.
    CHECK(reasons(plan.check(), 2) == std::vector{Rule::over_a_branch});
}

TEST_CASE("What hangs from a piece that does not hang is cut off, down the chain") {
    struct Case {
        Pose top;
        Rule reason;
    };
    // Past the end; over the branch; by a corner, turned by 20 degrees.
    const Case cases[] = {{under(370), Rule::runs_past_the_end},
                          {under(100, -20), Rule::over_a_branch},
                          {{.at_mm = {100, 400}, .turn_ccw_deg = -20}, Rule::not_by_a_whole_side}};
    for (const Case& one : cases) {
        CAPTURE(name_of(one.reason));
        SceneBuilder plan = with_level_branch();
        plan.challenge().depth_limit.reset();
        plan.hang(rectangle(1, 60, 40), one.top);
        plan.hang_from(1, 3, rectangle(2, 60, 30), {});
        plan.hang_from(2, 3, rectangle(3, 60, 30), {});
        const Report report = plan.check();
        CHECK(broken(report, 1) == std::vector{one.reason});
        CHECK(broken(report, 2) == std::vector{Rule::cut_off});
        CHECK(broken(report, 3) == std::vector{Rule::cut_off});
        check_not_hanging(report, 3);
        CHECK(values(finding(report, Rule::cut_off, {3}).at_fault) == std::vector{3});
    }
}

TEST_CASE("What hangs from a piece that is held by nothing is held by nothing") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 60, 40), {.at_mm = {100, 300}});
    plan.hang_from(1, 3, rectangle(2, 60, 30), {});
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing});
    CHECK(broken(report, 2) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("Only the first reason is told: not by a whole side before cut off") {
    // Piece 1 runs past the end, piece 2 hangs from it, and piece 3, which hangs, leans over to piece 2.
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 60, 40), under(360));
    plan.hang_from(1, 3, rectangle(2, 60, 30), {});
    CHECK(reasons(plan.check(), 2) == std::vector{Rule::cut_off});
    plan.hang(outline(3, {{0, 0}, {40, 0}, {59.5, -55}}), under(300));
    CHECK(reasons(plan.check(), 2) == std::vector{Rule::not_by_a_whole_side});
}

TEST_CASE("A piece that stands on a piece that does not hang is held by nothing") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 60, 40), under(380));
    plan.hang(rectangle(2, 30, 12), {.at_mm = {405, 412.5}});  // On what sticks out of piece 1, beside the branch.
    CHECK(reasons(plan.check(), 1) == std::vector{Rule::runs_past_the_end});
    CHECK(reasons(plan.check(), 2) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("A piece in the air is held by nothing, and so is one that touches only such a piece") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 60, 40), {.at_mm = {100, 300}});
    plan.hang(rectangle(2, 60, 40), {.at_mm = {150, 290}});
    const Report report = plan.check();
    check_not_hanging(report, 1);
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing});
    CHECK(broken(report, 2) == std::vector{Rule::held_by_nothing});
    CHECK(values(finding(report, Rule::held_by_nothing, {1}).at_fault) == std::vector{1});
}

TEST_CASE("A piece held by nothing is told which branch is nearest, and how far") {
    const Report report = with_level_branch()
                              .branch("low", {{0, 104}, {400, 104}})
                              .hang(rectangle(1, 60, 40), {.at_mm = {100, 388}})
                              .hang(rectangle(2, 60, 40), {.at_mm = {200, 160}})
                              .check();
    CHECK(finding(report, Rule::held_by_nothing, {1}).amount == Approx(12));
    CHECK(contains(finding(report, Rule::held_by_nothing, {1}).says, "b1"));
    CHECK(contains(finding(report, Rule::held_by_nothing, {1}).says, "12 mm"));
    CHECK(contains(finding(report, Rule::held_by_nothing, {2}).says, "low"));
    CHECK(finding(report, Rule::held_by_nothing, {2}).amount == Approx(12));
}

TEST_CASE("Without any branch every hung piece is held by nothing") {
    const Report report = SceneBuilder().hang(triangle(1, 80, 60, 50), under(100)).check();
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing});
}

}  // namespace
}  // namespace boughwork::testing
