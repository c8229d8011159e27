// SPDX-License-Identifier: MIT
// Several pieces moved as one, and a piece that stops at its neighbours, by mouse, finger and keys.
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

Pose pose(DrivenWindow& it, int piece) { return find_hung(it.session().plan(), {piece})->pose; }

/// A press with Shift held down.
void shift_click(DrivenWindow& it, Vec2 at_px) {
    it.hold_key(SDLK_LSHIFT, KMOD_LSHIFT);
    it.click(at_px);
    it.release_key(SDLK_LSHIFT);
}

}  // namespace

TEST_CASE("pieces are gathered with Shift, or by buttons alone, and dragged as one") {
    DrivenWindow it;
    it.open_example();
    shift_click(it, it.middle_of(9));
    it.click(it.middle_of(11));
    it.click_in_strip("gather");
    CHECK(it.session().gathered() == std::vector<PieceNumber>{{9}, {11}});
    it.save_picture("gathered_two");

    const Pose nine = pose(it, 9);
    const Pose eleven = pose(it, 11);
    it.press(it.middle_of(9));
    it.drag_on(it.middle_of(9) + Vec2{-30, -60});
    it.save_picture("gathered_in_the_hand");
    it.release();
    const Vec2 by = pose(it, 9).at_mm - nine.at_mm;
    CHECK(length(by) > 20);
    CHECK(distance(pose(it, 11).at_mm - eleven.at_mm, by) < 1e-9);
    it.click("undo");
    CHECK(pose(it, 9) == nine);
    CHECK(pose(it, 11) == eleven);
}

TEST_CASE("with keys alone a row is gathered, moved and let go") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_d);
    for (int i = 0; i < 20 && it.session().chosen_piece() != PieceNumber{2}; ++i) it.key(SDLK_d);
    REQUIRE(it.session().chosen_piece() == PieceNumber{2});
    it.key(SDLK_z, KMOD_LSHIFT);
    const std::vector<PieceNumber> row = it.session().gathered();
    REQUIRE(row.size() > 1);
    std::vector<Vec2> before;
    for (const PieceNumber piece : row) before.push_back(pose(it, piece.value).at_mm);
    it.key(SDLK_UP);
    for (std::size_t i = 0; i < row.size(); ++i) CHECK(pose(it, row[i].value).at_mm.y > before[i].y);
    it.key(SDLK_ESCAPE);
    CHECK(it.session().gathered().empty());
}

TEST_CASE("a piece in the hand says its side, its angles and the room beside it, at every size") {
    for (const Size& size : {Size{}, Size{1280, 800, 1, es}, Size{2560, 1600, 2}, Size{1024, 700, 1}}) {
        speak(size.language);
        DrivenWindow it(size.width, size.height, size.scale);
        it.open_example();
        it.press(it.middle_of(9));
        it.drag_on(it.middle_of(9) + size.scale * Vec2{-12, 9});
        REQUIRE(it.session().held());
        REQUIRE(it.session().held()->ghost);
        look_at(it, "ghost_" + size.name());
        it.release();
    }
    speak(Language::english);
}

TEST_CASE("asked to, a dragged piece stops at its neighbour, and does not otherwise") {
    DrivenWindow it;
    it.open_example();
    const Vec2 over_5 = it.middle_of(4) + Vec2{20, 2};
    it.press(it.middle_of(4));
    it.drag_on(over_5);
    CHECK_FALSE(it.counts(4));
    it.key(SDLK_ESCAPE);
    it.release();

    it.click(it.middle_of(4));
    it.click_in_strip("stop at neighbours");
    CHECK(it.session().stops_at_neighbours());
    it.press(it.middle_of(4));
    it.drag_on(over_5);
    it.save_picture("stopped_at_the_neighbour");
    it.release();
    CHECK(pose(it, 4).at_mm.x > 0);
    CHECK(it.counts(4));
    CHECK(it.counts(5));
}
