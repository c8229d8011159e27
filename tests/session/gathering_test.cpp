// SPDX-License-Identifier: MIT
// Pieces that move as one, and pieces that slide up to their neighbours. The under-edge of the fair table's branch runs
// from x = 0 to x = 320; its pieces take up 80 of it.
#include <catch2/catch.hpp>

#include "tests/session/fair_table.h"

namespace boughwork {
namespace {

struct Row : FairTable {
    /// Three pieces at 20, 120 and 230, and one in the envelope; the trunk out of the way.
    Row() {
        Trunk trunk = session.plan().tree.trunk;
        trunk.x_mm = -300;
        wish(ShapeTrunk{trunk});
        for (int i = 0; i < 3; ++i) add(80, 60, 50);
        hang(1, 20);
        hang(2, 120);
        hang(3, 230);
    }
    double x(int piece) const { return pose(piece).at_mm.x; }
    void set_neighbours(Neighbours neighbours) {
        Challenge challenge = session.scene().challenge;
        challenge.neighbours = neighbours;
        wish(SetChallenge{challenge});
    }
};

}  // namespace

TEST_CASE("gathered pieces move together by keys, as one step, and come down together") {
    Row row;
    row.choose(1);
    row.press(Action::gather);
    row.choose(2);
    row.press(Action::gather);
    CHECK(row.session.gathered().size() == 2);
    CHECK(row.session.word() == "2 pieces are gathered");
    row.press(Action::nudge_right);
    const double step = row.x(1) - 20;
    CHECK(step > 0);
    CHECK(row.x(2) - 120 == Approx(step));
    CHECK(row.x(3) == 230);
    row.press(Action::undo);
    CHECK(row.x(1) == 20);
    CHECK(row.x(2) == 120);
    row.press(Action::take_down);
    CHECK_FALSE(row.hung(1));
    CHECK_FALSE(row.hung(2));
    CHECK(row.hung(3));
    CHECK(row.session.gathered().empty());
    row.press(Action::undo);
    CHECK(row.x(1) == 20);
    CHECK(row.x(2) == 120);
}

TEST_CASE("a piece that is not gathered moves alone, and the gathered ones stay gathered") {
    Row row;
    row.choose(1);
    row.press(Action::gather);
    row.choose(3);
    row.press(Action::nudge_left);
    CHECK(row.x(1) == 20);
    CHECK(row.x(3) < 230);
    CHECK(row.session.is_gathered({1}));
    row.press(Action::choose_nothing);
    CHECK(row.session.gathered().empty());
}

TEST_CASE("another file begins with nothing gathered") {
    Row row;
    row.choose(1);
    row.press(Action::gather);
    row.session.perform(SaveFile{"/fair/a.bough.json"});
    row.session.perform(OpenFile{"/fair/a.bough.json"});
    CHECK(row.hung(1));
    CHECK(row.session.gathered().empty());
}

TEST_CASE("the whole row is gathered by one press, and let go by another") {
    Row row;
    row.choose(2);
    row.press(Action::gather_row);
    CHECK(row.session.gathered().size() == 3);
    row.press(Action::gather);
    CHECK_FALSE(row.session.is_gathered({2}));
    row.press(Action::gather_row);
    CHECK(row.session.gathered().size() == 3);
    row.press(Action::gather_row);
    CHECK(row.session.gathered().empty());
    CHECK(row.session.word() == "0 pieces are gathered");
}

TEST_CASE("gathered pieces are dragged as one, snap without turning, and back into the envelope as one") {
    Row row;
    row.choose(1);
    row.press(Action::gather_row);
    row.grab(2, {160, 400});
    row.hold_at({170, 390});
    REQUIRE(row.session.held()->ghost);
    CHECK(row.x(1) == Approx(30));
    CHECK(row.x(2) == Approx(130));
    CHECK(row.x(3) == Approx(240));
    for (const int piece : {1, 2, 3}) {
        CHECK(row.pose(piece).at_mm.y == Approx(416));
        CHECK(row.counts(piece));
    }
    const Scene seen = row.session.scene();
    row.press(Action::mirror_image);  // company does not turn
    CHECK(row.session.scene() == seen);
    row.let_go();
    CHECK(row.session.scene() == seen);
    row.press(Action::undo);
    CHECK(row.x(3) == 230);

    row.grab(2, {160, 400});  // over the envelope, and back
    row.session.perform(HoldAt{{160, 300}, false, false});
    CHECK_FALSE(row.hung(1));
    row.hold_at({170, 390});
    row.let_go();
    CHECK(row.session.gathered().size() == 3);
    row.press(Action::undo);

    row.grab(2, {160, 400});
    row.hold_at({160, 300});
    row.let_go_off_paper();
    for (const int piece : {1, 2, 3}) CHECK_FALSE(row.hung(piece));
    row.press(Action::undo);
    for (const int piece : {1, 2, 3}) CHECK(row.hung(piece));
}

TEST_CASE("a piece that is gathered with what hangs from it is moved once") {
    FairTable table;
    table.hang_a_chain();
    table.press(Action::gather);
    table.choose(1);
    table.press(Action::gather);
    const Vec2 apart = table.pose(2).at_mm - table.pose(1).at_mm;
    table.press(Action::nudge_right);
    CHECK(table.pose(1).at_mm.x > 30);
    CHECK(near(table.pose(2).at_mm - table.pose(1).at_mm, apart, 1e-9));
}

TEST_CASE("slide: up to the neighbour as the challenge has it, to the end of the branch, and no farther") {
    Row row;
    row.set_neighbours(Neighbours::apart);
    row.choose(1);
    row.press(Action::slide_right);
    CHECK(row.x(1) == Approx(120 - 80 - 1.1).margin(1e-6));  // a tenth of the tolerance to spare
    CHECK(row.counts(1));
    CHECK(row.counts(2));
    row.press(Action::slide_right);
    REQUIRE(row.session.problem());
    CHECK(row.session.problem()->found == "There is no room on that side.");
    CHECK(row.x(1) == Approx(38.9).margin(1e-6));
    row.press(Action::slide_left);
    CHECK(row.x(1) == Approx(0).margin(1e-6));
    CHECK(row.counts(1));

    row.set_neighbours(Neighbours::corners);  // a corner may touch a corner
    row.press(Action::slide_right);
    CHECK(row.x(1) == Approx(40).margin(1e-6));
    CHECK(row.counts(1));
    CHECK(row.counts(2));
}

TEST_CASE("slide: pieces gathered from two branches go together, each along its own") {
    Row row;
    row.set_neighbours(Neighbours::apart);
    row.wish(AddBranch{{.path_mm = {{0, 220}, {320, 220}}, .thickness_mm = 8}});
    row.wish(Hang{{4}, {.at_mm = {10, 216}}});
    row.choose(4);
    REQUIRE(row.counts(4));
    row.press(Action::gather);
    row.choose(1);
    row.press(Action::gather);
    row.press(Action::slide_right);
    CHECK(row.x(1) == Approx(120 - 80 - 1.1).margin(1e-6));
    CHECK(row.x(4) == Approx(10 + 38.9 - 20).margin(1e-6));
    CHECK(row.counts(4));
}

TEST_CASE("slide: a piece over its neighbour slides on until it is clear of it") {
    Row row;
    row.set_neighbours(Neighbours::apart);
    row.hang(3, 170);
    row.choose(3);
    REQUIRE_FALSE(row.counts(3));
    row.press(Action::slide_right);
    CHECK(row.x(3) == Approx(120 + 80 + 1.1).margin(1e-6));
    CHECK(row.counts(3));
}

TEST_CASE("dragged along a branch a piece stops at its neighbour when asked, and only then") {
    Row row;
    row.set_neighbours(Neighbours::apart);
    row.grab(1, {60, 400});
    row.hold_at({100, 400});
    CHECK(row.x(1) == Approx(60));
    CHECK_FALSE(row.counts(1));
    row.session.perform(CancelHold{});

    row.press(Action::stop_at_neighbours);
    row.grab(1, {60, 400});
    row.hold_at({100, 400});
    CHECK(row.x(1) == Approx(120 - 80 - 1.1).margin(1e-6));
    CHECK(row.counts(1));
    row.let_go();
    CHECK(row.counts(1));
    CHECK(row.counts(2));
    CHECK(row.x(2) == 120);
}

}  // namespace boughwork
