// SPDX-License-Identifier: MIT
// The referee looks again at what gravity has done.
#include <algorithm>
#include <catch2/catch.hpp>

#include "engine/settle/gravity.h"
#include "rules/counterweight.h"
#include "rules/settled.h"
#include "rules/wording.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A trunk at x = 0, 40 mm thick, and a level branch to the right at that height, made of a drinking straw.
SceneBuilder straw_tree(double height_mm) {
    SceneBuilder plan;
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    plan.branch("b1", {{0, height_mm}, {420, height_mm}});
    return plan;
}

/// With card so heavy that it bends a straw.
SceneBuilder heavy(SceneBuilder plan) {
    plan.scene.paper = {"card", 2000, ""};
    return plan;
}

Settled settled(const SceneBuilder& plan) { return settle(plan.scene, plan.scene.plans[0]); }

bool says(const std::vector<std::string>& notes, const std::string& words) {
    return std::any_of(notes.begin(), notes.end(), [&](const std::string& note) { return contains(note, words); });
}

}  // namespace

TEST_CASE("A piece that a sagging branch lets down to the ground stops counting, and it is said why") {
    SceneBuilder plan = heavy(straw_tree(70));
    plan.hang(triangle(4, 80, 60, 60), {.at_mm = {330, 66}});
    REQUIRE(counts(plan.check(), 4));
    const Settled result = settled(plan);
    REQUIRE(result.state == Settling::State::at_rest);
    REQUIRE(result.report);
    CHECK_FALSE(counts(*result.report, 4));
    REQUIRE(result.wrong.size() == 1);
    CHECK(result.wrong[0].rule == Rule::ground);
    CHECK(contains(result.wrong[0].says, "After settling: Piece 4"));
    CHECK(contains(result.wrong[0].says, "Branch b1 sags"));
    CHECK_FALSE(result.holds());
}

TEST_CASE("What hangs high above the ground sags and still counts; the piece goes where its branch goes") {
    SceneBuilder plan = heavy(straw_tree(400));
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {330, 396}}).hang(triangle(2, 80, 60, 60), {.at_mm = {60, 396}});
    const Settled result = settled(plan);
    REQUIRE(result.report);
    CHECK(result.trusted);
    CHECK(counts(*result.report, 1));
    CHECK(counts(*result.report, 2));
    CHECK(result.wrong.empty());
    REQUIRE(result.branches.size() == 1);
    CHECK(*result.branches[0].sag_mm > 10);
    // Two triangles of 80, 60, 60 mm, by Heron 1789 mm2 each, of 2000 g/m2.
    CHECK(result.branches[0].carried_g == Approx(2 * 1788.854 * 2000 / 1e6).epsilon(1e-4));
    // The outer piece goes down by more than the inner one, and both turn the way the branch does: clockwise.
    const Pose& outer = result.plan.hung[0].pose;
    const Pose& inner = result.plan.hung[1].pose;
    CHECK(396 - outer.at_mm.y > 3 * (396 - inner.at_mm.y));
    CHECK(outer.turn_ccw_deg < inner.turn_ccw_deg);
    CHECK(inner.turn_ccw_deg < 0);
    CHECK(result.holds());
}

TEST_CASE(
    "A branch through the trunk bends on both sides of it, one that does not reach it is said to hang on nothing") {
    SceneBuilder plan = heavy(straw_tree(400));
    plan.tree().branches[0].path_mm = {{-400, 400}, {400, 400}};
    const Settled both = settled(plan);
    REQUIRE(both.branches.size() == 2);
    CHECK(*both.branches[0].sag_mm == Approx(*both.branches[1].sag_mm).epsilon(0.01));
    CHECK(both.plan.tree.branches[0].path_mm.front().y < 400);
    CHECK(both.plan.tree.branches[0].path_mm.back().y < 400);
    plan.tree().branches[0].path_mm = {{200, 400}, {400, 400}};
    CHECK(says(settled(plan).notes, "Branch b1 does not reach the trunk"));
}

TEST_CASE("What falls and what swings is told, and does no harm to what hangs") {
    SceneBuilder plan = straw_tree(400);
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {60, 396}})
        .hang(triangle(2, 80, 60, 60), {.at_mm = {200, 200}})                         // held by nothing
        .hang(triangle(3, 80, 60, 60), {.at_mm = {300, 396}, .turn_ccw_deg = -100});  // by a corner
    const Settled result = settled(plan);
    REQUIRE(result.report);
    CHECK(counts(*result.report, 1));
    CHECK(says(result.notes, "Piece 2 falls"));
    CHECK(says(result.notes, "Piece 3 swings"));
    const std::vector<Vec2> fallen = corners_mm(plan.scene.pieces[1].shape, result.plan.hung[1].pose);
    for (const Vec2 corner : fallen) CHECK(corner.y > -1);
    CHECK(std::any_of(fallen.begin(), fallen.end(), [](Vec2 corner) { return corner.y < 1; }));
}

TEST_CASE("A lopsided tree tips on a small light base, and more weight in the base holds it") {
    SceneBuilder plan = heavy(straw_tree(400));
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {330, 396}});
    plan.tree().base = {.width_mm = 60, .weight_g = 30};
    const Settled tips = settled(plan);
    CHECK(tips.tipping.to_the_edge_mm < 0);
    CHECK(tips.tipping.to_the_right);
    CHECK(contains(tips.tipping_says, "tips to the right"));
    CHECK(contains(tips.tipping_says, "So would piece 1, moved"));
    CHECK_FALSE(tips.holds());
    plan.tree().base.weight_g += std::ceil(tips.tipping.needed_g);
    const Settled stands = settled(plan);
    CHECK(stands.tipping.to_the_edge_mm >= 0);
    CHECK(contains(stands.tipping_says, "The tree stands"));
    CHECK(stands.holds());
}

TEST_CASE("What to move is told when a tree tips, and moved by so much it stands") {
    SceneBuilder plan = heavy(straw_tree(400));
    plan.tree().branches[0].path_mm = {{-420, 400}, {420, 400}};
    plan.tree().branches[0].material.modulus_gpa.reset();  // stiff, so that nothing sags otherwise
    // The chain of 1 and 2 is heavier than 3.
    plan.challenge().depth_limit = 2;
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {300, 396}})
        .hang(triangle(3, 60, 50, 50), {.at_mm = {200, 396}})
        .hang_from(1, 2, triangle(2, 50, 50, 50), {.side = 1});
    REQUIRE(find_piece(plan.check(), {2})->depth == 2);
    plan.tree().base = {.width_mm = 60, .weight_g = 10};
    const Settled tips = settled(plan);
    REQUIRE(tips.tipping.to_the_edge_mm < 0);
    REQUIRE(contains(tips.tipping_says, "So would piece 1, moved "));
    // By moments: the weight over the edge, times how far it is past it, over the weight that is moved.
    // By Heron 1788.85 and 1082.53 mm2, of 2000 g/m2.
    const double moved_g = 2000e-6 * (1788.854 + 1082.532);
    const double by_mm = grams(tips.tipping.weight_n) * -tips.tipping.to_the_edge_mm / moved_g;
    CHECK(contains(tips.tipping_says, length_in_words(by_mm, plan.challenge().units, Rounding::up)));
    for (Hung& hung : plan.scene.plans[0].hung)
        if (hung.piece.value != 3) hung.pose.at_mm.x -= by_mm + 0.1;
    CHECK(settled(plan).tipping.to_the_edge_mm >= 0);
    CHECK(settled(plan).tipping.to_the_edge_mm < 1);
}

TEST_CASE("Of several pieces the one is named that has the shortest way, and none without room for it") {
    const Tipping t{.weight_n = 1, .to_the_edge_mm = -20, .to_the_right = true};  // 20 N mm too many
    const Load near{{1}, 0.1, 50};
    const Load light{{2}, 0.05, 300};
    const Load heavy{{3}, 0.1, 250};
    CHECK(counterweight(t, {near, light, heavy}, -300, 300)->piece == PieceNumber{1});
    CHECK(counterweight(t, {light, heavy}, -300, 300)->by_mm == Approx(200));
    CHECK(counterweight(t, {light, heavy}, 60, 300) == std::nullopt);  // 400 and 200 mm, of 240 and 190
    CHECK(counterweight({.weight_n = 1, .to_the_edge_mm = -20}, {light}, -300, 300) == std::nullopt);
    CHECK(counterweight({.weight_n = 1, .to_the_edge_mm = 20}, {heavy}, -300, 300) == std::nullopt);
}

TEST_CASE("Too much for a stick: it is told how far from breaking, and that it breaks") {
    SceneBuilder plan = straw_tree(400);
    plan.tree().branches[0].material = {
        .name = "stick", .modulus_gpa = 10, .density_kg_m3 = 600, .section = Stick{1, 1}, .strength_mpa = 50};
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {330, 396}});
    const Settled light = settled(plan);
    REQUIRE(light.branches[0].strength_used);
    // By hand: the straight branch, 400 mm free, with 0.143 g some 350 mm out and 0.24 g of its own: a moment of about
    // 0.96 N mm; 50 MPa break a stick of 1 mm at 50 x 1 / 6 = 8.3 N mm.
    CHECK(*light.branches[0].strength_used == Approx(0.96 / 8.33).epsilon(0.1));
    // Stiffer, so that it stays nearly straight: 3000 g/m2 make it about 37 times as much paper, some 18 N mm.
    plan.tree().branches[0].material.modulus_gpa = 100;
    plan.scene.paper.grams_per_m2 = 3000;
    const Settled laden = settled(plan);
    REQUIRE(laden.branches[0].strength_used);
    CHECK(*laden.branches[0].strength_used > 1.5);
    CHECK(contains(laden.branches[0].says, "It would break."));
    CHECK_FALSE(laden.holds());
}

TEST_CASE("A tree with more parts than a table holds is not stood up, and it is said so") {
    SceneBuilder plan = straw_tree(400);
    for (int i = 0; i < static_cast<int>(most_stood_pieces) + 1; ++i)
        plan.hang(triangle(i + 1, 3, 3, 3), {.at_mm = {30.0 + i, 396}});
    const Settled result = settled(plan);
    CHECK(says(result.notes, "too many parts"));
    CHECK(result.plan == plan.scene.plans[0]);
    CHECK_FALSE(result.trusted);
    CHECK_FALSE(result.holds());
    CHECK(result.tipping_says.empty());
    CHECK(result.report == plan.check());
}

TEST_CASE("The plan that is stood up stays as it is") {
    SceneBuilder plan = heavy(straw_tree(400));
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {330, 396}});
    const Scene before = plan.scene;
    StoodTree tree(plan.scene, plan.scene.plans[0]);
    tree.run_to_the_end();
    CHECK(plan.scene == before);
    CHECK(tree.plan() != before.plans[0]);
}

}  // namespace boughwork::testing
