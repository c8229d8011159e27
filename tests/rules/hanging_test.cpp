// SPDX-License-Identifier: MIT
#include "engine/geometry/tree_shape.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

const Piece pennant = triangle(1, 80, 60, 50);

/// A rectangle 20 mm wide whose upper side lies on the level branch, turned about the middle of that side.
Report tilted(double deg) {
    const Vec2 middle{200, 400};
    const Vec2 corner = middle - turned_ccw({10, 0}, deg / degrees_per_radian);
    return with_level_branch().hang(rectangle(1, 20, 30), {.at_mm = corner, .turn_ccw_deg = deg}).check();
}

TEST_CASE("A piece hung by a whole side under a branch hangs, counts and scores") {
    const Report report = with_level_branch().hang(pennant, under(100)).check();
    REQUIRE(report.pieces.size() == 1);
    const PieceReport& hung = piece(report, 1);
    CHECK(hung.state == PieceState::counts);
    REQUIRE(hung.hangs_from);
    CHECK(hung.hangs_from->branch == 0);
    CHECK(hung.hangs_from->span == 0);
    CHECK_FALSE(hung.hangs_from->piece);
    CHECK(hung.side == 1);
    CHECK(hung.depth == 1);
    CHECK(hung.parents.empty());
    CHECK(hung.broken.empty());
    CHECK(hung.points == 190);
    CHECK(report.findings.empty());
    CHECK(report.ways_out.empty());
    CHECK(report.score == 190);
    CHECK(report.plan == "Plan 1");
}

TEST_CASE("A piece hangs as long as its side is within the tolerance of the branch's edge") {
    const auto at_gap = [](double gap_mm) { return with_level_branch().hang(pennant, under(100, gap_mm)).check(); };
    for (const double gap_mm : {-1.0, -0.99, 0.0, 0.99, 1.0}) {
        CAPTURE(gap_mm);
        CHECK(counts(at_gap(gap_mm), 1));
    }
    CHECK(broken(at_gap(1.01), 1) == std::vector{Rule::held_by_nothing});
    CHECK(broken(at_gap(-1.01), 1) == std::vector{Rule::over_a_branch});
}

TEST_CASE("The tolerance is the challenge's own") {
    SceneBuilder plan = with_level_branch().hang(pennant, under(100, 1.9));
    CHECK_FALSE(hangs(plan.check(), 1));
    plan.challenge().tolerance_mm = 2;
    CHECK(hangs(plan.check(), 1));
    plan.challenge().tolerance_mm = 0.5;
    plan.pose_of(1) = under(100, 0.6);
    CHECK_FALSE(hangs(plan.check(), 1));
}

TEST_CASE("A piece hangs as long as its side is no more than the tolerance past the branch's end") {
    for (const double past_mm : {0.99, 1.0}) {
        CHECK(counts(with_level_branch().hang(pennant, under(-past_mm)).check(), 1));
        CHECK(counts(with_level_branch().hang(pennant, under(320 + past_mm)).check(), 1));
    }
    CHECK(broken(with_level_branch().hang(pennant, under(-1.01)).check(), 1) == std::vector{Rule::runs_past_the_end});
    CHECK(broken(with_level_branch().hang(pennant, under(321.01)).check(), 1) == std::vector{Rule::runs_past_the_end});
}

TEST_CASE("Both ends of the side must be near the branch") {
    const auto lowered_end = [](double by_mm) {
        return with_level_branch()
            .hang(pennant, {.at_mm = {100, 400}, .turn_ccw_deg = -std::asin(by_mm / 80) * degrees_per_radian})
            .check();
    };
    CHECK(counts(lowered_end(0.99), 1));
    CHECK_FALSE(hangs(lowered_end(1.01), 1));
    CHECK(breaks(lowered_end(1.01), 1, Rule::not_by_a_whole_side));
}

TEST_CASE("A short side must agree with the branch's direction within five degrees") {
    for (const double deg : {-5.0, -4.9, 0.0, 4.9, 5.0}) {
        CAPTURE(deg);
        CHECK(counts(tilted(deg), 1));
    }
    for (const double deg : {-5.1, 5.1}) {
        CAPTURE(deg);
        CHECK(broken(tilted(deg), 1) == std::vector{Rule::not_by_a_whole_side});
    }
}

TEST_CASE("A piece can hang by any of its sides, and mirrored") {
    const Piece shapes[] = {pennant, outline(1, {{0, 0}, {60, 0}, {90, -30}, {60, -60}, {0, -60}, {-30, -30}})};
    for (const Piece& shape : shapes)
        for (const bool flipped : {false, true})
            for (int side = 1; side <= static_cast<int>(corner_count(shape.shape)); ++side) {
                CAPTURE(flipped, side);
                const Pose pose =
                    lying_on(under_edge, shape, {.side = side, .from_mm = 150, .gap_mm = 0, .flipped = flipped});
                const Report report = with_level_branch().hang(shape, pose).check();
                CHECK(counts(report, 1));
                CHECK(piece(report, 1).side == side);
            }
}

TEST_CASE("A piece hangs from a sloping branch, along its slope") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 300}, {400, 500}});
    plan.hang(pennant, lying_on(plan.span(0, 0), pennant, {.side = 2, .from_mm = 30}));
    CHECK(counts(plan.check(), 1));
    CHECK(piece(plan.check(), 1).side == 2);
}

TEST_CASE("A piece can hang sideways from either side of an upright branch") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{200, 600}, {200, 300}});
    plan.hang(triangle(1, 80, 60, 50), lying_on({{196, 600}, {196, 300}}, pennant, {.from_mm = 50}));
    plan.hang(triangle(2, 80, 60, 50), lying_on({{204, 300}, {204, 600}}, pennant, {.from_mm = 50}));
    const Report report = plan.check();
    CHECK(counts(report, 1));
    CHECK(counts(report, 2));
    CHECK(piece(report, 1).hangs_from->span == 0);
    CHECK(piece(report, 2).hangs_from->span == 1);
}

TEST_CASE("A piece that stands on a branch does not hang") {
    const Pose on_top = lying_on({{400, 408}, {0, 408}}, pennant, {.from_mm = 100});
    CHECK(broken(with_level_branch().hang(pennant, on_top).check(), 1) == std::vector{Rule::not_by_a_whole_side});
}

TEST_CASE("A piece against the end of a branch does not hang") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 420}, {300, 420}}, 40);
    const Piece square = rectangle(1, 30, 30);
    plan.hang(square, lying_on({{300, 400}, {300, 440}}, square, {.from_mm = 5}));
    CHECK(broken(plan.check(), 1) == std::vector{Rule::not_by_a_whole_side});
}

TEST_CASE("A piece whose side lies on the edge from the wrong side does not hang") {
    // Its lower side lies along the under-edge; it covers the branch.
    const Pose upside_down = lying_on({{400, 400}, {0, 400}}, pennant, {.from_mm = 100});
    CHECK(broken(with_level_branch().hang(pennant, upside_down).check(), 1) == std::vector{Rule::over_a_branch});
}

TEST_CASE("A cone hangs by its base alone") {
    const Piece hat = cone(1, 20, 60);
    CHECK(counts(with_level_branch().hang(hat, under(100)).check(), 1));
    for (const int side : {2, 3}) {
        const Pose leaning = lying_on(under_edge, hat, {.side = side, .from_mm = 100});
        CHECK(broken(with_level_branch().hang(hat, leaning).check(), 1) == std::vector{Rule::not_by_a_whole_side});
    }
}

TEST_CASE("Each piece is told from which branch and span it hangs") {
    SceneBuilder plan =
        SceneBuilder().branch("east", {{0, 204}, {400, 204}}).branch("west", {{0, 300}, {160, 420}, {320, 300}});
    plan.hang(triangle(1, 50, 40, 40), lying_on(plan.span(1, 1), triangle(1, 50, 40, 40), {.from_mm = 60}));
    plan.hang(triangle(2, 50, 40, 40), lying_on(plan.span(0, 0), triangle(2, 50, 40, 40), {.from_mm = 60}));
    const Report report = plan.check();
    REQUIRE(counts(report, 1));
    REQUIRE(counts(report, 2));
    CHECK(piece(report, 1).hangs_from->branch == 1);
    CHECK(piece(report, 1).hangs_from->span == 1);
    CHECK(piece(report, 2).hangs_from->branch == 0);
}

TEST_CASE("Pieces are reported in number order, whatever their order in the file") {
    const Report report = with_level_branch()
                              .hang(triangle(7, 40, 40, 40), under(200))
                              .keep(triangle(2, 30, 40, 50))
                              .hang(triangle(4, 40, 40, 40), under(100))
                              .check();
    REQUIRE(report.pieces.size() == 3);
    CHECK(report.pieces[0].number.value == 2);
    CHECK(report.pieces[1].number.value == 4);
    CHECK(report.pieces[2].number.value == 7);
    CHECK(report.pieces[0].state == PieceState::in_the_envelope);
    CHECK(report.pieces[0].points == 0);
    CHECK_FALSE(report.pieces[0].hangs_from);
    CHECK(report.score == 240);
}

TEST_CASE("A short side lies on a span though it is past its end and off its line by nearly the tolerance") {
    SceneBuilder table;
    table.challenge().tolerance_mm = 3;
    table.branch("b1", {{0, 400}, {200, 200}});
    const Segment span = shape_of(table.tree(), 3).branches[0].spans[0].edge;
    const Piece splinter = triangle(1, 0.5, 40, 40);
    // From the span's end it is 3.7 mm straight down: farther than the tolerance, and yet it lies on it.
    const Pose pose = lying_on(span, splinter, {.from_mm = length(span) + 2.4, .gap_mm = 2.9});
    const Report report = table.hang(splinter, pose).check();
    CHECK(report.pieces[0].hangs_from.has_value());
}

TEST_CASE("Each plan of a scene is judged by itself") {
    SceneBuilder table = with_level_branch().hang(pennant, under(100));
    table.scene.plans.push_back({.name = "Plan 2", .tree = table.tree()});
    CHECK(check(table.scene).score == 190);
    CHECK(check(table.scene, table.scene.plans[1]).score == 0);
    CHECK(check(table.scene, table.scene.plans[1]).plan == "Plan 2");
    table.scene.current = "Plan 2";
    CHECK(check(table.scene).score == 0);
}

}  // namespace
}  // namespace boughwork::testing
