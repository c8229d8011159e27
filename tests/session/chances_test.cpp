// SPDX-License-Identifier: MIT
// What shaky hands make of the plan on the table, live, and what would help.
#include <catch2/catch.hpp>
#include <cmath>

#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

/// Piece 1 ends exactly where the branch does, so that half of all hands go past the end by more than they may.
struct ShakyTable : FairTable {
    ShakyTable() {
        hang(1, 241);
        wish(SetHands{{.cut_mm = 0.1, .place_mm = 3, .turn_deg = 0.1}});
        press(Action::chances);
    }
    void wait() {
        for (int i = 0; i < 100000 && session.waits_for_tick(); ++i) session.tick(now_s += 0.02);
        REQUIRE_FALSE(session.waits_for_tick());
    }
    const ShakyPiece* chance_of(int piece) const { return session.tried_hands().report({piece}); }

    double now_s = 0;
};

}  // namespace

TEST_CASE("chances are worked out while nothing changes, and then what would help") {
    ShakyTable table;
    REQUIRE(table.session.shows_chances());
    REQUIRE(table.counts(1));
    table.wait();
    REQUIRE(table.chance_of(1));
    CHECK(table.chance_of(1)->holds.of == 2000);
    // It may be t past the end, and is t past it: normal errors go on in half of the builds, within three standard
    // errors of 2000.
    CHECK(table.chance_of(1)->holds.share() == Approx(0.5).margin(3 * 0.5 / std::sqrt(2000)));
    CHECK(table.chance_of(1)->fails_by == Rule::runs_past_the_end);
    const MoreRoom* room = table.session.room_for({1});
    REQUIRE(room);
    CHECK(room->move_mm.x < 0);

    table.wish(Hang{{1}, {.at_mm = {241 + room->move_mm.x, 416}}});
    CHECK_FALSE(table.chance_of(1));
    CHECK_FALSE(table.session.room_for({1}));
    table.wait();
    CHECK(table.chance_of(1)->holds.share() > 0.85);

    table.press(Action::chances);
    CHECK_FALSE(table.session.shows_chances());
    table.hang(1, 100);
    table.wait();
    CHECK(table.chance_of(1)->holds.share() > 0.85);  // of the plan before: nobody asks any more
}

TEST_CASE("chances follow a piece while it is dragged") {
    ShakyTable table;
    table.wait();
    table.grab(1, {250, 410});
    table.hold_at({150, 410});
    CHECK_FALSE(table.chance_of(1));
    table.session.tick(table.now_s += 0.02);
    REQUIRE(table.chance_of(1));
    CHECK(table.chance_of(1)->holds.of < 2000);
    CHECK(table.chance_of(1)->holds.share() == 1);
    table.session.perform(CancelHold{});
    table.wait();
    CHECK(table.chance_of(1)->holds.share() < 0.6);
}

TEST_CASE("what would help is kept back where the challenge keeps back fixes, until the lesson is over") {
    ShakyTable table;
    Challenge challenge = table.session.scene().challenge;
    challenge.shown.fixes = Shows::after_the_lesson;
    table.wish(SetChallenge{challenge});
    table.wait();
    REQUIRE(table.session.tried_hands().room_for({1}));
    CHECK_FALSE(table.session.room_for({1}));
    table.press(Action::end_lesson);
    CHECK(table.session.room_for({1}));
}

TEST_CASE("chances and what gravity did are said again in the other language") {
    ShakyTable table;
    table.wait();
    table.press(Action::gravity_page);
    table.session.perform(SetGravitySpeed{GravitySpeed::at_once});
    table.press(Action::run_gravity);
    table.wait();
    REQUIRE(table.session.gravity().settled());
    const std::string english = table.session.gravity().settled()->tipping_says;
    table.press(Action::other_language);
    table.wait();
    const std::string chance = table.chance_of(1)->says;
    const std::string tipping = table.session.gravity().settled()->tipping_says;
    table.press(Action::other_language);
    CHECK(chance.find("La pieza 1 falla") == 0);
    CHECK(english.find("The tree stands") == 0);
    CHECK(tipping.find("El árbol se tiene en pie") == 0);
    CHECK(table.session.gravity().settled()->tipping_says == english);
}
