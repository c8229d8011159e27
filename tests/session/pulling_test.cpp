// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/session/pulling.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

const std::vector<Vec2>& path(const FairTable& table) { return table.session.plan().tree.branches[0].path_mm; }

}  // namespace

TEST_CASE("The end of a branch is pulled, and what hangs from the branch stays on it") {
    FairTable table;
    table.hang(1, 60);
    table.grab(PickedBend{0, 1}, {318, 421});
    table.hold_at({308, 391}, true);
    CHECK(path(table)[1] == Vec2{310, 390});
    CHECK(path(table)[0] == Vec2{0, 420});
    CHECK(table.counts(1));
    table.let_go();
    CHECK(table.session.history().undo_label() == in_words(Edit(ShapeBranch{"b1", {}, 8})));
    table.press(Action::undo);
    CHECK(path(table)[1] == Vec2{320, 420});
    CHECK(table.pose(1).at_mm == Vec2{60, 416});
}

TEST_CASE("A whole branch is moved with all that hangs from it") {
    FairTable table;
    table.hang(1, 60);
    table.grab(PickedBranch{0}, {200, 420});
    table.hold_at({200, 360});
    table.let_go();
    CHECK(path(table) == std::vector<Vec2>{{0, 360}, {320, 360}});
    CHECK(table.pose(1).at_mm == Vec2{60, 356});
    CHECK(table.counts(1));
    CHECK(table.session.chosen_branch() == std::size_t{0});
}

TEST_CASE("An impossible bend keeps the last possible one") {
    FairTable table;
    table.session.perform(Choose{PickedBranch{0}});
    table.press(Action::add_bend);
    REQUIRE(path(table).size() == 3);
    table.grab(PickedBend{0, 1}, {160, 420});
    table.hold_at({160, 440}, true);
    table.hold_at({900, 421});  // the branch would turn back on itself
    CHECK(path(table)[1] == Vec2{160, 440});
    CHECK_FALSE(table.session.problem());
    table.let_go();
    CHECK(path(table)[1] == Vec2{160, 440});
}

TEST_CASE("The trunk's top pulls its height and its width there") {
    FairTable table;
    table.grab(PickedTrunkTop{}, {20, 500});
    table.hold_at({25, 540});
    table.let_go();
    const Trunk& trunk = table.session.plan().tree.trunk;
    CHECK(trunk.height_mm == 540);
    CHECK(trunk.top_width_mm == 50);
    CHECK(trunk.base_width_mm == 60);
    CHECK(trunk.x_mm == 0);
    CHECK(table.session.trunk_chosen());
}

TEST_CASE("The trunk's foot pulls its width at the ground, and never below nothing") {
    FairTable table;
    table.grab(PickedTrunkFoot{}, {30, 0});
    table.hold_at({40, 7});
    CHECK(table.session.plan().tree.trunk.base_width_mm == 80);
    table.hold_at({-10, 0});
    CHECK(table.session.plan().tree.trunk.base_width_mm == 80);
    CHECK(table.session.plan().tree.trunk.height_mm == 500);
}

TEST_CASE("A pulled end stops at round lengths and angles that are near, unless it is pulled freely") {
    const Branch level{.path_mm = {{0, 420}, {320, 420}}};
    CHECK(near(rounded_point(level, 1, {303, 422}, Unit::cm), {300, 420}));
    CHECK(near(rounded_point(level, 1, {305, 420.5}, Unit::cm), {305, 420}, 1e-1));  // half-way between two lengths
    CHECK(near(rounded_point(level, 1, {100.5, 519}, Unit::cm), Vec2{0, 420} + 140 * unit(Vec2{1, 1}), 1e-6));
    CHECK(near(rounded_point(level, 1, {127.5, 420}, Unit::in), {127, 420}));
    CHECK(near(rounded_point(level, 0, {21, 419}, Unit::cm), {20, 420}));
    const Vec2 between = {305, 440};  // 3.8 degrees, 305.7 mm
    CHECK(near(rounded_point(level, 1, between, Unit::cm), between));

    FairTable table;
    table.grab(PickedBend{0, 1}, {320, 420});
    table.hold_at({303, 422}, true);
    table.let_go();
    CHECK(near(table.session.plan().tree.branches[0].path_mm[1], {303, 422}));
}

TEST_CASE("Keys move an end, a branch and the trunk's handles by one step") {
    FairTable table;
    table.session.perform(Choose{PickedBend{0, 1}});
    table.press(Action::nudge_down);
    CHECK(path(table)[1] == Vec2{320, 419});
    table.session.perform(Choose{PickedBranch{0}});
    table.press(Action::nudge_up);
    CHECK(path(table)[0] == Vec2{0, 421});
    table.session.perform(Choose{PickedTrunkTop{}});
    table.press(Action::nudge_up);
    CHECK(table.session.plan().tree.trunk.height_mm == 501);
}

TEST_CASE("Branches grow on both sides by turns, and can be taken off") {
    FairTable table;
    table.press(Action::add_branch);
    REQUIRE(table.session.plan().tree.branches.size() == 2);
    CHECK(table.session.plan().tree.branches[1].path_mm.back().x < 0);
    CHECK(table.session.chosen_branch() == std::size_t{1});
    table.press(Action::add_branch);
    CHECK(table.session.plan().tree.branches[2].path_mm.back().x > 0);
    table.press(Action::remove_branch);
    CHECK(table.session.plan().tree.branches.size() == 2);
    CHECK_FALSE(table.session.chosen_branch());
}

TEST_CASE("A piece can hang from a branch that was just added") {
    FairTable table;
    table.wish(RemoveBranch{"b1"});
    table.press(Action::add_branch);
    table.choose(1);
    table.press(Action::next_span);
    CHECK(table.counts(1));
}

TEST_CASE("A bend is put in half-way and taken out again") {
    FairTable table;
    table.session.perform(Choose{PickedBranch{0}});
    table.press(Action::add_bend);
    CHECK(path(table) == std::vector<Vec2>{{0, 420}, {160, 420}, {320, 420}});
    table.session.perform(Choose{PickedBend{0, 2}});
    table.press(Action::add_bend);  // at the tip: in its last run
    CHECK(path(table)[2] == Vec2{240, 420});
    table.session.perform(Choose{PickedBend{0, 3}});
    table.press(Action::remove_bend);
    CHECK(path(table) == std::vector<Vec2>{{0, 420}, {160, 420}, {240, 420}});
    CHECK(table.session.chosen() == Picked(PickedBranch{0}));
}
