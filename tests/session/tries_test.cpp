// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "tests/session/fair_table.h"

namespace boughwork {
namespace {

void keep_fixes_back(FairTable& table, Shows shows) {
    Challenge challenge = table.session.scene().challenge;
    challenge.shown.fixes = shows;
    table.wish(SetChallenge{challenge});
}

}  // namespace

TEST_CASE("a fix that waits for an answer is told once a pupil has moved the piece and it is still wrong") {
    FairTable table;
    keep_fixes_back(table, Shows::after_an_answer);
    table.hang(1, 260);  // sticks out past the end
    table.choose(1);
    REQUIRE(table.session.finding());
    CHECK_FALSE(table.session.finding_remedy());
    table.press(Action::fix_finding);  // nothing happens
    CHECK(table.pose(1).at_mm.x == 260);
    table.press(Action::nudge_left);
    REQUIRE(table.session.finding());
    CHECK(table.session.finding_remedy());
    table.press(Action::fix_finding);
    CHECK_FALSE(table.session.finding());
}

TEST_CASE("a fix that waits for the end of the lesson is told by no try") {
    FairTable table;
    keep_fixes_back(table, Shows::after_the_lesson);
    table.hang(1, 260);
    table.choose(1);
    table.press(Action::nudge_left);
    CHECK_FALSE(table.session.finding_remedy());
    table.press(Action::end_lesson);
    CHECK(table.session.finding_remedy());
}

}  // namespace boughwork
