// SPDX-License-Identifier: MIT
// Letters up to twice as large, in a window that shows a part of the page.
#include "gui/window/magnifier.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

constexpr PixelBox page{0, 0, 2048, 1380};
constexpr PixelBox window{0, 0, 1280, 800};

void enlarge(DrivenWindow& it, int times) {
    for (int i = 0; i < times; ++i) it.key(SDLK_PLUS, KMOD_LCTRL);
}

/// Moves the mouse until the pointer is over that place of the page, as a hand does, looking.
void point_at(DrivenWindow& it, Vec2 place) {
    if (it.at_px() == Vec2{}) it.move(middle(window));
    for (int look = 0; look < 60; ++look) {
        const Vec2 pointer = it.window().widgets().pointer_px();
        if (distance(pointer, place) < 3) return;
        it.move(it.at_px() + 0.4 * (place - pointer));
    }
    FAIL("the pointer never came to " << place.x << ", " << place.y);
}

void click_on_page(DrivenWindow& it, const std::string& label) {
    point_at(it, middle(it.place(label)));
    it.click(it.at_px());
}

}  // namespace

TEST_CASE("what the window shows of a larger page follows the pointer from end to end") {
    CHECK(following_pointer({0, 0}, page, window) == Vec2{0, 0});
    CHECK(following_pointer({1280, 800}, page, window) == Vec2{768, 580});
    CHECK(following_pointer({640, 400}, page, window) == Vec2{384, 290});
    CHECK(following_pointer({640, 400}, window, window) == Vec2{0, 0});
    // The place under the pointer never goes back when the pointer goes on.
    double before = -1;
    for (double x = 0; x <= 1280; x += 8) {
        const double on_page = x + following_pointer({x, 0}, page, window).x;
        CHECK(on_page > before);
        before = on_page;
    }
    CHECK(before == 2048);
}

TEST_CASE("a box is brought into view by the least move, and the window stays on the page") {
    CHECK(bringing_into_view({100, 100}, {200, 200, 50, 44}, page, window) == Vec2{100, 100});
    CHECK(bringing_into_view({100, 100}, {40, 200, 50, 44}, page, window) == Vec2{40, 100});
    CHECK(bringing_into_view({0, 0}, {1400, 900, 100, 44}, page, window) == Vec2{220, 144});
    CHECK(bringing_into_view({0, 0}, {100, 100, 1900, 44}, page, window) == Vec2{100, 0});
    CHECK(kept_on_page({-5, 900}, page, window) == Vec2{0, 580});
    CHECK(kept_on_page({5, 9}, window, window) == Vec2{0, 0});
}

TEST_CASE("letters grow to twice their size in any window, and stay so the next time") {
    std::map<std::string, std::string> kept;
    {
        DrivenWindow it;
        it.open_example();
        for (const double scale : {1.25, 1.5, 1.75, 2.0, 2.0}) {
            enlarge(it, 1);
            CHECK(it.window().layout().scale == scale);
        }
        CHECK(it.window().layout().page.width == 2048);
        it.save_picture("large_letters");
        kept = it.files.contents;
    }
    DrivenWindow again(1280, 800, 1, kept);
    CHECK(again.window().layout().scale == 2);
    for (int i = 0; i < 4; ++i) again.key(SDLK_MINUS, KMOD_LCTRL);
    CHECK(again.window().layout().scale == 1);
    CHECK(again.window().layout().page.width == 1280);
}

TEST_CASE("with large letters a mouse reaches every corner: a piece is hung, a page turned, a menu used") {
    DrivenWindow it;
    it.open_example();
    enlarge(it, 4);
    point_at(it, middle(it.place("envelope piece 8")));
    it.save_picture("large_letters_envelope");
    it.press(it.at_px());
    point_at(it, it.px({-160, 380}));
    REQUIRE(it.session().held());
    CHECK(it.session().held()->ghost);
    it.save_picture("large_letters_in_the_hand");
    it.release();
    CHECK(it.report(8).hangs_from);

    click_on_page(it, "Data table");
    CHECK(it.session().page() == Page::table);
    it.save_picture("large_letters_table");
    click_on_page(it, "file");
    click_on_page(it, "smaller letters");
    CHECK(it.window().layout().scale == 1.75);
}

TEST_CASE("with large letters and keys alone, what has the keys is always in sight") {
    DrivenWindow it;
    it.open_example();
    enlarge(it, 4);
    for (int i = 0; i < 30; ++i) {
        it.key(SDLK_TAB);
        const std::string label = it.window().widgets().focused();
        if (!it.shows(label)) continue;
        INFO(label);
        const PixelBox box = it.place(label);
        const Vec2 corner = it.window().corner_px();
        CHECK(box.x >= corner.x);
        CHECK(box.y >= corner.y);
        CHECK(box.x + box.width <= corner.x + 1280);
        CHECK(box.y + box.height <= corner.y + 800);
    }
}

TEST_CASE("with large letters two fingers move the page, and one finger presses what it sees") {
    DrivenWindow it;
    it.open_example();
    enlarge(it, 4);
    const double near = it.session().camera().px_per_mm;
    const Vec2 before = it.window().corner_px();
    it.finger(SDL_FINGERDOWN, 1, {900, 500});
    it.finger(SDL_FINGERDOWN, 2, {1000, 500});
    for (int step = 1; step <= 20; ++step) {
        it.finger(SDL_FINGERMOTION, 1, {900.0 - 30 * step, 500});
        it.finger(SDL_FINGERMOTION, 2, {1000.0 - 30 * step, 500});
    }
    it.finger(SDL_FINGERUP, 1, {300, 500});
    it.finger(SDL_FINGERUP, 2, {400, 500});
    CHECK(it.window().corner_px().x == Approx(before.x + 600).margin(1));
    CHECK(it.session().camera().px_per_mm == near);

    const Vec2 there = middle(it.place("Lesson")) - it.window().corner_px();
    it.finger(SDL_FINGERDOWN, 1, there);
    it.finger(SDL_FINGERUP, 1, there);
    it.frames();
    CHECK(it.session().page() == Page::lesson);
}
