// SPDX-License-Identifier: MIT
// A challenge may ask that a plan holds when gravity has done its work, too.
#include <catch2/catch.hpp>

#include "rules/after_settling.h"
#include "rules/built_tree.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A level drinking straw to the right, so near to the ground that card lets its outer end down to it.
SceneBuilder low_straw() {
    SceneBuilder plan;
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    plan.branch("b1", {{0, 70}, {420, 70}});
    plan.scene.paper = {"card", 2000, ""};
    plan.challenge().holds_after_settling = true;
    plan.hang(triangle(3, 80, 60, 60), {.at_mm = {60, 66}}).hang(triangle(4, 80, 60, 60), {.at_mm = {330, 66}});
    return plan;
}

Report settled_verdict(const SceneBuilder& plan) { return check_and_settle(plan.scene, plan.scene.plans[0]); }

const ChallengeLine& line_of(const Report& report) {
    REQUIRE(report.challenge.size() == 1);
    CHECK(report.challenge[0].about == "after_settling");
    return report.challenge[0];
}

}  // namespace

TEST_CASE("A challenge that asks for gravity is not met by a piece that is let down to the ground") {
    const SceneBuilder plan = low_straw();
    REQUIRE(counts(plan.check(), 3));
    REQUIRE(counts(plan.check(), 4));
    CHECK_FALSE(line_of(plan.check()).met);  // judging alone leaves it open
    CHECK(all_well(plan.check()));

    const Report report = settled_verdict(plan);
    const ChallengeLine& line = line_of(report);
    CHECK(line.met == false);
    CHECK(line.have == 1);
    CHECK(line.need == 2);
    CHECK(line.says == "after settling: 1 of 2 still count");
    CHECK_FALSE(all_well(report));
    // It disqualifies no piece: what counts on the flat scores.
    CHECK(counts(report, 4));
    CHECK(report.score == plan.check().score);
}

TEST_CASE("The same plan higher up, or of a stiff branch, is met") {
    SceneBuilder plan = low_straw();
    SECTION("of steel") {
        plan.tree().branches[0].material = {.name = "steel", .modulus_gpa = 200, .section = Round{8}};
    }
    SECTION("of light paper") { plan.scene.paper = {"copier paper", 80, ""}; }
    const Report report = settled_verdict(plan);
    CHECK(line_of(report).met == true);
    CHECK(line_of(report).have == 2);
    CHECK(all_well(report));
}

TEST_CASE("A tree that tips over and a branch that breaks meet no such challenge, and it is said which") {
    SceneBuilder plan = low_straw();
    plan.tree().branches[0].path_mm = {{0, 400}, {420, 400}};
    plan.scene.plans[0].hung[0].pose.at_mm.y = plan.scene.plans[0].hung[1].pose.at_mm.y = 396;
    REQUIRE(line_of(settled_verdict(plan)).met == true);
    SECTION("it tips") {
        plan.tree().base = {.width_mm = 60, .weight_g = 30};
        CHECK(line_of(settled_verdict(plan)).says == "after settling: the tree tips over");
    }
    SECTION("it breaks") {
        plan.tree().branches[0].material = {.name = "a brittle stick",
                                            .modulus_gpa = 100,
                                            .density_kg_m3 = 600,
                                            .section = Stick{1, 1},
                                            .strength_mpa = 20};
        CHECK(line_of(settled_verdict(plan)).says == "after settling: branch b1 is broken");
    }
    CHECK(line_of(settled_verdict(plan)).met == false);
    CHECK(line_of(settled_verdict(plan)).have == 2);
}

TEST_CASE("Only pieces that count on the flat are asked about") {
    SceneBuilder plan = low_straw();
    plan.scene.plans[0].hung[1].pose.at_mm.x = 400;  // past the end already
    REQUIRE_FALSE(counts(plan.check(), 4));
    const ChallengeLine line = line_of(settled_verdict(plan));
    CHECK(line.need == 1);
    CHECK(line.met == true);
}

TEST_CASE("A piece that comes to count by settling makes up for none that stops") {
    SceneBuilder plan = low_straw();
    plan.tree().branches[0].path_mm = {{0, 347}, {420, 347}};
    for (Hung& hung : plan.scene.plans[0].hung) hung.pose.at_mm.y = 343;
    plan.branch("b2", {{0, 400}, {420, 400}});
    plan.tree().branches[1].material = {.name = "steel", .modulus_gpa = 200, .section = Round{8}};
    plan.hang(triangle(5, 80, 60, 60), {.at_mm = {300, 396}});  // its corner, 44.7 mm below, is at b1, which sags away
    REQUIRE_FALSE(counts(plan.check(), 5));
    const Settled after = settle(plan.scene, plan.scene.plans[0]);
    REQUIRE(after.report);
    REQUIRE(counts(*after.report, 5));
    const ChallengeLine line = line_of(settled_verdict(plan));
    CHECK(line.have == 2);
    CHECK(line.need == 2);
    CHECK(line.met == true);
}

TEST_CASE("What cannot be worked out is neither met nor unmet, and it is said so") {
    SceneBuilder plan = low_straw();
    for (int i = 0; i < static_cast<int>(most_stood_pieces); ++i)
        plan.hang(triangle(i + 10, 3, 3, 3), {.at_mm = {600.0 + 4 * i, 66}});
    const ChallengeLine line = line_of(settled_verdict(plan));
    CHECK_FALSE(line.met);
    CHECK(line.says == "after settling: it could not be worked out");
}

TEST_CASE("A challenge that does not ask has no such line, and a tree that was built has settled") {
    SceneBuilder plan = low_straw();
    const Plan& built = plan.scene.plans[0];
    CHECK(built_report(plan.scene, built, plan.check()).challenge.empty());
    plan.challenge().holds_after_settling = false;
    CHECK(settled_verdict(plan).challenge.empty());
    CHECK(settled_verdict(plan) == plan.check());
}

}  // namespace boughwork::testing
