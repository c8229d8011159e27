// SPDX-License-Identifier: MIT
// What a hand does with the tree, the view and the envelope.
#include "gui/session/pulling.h"
#include "tests/window/driven_window.h"

using namespace boughwork;

namespace {

const Branch& branch(DrivenWindow& it, std::size_t index) { return it.session().plan().tree.branches[index]; }

Vec2 middle_of_paper(DrivenWindow& it) { return middle(it.session().camera().view); }

}  // namespace

TEST_CASE("a press chooses what lies under it, and a press on paper chooses nothing") {
    DrivenWindow it;
    it.open_example();
    it.click(it.middle_of(2));
    CHECK(it.session().chosen_piece() == PieceNumber{2});
    CHECK(it.shows("next side"));
    it.click(it.px({300, 425 + 8}));
    CHECK(it.session().chosen_branch() == 0U);
    CHECK(it.shows("add a bend"));
    it.save_picture("hand_branch_chosen");
    it.click(it.px({0, 100}));
    CHECK(it.session().trunk_chosen());
    it.save_picture("hand_trunk_chosen");
    it.click(it.px({-300, 100}));
    CHECK(std::holds_alternative<std::monostate>(it.session().chosen()));
    CHECK_FALSE(it.session().unsaved());
}

TEST_CASE("the end of a branch is dragged, and undone as one step") {
    DrivenWindow it;
    it.open_example();
    const std::vector<Vec2> before = branch(it, 2).path_mm;
    it.click(it.px({360, 225}));
    REQUIRE(it.session().chosen_branch() == 2U);

    it.drag(it.px(before.back()), it.px(before.back() + Vec2{60, 30}));

    const double pixel_mm = 1 / it.session().camera().px_per_mm;
    // It stops at a round length and angle where one is near.
    const Vec2 meant = rounded_point({.path_mm = before}, before.size() - 1, before.back() + Vec2{60, 30},
                                     it.session().scene().challenge.units);
    CHECK(distance(branch(it, 2).path_mm.back(), meant) < 2 * pixel_mm);
    CHECK(branch(it, 2).path_mm.front() == before.front());
    it.save_picture("hand_branch_end_dragged");
    it.click("undo");
    CHECK(branch(it, 2).path_mm == before);
    CHECK_FALSE(it.session().history().can_undo());
}

TEST_CASE("the buttons below the tree add a bend, take it out, and take the branch off") {
    DrivenWindow it;
    it.open_example();
    it.click(it.px({360, 225}));
    it.click("add a bend");
    CHECK(branch(it, 2).path_mm.size() == 3);
    const auto bend =
        std::find_if(branch(it, 2).path_mm.begin() + 1, branch(it, 2).path_mm.end(), [](Vec2) { return true; });
    it.click(it.px(*bend));
    REQUIRE(std::holds_alternative<PickedBend>(it.session().chosen()));
    it.click("take out the bend");
    CHECK(branch(it, 2).path_mm.size() == 2);
    it.click("take off the branch");
    CHECK(it.session().plan().tree.branches.size() == 2);
}

TEST_CASE("the wheel brings the place under the pointer nearer, and paper is dragged along") {
    DrivenWindow it;
    it.open_example();
    const Vec2 pointer = middle_of_paper(it) + Vec2{120, 40};
    it.move(pointer);
    const Vec2 under = to_mm(it.session().camera(), pointer);
    const double before = it.session().camera().px_per_mm;
    it.wheel(3);
    CHECK(it.session().camera().px_per_mm > 1.3 * before);
    CHECK(distance(to_mm(it.session().camera(), pointer), under) < 1e-6);

    const Vec2 paper = it.px({-200, 100});
    it.drag(paper, paper + Vec2{-50, 30});
    CHECK(distance(it.px({-200, 100}), paper + Vec2{-50, 30}) < 1e-6);
    CHECK_FALSE(it.session().unsaved());

    it.click("closer");
    CHECK(it.session().camera().px_per_mm > 1.5 * before);
    it.click("farther");
    it.click("show all");
    CHECK(it.session().camera().px_per_mm == Approx(before));
}

TEST_CASE("Escape while dragging leaves everything as it was, and the hand may let go where it likes") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    it.press(it.middle_of(1));
    it.drag_on(it.px({-250, 150}));
    REQUIRE(it.session().held());
    REQUIRE_FALSE(it.session().scene() == before);
    it.key(SDLK_ESCAPE);
    CHECK_FALSE(it.session().held());
    CHECK(it.session().scene() == before);
    it.drag_on(it.px({-100, 100}));
    it.release();
    CHECK(it.session().scene() == before);
    CHECK_FALSE(it.session().history().can_undo());
}

TEST_CASE("Escape also drops what comes from the envelope") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    it.press(middle(it.place("envelope piece 8")));
    it.drag_on(it.px({-250, 150}));
    REQUIRE(it.session().held());
    it.key(SDLK_ESCAPE);
    it.release();
    CHECK(it.session().scene() == before);
    CHECK(it.shows("envelope piece 8"));
}

TEST_CASE("a hung piece dragged into the envelope waits there") {
    DrivenWindow it;
    it.open_example();
    it.press(it.middle_of(3));
    it.drag_on(middle(it.window().layout().envelope));
    it.save_picture("hand_over_the_envelope");
    it.release();
    CHECK_FALSE(find_hung(it.session().plan(), {3}));
    CHECK(it.report(3).state == PieceState::in_the_envelope);
}

TEST_CASE("a piece let go beside the paper goes back to where it was") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    it.drag(it.middle_of(3), middle(it.window().layout().referee));
    CHECK(it.session().scene() == before);
}

TEST_CASE("a press on a card of the envelope chooses its piece, a pull along it leafs through") {
    DrivenWindow it;
    it.open_example();
    it.click("envelope piece 8");
    CHECK(it.session().chosen_piece() == PieceNumber{8});
    const PixelBox card = it.place("envelope piece 8");
    it.drag(middle(card), middle(card) - Vec2{3, 60});
    CHECK_FALSE(it.session().unsaved());
    CHECK(it.place("envelope piece 8").y < card.y - 30);
}

TEST_CASE("a second finger tries the next side of the piece in the hand") {
    DrivenWindow it;
    it.open_example();
    it.finger(SDL_FINGERDOWN, 1, middle(it.place("envelope piece 12")));
    for (const Vec2 step : {Vec2{-40, 0}, Vec2{-200, 0}}) it.finger(SDL_FINGERMOTION, 1, it.at_px() + step);
    it.finger(SDL_FINGERMOTION, 1, it.px({-160, 370}));
    REQUIRE(it.session().held());
    REQUIRE(it.session().held()->ghost);
    const int side = it.session().held()->ghost->side;
    it.finger(SDL_FINGERDOWN, 2, {200, 200});
    it.frames();
    REQUIRE(it.session().held());
    REQUIRE(it.session().held()->by_side);
    CHECK(*it.session().held()->by_side != side);
}

TEST_CASE("two fingers on the paper bring the tree nearer, and what lies under them stays there") {
    DrivenWindow it;
    it.open_example();
    const Vec2 first = middle_of_paper(it) + Vec2{-60, 90};
    const Vec2 second = first + Vec2{100, 0};
    const Vec2 first_mm = to_mm(it.session().camera(), first);
    const Vec2 second_mm = to_mm(it.session().camera(), second);
    it.finger(SDL_FINGERDOWN, 1, first);
    it.finger(SDL_FINGERDOWN, 2, second);
    for (int step = 1; step <= 10; ++step) it.finger(SDL_FINGERMOTION, 2, second + Vec2{10.0 * step, 0});
    CHECK(distance(it.px(first_mm), first) < 1);
    CHECK(distance(it.px(second_mm), second + Vec2{100, 0}) < 1);
    for (int step = 1; step <= 10; ++step) {
        it.finger(SDL_FINGERMOTION, 1, first + Vec2{0, 3.0 * step});
        it.finger(SDL_FINGERMOTION, 2, second + Vec2{100, 3.0 * step});
    }
    it.finger(SDL_FINGERUP, 2, second + Vec2{100, 30});
    it.finger(SDL_FINGERUP, 1, first + Vec2{0, 30});
    CHECK(distance(it.px(first_mm), first + Vec2{0, 30}) < 2);
    CHECK(distance(it.px(second_mm), second + Vec2{100, 30}) < 2);
    CHECK_FALSE(it.session().unsaved());
}

TEST_CASE("two fingers that come down upon a piece move the view and not the piece") {
    DrivenWindow it;
    it.open_example();
    const Camera before = it.session().camera();
    const Vec2 first = it.middle_of(2);
    it.finger(SDL_FINGERDOWN, 1, first);
    it.finger(SDL_FINGERDOWN, 2, first + Vec2{0, 120});
    for (int step = 1; step <= 6; ++step) {
        it.finger(SDL_FINGERMOTION, 1, first + Vec2{0, -8.0 * step});
        it.finger(SDL_FINGERMOTION, 2, first + Vec2{0, 120 + 8.0 * step});
    }
    it.finger(SDL_FINGERUP, 1, first + Vec2{0, -48});
    it.finger(SDL_FINGERUP, 2, first + Vec2{0, 168});
    CHECK(it.session().camera().px_per_mm == Approx(before.px_per_mm * 216 / 120).epsilon(1e-5));
    CHECK_FALSE(it.session().unsaved());
}

TEST_CASE("what was just done is said even where the buttons leave no room for it") {
    DrivenWindow it;
    it.open_example();
    it.click(it.middle_of(2));
    it.key(SDLK_s, KMOD_LCTRL);
    REQUIRE_FALSE(it.session().word().empty());
    std::string written;
    for (const Written& words : it.window().widgets().lettering().written()) written += words.words + " ";
    CHECK(written.find(it.session().word()) != std::string::npos);
    it.save_picture("hand_saved");
}

TEST_CASE("the title is pressed, typed anew, and kept") {
    DrivenWindow it;
    it.open_example();
    it.click("title");
    it.type("Robin table");
    it.key(SDLK_RETURN);
    CHECK(it.session().scene().title == "Robin table");
    it.click("title");
    it.type("x");
    it.key(SDLK_ESCAPE);
    CHECK(it.session().scene().title == "Robin table");
}
