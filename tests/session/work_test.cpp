// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "engine/geometry/posing.h"
#include "engine/storage/plan_file.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

TEST_CASE("Next side hangs a piece by each of its sides, in the same place, and comes round") {
    FairTable table;
    table.hang(1, 100);
    table.choose(1);
    const Pose before = table.pose(1);
    for (const int side : {2, 3, 1}) {
        table.press(Action::next_side);
        CHECK(table.report(1).side == side);
        CHECK(table.counts(1));
        const Segment line = paper_side(triangle_mm(80, 60, 50), table.pose(1), side);
        CHECK(near(0.5 * (line.from + line.to), {140, 416}));
    }
    CHECK(near(table.pose(1).at_mm, before.at_mm));
    CHECK(table.pose(1).turn_ccw_deg == Approx(before.turn_ccw_deg).margin(1e-9));
}

TEST_CASE("A cone hangs by its base alone, so it has no next side") {
    FairTable table;
    table.wish(AddPiece{Cone{length_from_mm(20), length_from_mm(60)}});
    table.hang(2, 100);
    table.choose(2);
    CHECK_FALSE(row_of(Action::next_side).possible(table.session));
    CHECK(row_of(Action::mirror_image).possible(table.session));
}

TEST_CASE("Arrows slide a hanging piece along its branch by one step of the challenge") {
    FairTable table;
    table.wish(ShapeBranch{"b1", {{0, 420}, {300, 380}}, 8});
    table.choose(1);
    table.press(Action::next_span);
    REQUIRE(table.counts(1));
    const Vec2 before = table.pose(1).at_mm;
    table.press(Action::nudge_right);
    const Vec2 moved = table.pose(1).at_mm - before;
    CHECK(length(moved) == Approx(1));  // the step is 1 mm unless the challenge says otherwise
    CHECK(near(unit(moved), unit(Vec2{300, -40})));
    CHECK(table.counts(1));
    table.press(Action::nudge_left);
    CHECK(near(table.pose(1).at_mm, before));
    table.press(Action::nudge_down);
    CHECK(near(table.pose(1).at_mm, before + Vec2{0, -1}));
}

TEST_CASE("Turning is by one degree, about the middle of the side it hangs by") {
    FairTable table;
    table.hang(1, 100);
    table.choose(1);
    table.press(Action::turn_left);
    CHECK(table.pose(1).turn_ccw_deg == Approx(1));
    const Segment line = paper_side(triangle_mm(80, 60, 50), table.pose(1), 1);
    CHECK(near(0.5 * (line.from + line.to), {140, 416}));
    table.press(Action::turn_right);
    CHECK(table.pose(1).turn_ccw_deg == Approx(0).margin(1e-9));
}

TEST_CASE("Keys alone hang piece after piece where there is room") {
    FairTable table;
    for (int i = 0; i < 2; ++i) table.add(80, 60, 50);
    for (const int piece : {1, 2, 3}) {
        table.choose(piece);
        table.press(Action::next_span);
    }
    for (const int piece : {1, 2, 3}) CHECK(table.counts(piece));
    CHECK(table.session.report().findings.empty());
    // From the trunk outward.
    CHECK(table.pose(1).at_mm.x < table.pose(2).at_mm.x);
    CHECK(table.pose(2).at_mm.x < table.pose(3).at_mm.x);
}

TEST_CASE("Where there is no room left a piece hangs at the start, and the referee says so") {
    FairTable table;
    for (int i = 0; i < 4; ++i) table.add(90, 60, 60);
    for (const int piece : {2, 3, 4, 5}) {
        table.choose(piece);
        table.press(Action::next_span);
    }
    CHECK(table.counts(4));
    CHECK_FALSE(table.counts(5));
    CHECK(table.report(5).hangs_from.has_value());
}

TEST_CASE("Next branch goes through all branches and comes round") {
    FairTable table;
    table.press(Action::add_branch);
    table.choose(1);
    table.press(Action::next_span);
    CHECK(table.report(1).hangs_from->branch == 0);
    table.press(Action::next_span);
    CHECK(table.report(1).hangs_from->branch == 1);
    CHECK(table.counts(1));
    table.press(Action::next_span);
    CHECK(table.report(1).hangs_from->branch == 0);
}

TEST_CASE("With chains allowed, the next branch may be the side of a piece") {
    FairTable table;
    table.add(40, 30, 30);
    table.hang(1, 100);
    table.choose(2);
    Scene scene = table.session.scene();
    table.press(Action::next_span);
    CHECK_FALSE(table.report(2).hangs_from->piece);
    table.press(Action::next_span);  // one branch only, and no chains in this challenge
    CHECK_FALSE(table.report(2).hangs_from->piece);

    scene.challenge.depth_limit.reset();
    table.files.contents["chains.bough.json"] = write_plan(scene);
    table.session.perform(OpenFile{"chains.bough.json"});
    table.choose(2);
    table.press(Action::next_span);
    table.press(Action::next_span);
    CHECK(table.report(2).hangs_from->piece == PieceNumber{1});
    CHECK(table.counts(2));
}

TEST_CASE("Without a branch the keys say what to do") {
    FairTable table;
    table.wish(RemoveBranch{"b1"});
    table.choose(1);
    table.press(Action::next_span);
    REQUIRE(table.session.problem());
    CHECK_FALSE(table.session.problem()->to_do.empty());
    CHECK_FALSE(table.hung(1));
}

TEST_CASE("A piece that is thrown away comes back by undo, chosen") {
    FairTable table;
    table.hang(1, 60);
    table.choose(1);
    table.press(Action::throw_away);
    CHECK(table.session.scene().pieces.empty());
    table.press(Action::undo);
    CHECK(table.hung(1));
    CHECK(table.session.chosen_piece() == PieceNumber{1});
}
