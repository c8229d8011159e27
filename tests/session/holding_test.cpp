// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <cmath>

#include "engine/geometry/posing.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

TEST_CASE("A piece from the envelope comes with its first side on top, its middle under the hand") {
    FairTable table;
    table.grab(1, {200, 100});
    REQUIRE(table.hung(1));
    CHECK(near(centroid(posed(triangle_mm(80, 60, 50), table.pose(1)).outline), {200, 100}));
    CHECK(table.pose(1).turn_ccw_deg == 0);
    CHECK(table.report(1).state == PieceState::does_not_count);  // held by nothing, and the referee says so at once
    REQUIRE(table.session.finding());
    CHECK(table.session.finding()->rule == Rule::held_by_nothing);
    CHECK_FALSE(table.session.finding_remedy());  // not while it is in the hand
}

TEST_CASE("Near a branch a held piece hangs exactly, and lets go there") {
    FairTable table;
    const Scene before = table.session.scene();
    table.grab(1, {200, 100});
    table.hold_at({203, 396});
    REQUIRE(table.session.held()->ghost);
    CHECK(table.session.held()->ghost->side == 1);
    CHECK(table.pose(1) == table.session.held()->ghost->pose);
    CHECK(table.corners(1)[0].y == Approx(416).margin(1e-9));
    CHECK(table.corners(1)[1].y == Approx(416).margin(1e-9));
    CHECK(table.counts(1));
    CHECK(table.session.history().scene() == before);  // nothing is recorded yet

    const Scene seen = table.session.scene();
    table.let_go();
    CHECK(table.session.history().scene() == seen);
    CHECK(table.session.history().undo_label() == in_words(Edit(Hang{{1}, {}})));
    CHECK_FALSE(table.session.held());
    table.press(Action::undo);
    CHECK(table.session.scene() == before);
    table.press(Action::redo);
    CHECK(table.session.scene() == seen);
    CHECK(table.session.chosen_piece() == PieceNumber{1});
}

TEST_CASE("While held it slides along the branch under the hand") {
    FairTable table;
    table.grab(1, {200, 396});
    table.hold_at({210, 396});
    const Vec2 there = table.corners(1)[0];
    table.hold_at({217, 399});
    CHECK(near(table.corners(1)[0], there + Vec2{7, 0}));
}

TEST_CASE("A hand that comes near the end of the branch hangs the whole side") {
    FairTable table;
    table.grab(1, {200, 396});
    table.hold_at({300, 396});
    CHECK(table.counts(1));
    CHECK(table.corners(1)[1].x == Approx(320).margin(1e-9));
}

TEST_CASE("Held freely it hangs from nothing") {
    FairTable table;
    table.grab(1, {200, 100});
    table.hold_at({203, 396}, true);
    CHECK_FALSE(table.session.held()->ghost);
    CHECK_FALSE(table.counts(1));
    table.hold_at({203, 396}, false);
    CHECK(table.session.held()->ghost);
}

TEST_CASE("Far from every branch a piece lets go where it is") {
    FairTable table;
    table.grab(1, {200, 100});
    table.hold_at({250, 150});
    table.let_go();
    REQUIRE(table.hung(1));
    CHECK(table.report(1).broken == std::vector<Rule>{Rule::held_by_nothing});
}

TEST_CASE("Escape drops what was held as if it had not been touched") {
    FairTable table;
    table.hang(1, 60);
    const Scene before = table.session.scene();
    table.grab(1, {80, 410});
    table.hold_at({120, 410});
    CHECK(table.session.scene() != before);
    table.session.perform(CancelHold{});
    CHECK(table.session.scene() == before);
    CHECK(table.counts(1));
    CHECK_FALSE(table.session.held());
    CHECK(table.session.history().undo_label() == in_words(Edit(Hang{{1}, {}})));  // the one before
}

TEST_CASE("A press that does not move a piece changes nothing") {
    FairTable table;
    table.wish(Hang{{1}, {.at_mm = {60, 415.6}}});  // within the tolerance, not exactly on the branch
    const Scene before = table.session.scene();
    table.grab(1, {80, 410});
    table.hold_at({80, 410});
    table.let_go();
    CHECK(table.session.scene() == before);
}

TEST_CASE("Over the envelope a piece goes back, and one that came from there stays") {
    FairTable table;
    table.hang(1, 60);
    table.grab(1, {80, 410});
    table.hold_at({400, 300});
    table.let_go_off_paper();
    CHECK_FALSE(table.hung(1));
    CHECK(table.session.history().undo_label() == in_words(Edit(TakeDown{{PieceNumber{1}}})));

    const Scene before = table.session.scene();
    table.grab(1, {400, 300});
    table.hold_at({410, 310});
    table.let_go_off_paper();
    CHECK(table.session.scene() == before);
    CHECK_FALSE(table.session.held());
}

TEST_CASE("Off the paper a held piece is in the envelope, and nothing is said of it") {
    FairTable table;
    table.hang(1, 60);
    table.grab(1, {80, 410});
    table.session.perform(HoldAt{.at_mm = {400, 300}, .on_paper = false});
    CHECK(table.report(1).state == PieceState::in_the_envelope);
    CHECK(table.session.report().findings.empty());
    table.session.perform(HoldAt{.at_mm = {80, 410}});
    CHECK(table.counts(1));
}

TEST_CASE("The next side is tried in the hand, and comes round") {
    FairTable table;
    table.grab(1, {200, 396});
    table.hold_at({203, 396});
    for (const int side : {2, 3, 1}) {
        table.press(Action::next_side);
        REQUIRE(table.session.held()->ghost);
        CHECK(table.session.held()->ghost->side == side);
        CHECK(table.report(1).side == side);
        CHECK(table.counts(1));
    }
    table.press(Action::next_side);
    table.hold_at({260, 396});  // it stays by that side
    CHECK(table.report(1).side == 2);
}

TEST_CASE("The mirror image is tried in the hand, by the same side") {
    FairTable table;
    table.grab(1, {200, 396});
    table.hold_at({203, 396});
    const std::vector<Vec2> before = table.corners(1);
    table.press(Action::mirror_image);
    const std::vector<Vec2> after = table.corners(1);
    CHECK(table.pose(1).flipped);
    CHECK(table.counts(1));
    CHECK(near(after[0], before[1]));
    CHECK(near(after[1], before[0]));
    CHECK(after[2].y == Approx(before[2].y));
}

TEST_CASE("A piece in mid-air is turned in the hand to its next side") {
    FairTable table;
    table.grab(1, {200, 100});
    table.press(Action::next_side);
    CHECK(uppermost_side(triangle_mm(80, 60, 50), table.pose(1)) == 2);
    CHECK(near(centroid(posed(triangle_mm(80, 60, 50), table.pose(1)).outline), {200, 100}));
}

TEST_CASE("A long piece turns to lie along a branch that slopes by 25 degrees") {
    FairTable table;
    // tan 25 degrees = 0.4663
    table.wish(ShapeBranch{"b1", {{0, 420}, {320, 420 - 320 * 0.4663}}, 8});
    table.add(160, 100, 90);
    table.session.set_view({.x = 0, .y = 0, .width = 4000, .height = 3000});  // close by: the reach is 25 mm
    table.grab(2, {180, 300});
    table.hold_at({180, 310});
    REQUIRE(table.session.held()->ghost);
    CHECK(table.pose(2).turn_ccw_deg == Approx(-25).margin(0.01));
    CHECK(table.report(2).hangs_from.has_value());
}

TEST_CASE("A hand that comes no nearer than its reach does not hang the piece") {
    FairTable table;
    table.session.set_view({.x = 0, .y = 0, .width = 4000, .height = 3000});
    table.grab(1, {200, 100});
    // Its middle is a third of its height, 12.5 mm, below its first side, which is to come under y = 416.
    table.hold_at({200, 416 - 12.5 - 26});
    CHECK_FALSE(table.session.held()->ghost);
    table.hold_at({200, 416 - 12.5 - 24});
    CHECK(table.session.held()->ghost);
}

TEST_CASE("From afar, on a small screen, the reach is a finger's") {
    FairTable table;
    table.session.set_view({.x = 0, .y = 0, .width = 248, .height = 298});  // half a pixel a millimetre
    REQUIRE(table.session.camera().px_per_mm == Approx(0.5).epsilon(0.2));
    table.grab(1, {200, 100});
    table.hold_at({200, 416 - 12.5 - 60});
    CHECK(table.session.held()->ghost);
}

TEST_CASE("At a bend a piece hangs from the run that its side is under") {
    FairTable table;
    table.wish(ShapeBranch{"b1", {{0, 420}, {150, 420}, {320, 350}}, 8});
    table.grab(1, {200, 100});
    table.hold_at({90, 395});
    CHECK(table.report(1).hangs_from->span == 0);
    table.hold_at({250, 355});
    CHECK(table.report(1).hangs_from->span == 1);
    CHECK(table.counts(1));
}

TEST_CASE("A piece brings its chain along") {
    FairTable table;
    table.add(40, 40, 40);
    table.hang(1, 60);
    // Piece 2 by its first side along side 2 of piece 1, middle on middle.
    const Segment support = paper_side(triangle_mm(80, 60, 50), table.pose(1), 2);
    table.wish(Hang{
        {2},
        posed_by(triangle_mm(40, 40, 40), 1, false, 0.5 * (support.from + support.to), support.from - support.to)});
    REQUIRE(table.report(2).hangs_from);
    REQUIRE(table.report(2).hangs_from->piece == PieceNumber{1});
    const Pose first = table.pose(1);
    const Pose second = table.pose(2);

    SECTION("held in the hand") {
        table.grab(1, {90, 405});
        table.hold_at({130, 405});
        table.let_go();
        CHECK(table.pose(1).at_mm.x == Approx(first.at_mm.x + 40));
        CHECK(near(table.pose(2).at_mm - second.at_mm, {40, 0}));
        CHECK(table.report(2).hangs_from->piece == PieceNumber{1});
        table.press(Action::undo);  // one step for both
        CHECK(table.pose(1) == first);
        CHECK(table.pose(2) == second);
    }
    SECTION("nudged by keys") {
        table.choose(1);
        table.press(Action::nudge_right);
        CHECK(near(table.pose(2).at_mm - second.at_mm, {1, 0}));
    }
    SECTION("turned") {
        table.choose(1);
        table.press(Action::turn_left);
        CHECK(table.pose(2).turn_ccw_deg == Approx(second.turn_ccw_deg + 1));
    }
    SECTION("as a mirror image") {
        table.choose(1);
        table.press(Action::mirror_image);
        CHECK(table.report(2).hangs_from->piece == PieceNumber{1});
        CHECK(table.pose(2).flipped);
    }
    SECTION("back into the envelope") {
        table.choose(1);
        table.press(Action::take_down);
        CHECK_FALSE(table.hung(1));
        CHECK_FALSE(table.hung(2));
    }
    SECTION("back into the envelope by hand") {
        table.grab(1, {90, 405});
        table.hold_at({400, 405});
        table.let_go_off_paper();
        CHECK_FALSE(table.hung(2));
    }
    SECTION("but not its holder, when it is moved itself") {
        table.grab(2, {110, 390});
        table.hold_at({250, 390});
        table.let_go();
        CHECK(table.pose(1) == first);
    }
}

TEST_CASE("A side that was asked for stays, though another lies better") {
    FairTable table;
    // Two short sides that meet at 148 degrees: when one is up, the next slopes by 32, as the branch does.
    table.wish(ShapeBranch{"b1", {{0, 420}, {320, 220}}, 8});
    table.add(100, 52, 52);
    table.grab(2, {160, 200});
    table.press(Action::next_side);
    table.hold_at({160, 290});
    CHECK(table.report(2).side == 2);
}

TEST_CASE("A second thing is not grabbed while one is held") {
    FairTable table;
    table.add(80, 60, 50);
    table.grab(1, {200, 100});
    table.grab(2, {100, 100});
    CHECK(table.session.held()->what == Picked(PickedPiece{{1}}));
}

TEST_CASE("Another wish drops what is held first") {
    FairTable table;
    table.grab(1, {200, 100});
    table.wish(SetTitle{"Fair tree, table 4"});
    CHECK_FALSE(table.session.held());
    CHECK_FALSE(table.hung(1));
    CHECK(table.session.scene().title == "Fair tree, table 4");
}

TEST_CASE("A plain drag brings a piece onto the steep side of an equilateral one") {
    FairTable table;
    Challenge challenge = table.session.scene().challenge;
    challenge.depth_limit.reset();
    table.wish(SetChallenge{challenge});
    table.add(120, 120, 120);
    table.hang(2, 100);
    table.add(40, 40, 40);
    // The middle of the big one's right side, at 60 degrees: (220, 416) to (160, 416 - 60 sqrt 3).
    const Vec2 middle{190, 416 - 30 * std::sqrt(3.0)};
    table.grab(3, {300, 200});
    table.hold_at(middle + Vec2{16, -10});
    REQUIRE(table.session.held()->ghost);
    CHECK(table.session.held()->ghost->support.piece == PieceNumber{2});
    table.let_go();
    CHECK(table.report(3).depth == 2);
    CHECK(table.counts(3));
}
