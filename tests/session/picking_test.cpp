// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

template <class T>
bool is(const Picked& picked, const T& what) {
    return picked == Picked(what);
}

}  // namespace

TEST_CASE("A press picks the piece under it, the last drawn over the first") {
    FairTable table;
    table.add(80, 60, 50);
    table.hang(1, 60);
    table.hang(2, 90);
    const Scene& scene = table.session.scene();
    CHECK(is(pick(scene, {75, 413}, 0), PickedPiece{{1}}));
    CHECK(is(pick(scene, {110, 410}, 0), PickedPiece{{2}}));  // both are there
    CHECK(is(pick(scene, {110, 300}, 5), std::monostate{}));
}

TEST_CASE("A press on the bare branch picks the branch, on the trunk the trunk") {
    FairTable table;
    table.hang(1, 60);
    const Scene& scene = table.session.scene();
    CHECK(is(pick(scene, {250, 421}, 0), PickedBranch{0}));
    CHECK(is(pick(scene, {100, 423}, 10), PickedBranch{0}));  // inside it; the piece is 7 mm off
    CHECK(is(pick(scene, {0, 100}, 0), PickedTrunk{}));
}

TEST_CASE("A finger that misses by less than its reach picks what is nearest") {
    FairTable table;
    table.hang(1, 60);
    const Scene& scene = table.session.scene();
    // Its lowest corner is at (93.1, 378.5): sides 80, 60, 50 give 33.1 along and 37.5 down (law of cosines).
    CHECK(is(pick(scene, {93, 375}, 5), PickedPiece{{1}}));
    CHECK(is(pick(scene, {93, 375}, 3), std::monostate{}));
}

TEST_CASE("Bends and ends are offered for the chosen branch alone, and win over all") {
    FairTable table;
    const Scene& scene = table.session.scene();
    CHECK(is(pick(scene, {318, 420}, 6), PickedBranch{0}));
    CHECK(is(pick(scene, {318, 420}, 6, 0), PickedBend{0, 1}));
    CHECK(is(pick(scene, {150, 420}, 6, 0), PickedBranch{0}));
    CHECK(is(pick(scene, {318, 420}, 6, 7), PickedBranch{0}));  // a branch that is not there
}

TEST_CASE("The trunk's handles are offered when the trunk is chosen") {
    FairTable table;
    const Scene& scene = table.session.scene();
    CHECK(is(pick(scene, {19, 498}, 6), PickedTrunk{}));
    CHECK(is(pick(scene, {19, 498}, 6, {}, true), PickedTrunkTop{}));
    CHECK(is(pick(scene, {31, 2}, 6, {}, true), PickedTrunkFoot{}));
}

TEST_CASE("Keys go through every piece, branch, bend and handle, and come round") {
    FairTable table;
    table.press(Action::choose_nothing);
    std::vector<Picked> seen;
    for (int i = 0; i < 7; ++i) {
        table.press(Action::choose_next);
        seen.push_back(table.session.chosen());
    }
    const std::vector<Picked> expected = {PickedPiece{{1}}, PickedBranch{0},  PickedBend{0, 0}, PickedBend{0, 1},
                                          PickedTrunk{},    PickedTrunkTop{}, PickedTrunkFoot{}};
    CHECK(seen == expected);
    table.press(Action::choose_next);
    CHECK(is(table.session.chosen(), PickedPiece{{1}}));
    table.press(Action::choose_previous);
    CHECK(is(table.session.chosen(), PickedTrunkFoot{}));
}

TEST_CASE("What is no longer there is no longer chosen") {
    FairTable table;
    table.session.perform(Choose{PickedBend{0, 1}});
    CHECK(table.session.chosen_branch() == std::size_t{0});
    table.wish(RemoveBranch{"b1"});
    CHECK(is(table.session.chosen(), std::monostate{}));
    table.choose(1);
    table.press(Action::throw_away);
    CHECK(is(table.session.chosen(), std::monostate{}));
}
