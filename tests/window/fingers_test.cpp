// SPDX-License-Identifier: MIT
// Everything with one finger: lists are pulled where they are touched, and a pull presses nothing.
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

void tap(DrivenWindow& it, const std::string& label) {
    const Vec2 at = middle(it.place(label));
    it.finger(SDL_FINGERDOWN, 1, at);
    it.finger(SDL_FINGERUP, 1, at);
    it.frames();
}

/// A finger that comes down there, goes up by so much, and is lifted.
void pull_up(DrivenWindow& it, Vec2 from, double by_px) {
    it.finger(SDL_FINGERDOWN, 1, from);
    for (int step = 1; step <= 8; ++step) it.finger(SDL_FINGERMOTION, 1, from - Vec2{0, step * by_px / 8});
    it.finger(SDL_FINGERUP, 1, from - Vec2{0, by_px});
    it.frames();
}

/// Pulls at something within a list; checks that it came along and that nothing was pressed.
void pulls(DrivenWindow& it, const std::string& at_label) {
    INFO("pulled at: " << at_label);
    const PixelBox before = it.place(at_label);
    const Scene scene = it.session().scene();
    const Page page = it.session().page();
    const Dialog dialog = it.session().dialog();
    pull_up(it, middle(before), 60);
    REQUIRE(it.shows(at_label));
    CHECK(it.place(at_label).y < before.y - 30);
    CHECK(it.session().scene() == scene);
    CHECK(it.session().page() == page);
    CHECK(it.session().dialog() == dialog);
    CHECK(it.window().widgets().typed_into().empty());
}

}  // namespace

TEST_CASE("with one finger every list is pulled along by what it holds, and nothing is pressed by that") {
    DrivenWindow it(1024, 700);
    it.open_example();
    tap(it, "Challenge");
    tap(it, "section limits");
    pulls(it, "too many: noted");
    pulls(it, "branches at most");  // a field is not typed into either
    tap(it, "Built tree");
    pulls(it, "built piece 4");
    tap(it, "Lesson");
    tap(it, "usual phases");
    for (int i = 0; i < 6; ++i) tap(it, "add a phase");
    pulls(it, "take out phase 5");
    tap(it, "Data table");
    pulls(it, "piece 3 by hand 1");
    tap(it, "Tree");
    tap(it, "help");
    pulls(it, "do Challenge");
    tap(it, "close");
    tap(it, "make a piece");
    tap(it, "ready pieces");
    pulls(it, "ready isosceles acute large");
}

TEST_CASE("with one finger a field is typed into, a box ticked, a card of the envelope chosen and hung") {
    DrivenWindow it(1024, 700);
    it.open_example();
    tap(it, "envelope piece 8");
    CHECK(it.session().chosen_piece() == PieceNumber{8});
    tap(it, "next branch");
    CHECK(it.report(8).hangs_from);
    tap(it, "Challenge");
    tap(it, "section limits");
    tap(it, "too many: noted");
    CHECK(it.session().scene().challenge.over_limit == OverLimit::noted);
    tap(it, "branches at most");
    CHECK(it.window().widgets().typed_into() == "branches at most");
}
