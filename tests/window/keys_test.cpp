// SPDX-License-Identifier: MIT
// One who has only a keyboard can do everything.
#include "gui/window/keys.h"
#include "tests/window/driven_window.h"

using namespace boughwork;

TEST_CASE("a piece is made, hung, slid along and taken down without a mouse") {
    DrivenWindow it;
    it.open_example();
    const std::size_t pieces = it.session().scene().pieces.size();

    it.key(SDLK_a);
    REQUIRE(it.session().dialog() == Dialog::make_a_piece);
    it.type("5");
    it.key(SDLK_TAB);
    it.type("5");
    it.key(SDLK_TAB);
    it.type("4");
    it.key(SDLK_RETURN);
    REQUIRE(it.session().dialog() == Dialog::none);
    REQUIRE(it.session().scene().pieces.size() == pieces + 1);
    const int made = it.session().scene().pieces.back().number.value;
    CHECK(std::get<Triangle>(it.session().scene().pieces.back().shape) ==
          Triangle{{length_from_mm(50), length_from_mm(50), length_from_mm(40)}});
    REQUIRE(it.session().chosen_piece() == PieceNumber{made});

    it.key(SDLK_n);
    REQUIRE(find_hung(it.session().plan(), {made}));
    CHECK(it.counts(made));
    const Vec2 hung_at = find_hung(it.session().plan(), {made})->pose.at_mm;
    it.key(SDLK_LEFT);
    CHECK_FALSE(find_hung(it.session().plan(), {made})->pose.at_mm == hung_at);
    it.key(SDLK_s);
    it.save_picture("keys_hung");
    it.key(SDLK_e);
    CHECK_FALSE(find_hung(it.session().plan(), {made}));
}

TEST_CASE("Tab goes through all buttons, and Enter or Space presses") {
    DrivenWindow it;
    it.open_example();
    it.tab_to("plan Plan 2");
    it.save_picture("keys_ring");
    it.key(SDLK_RETURN);
    CHECK(it.session().plan().name == "Plan 2");
    it.tab_to("undo");
    it.key(SDLK_SPACE);
    CHECK(it.session().plan().name == "Plan 1");
    for (const char* label : {"title", "file", "help", "add a branch", "make a piece", "envelope piece 15", "challenge",
                              "card whole side", "card isosceles share"})
        it.tab_to(label);
    it.key(SDLK_RETURN);
    CHECK(it.session().pointed_line());
}

TEST_CASE("with Tab backwards one comes back") {
    DrivenWindow it;
    it.open_example();
    it.tab_to("file");
    it.key(SDLK_TAB);
    it.key(SDLK_TAB, KMOD_LSHIFT);
    CHECK(it.window().widgets().focused() == "file");
}

TEST_CASE("in a dialog Tab stays inside, and letters are typed, not commands") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    const auto of_the_page = it.window().places();
    it.key(SDLK_a);
    for (int i = 0; i < 20; ++i) {
        it.key(SDLK_TAB);
        const std::string& focused = it.window().widgets().focused();
        INFO(focused);
        CHECK(it.shows(focused));
        CHECK(of_the_page.count(focused) == 0);
    }
    it.tab_to("side 1");
    it.type("bcmn");
    CHECK(it.session().scene() == before);
    it.key(SDLK_ESCAPE);
    CHECK(it.session().dialog() == Dialog::none);
    CHECK(it.session().scene() == before);
}

TEST_CASE("the letter that opens a dialog is not typed into it") {
    DrivenWindow it;
    it.open_example();
    it.type("a");
    REQUIRE(it.session().dialog() == Dialog::make_a_piece);
    it.type("5");
    it.key(SDLK_TAB);
    it.type("5");
    it.key(SDLK_TAB);
    it.type("5");
    it.key(SDLK_RETURN);
    REQUIRE(it.session().dialog() == Dialog::none);
    const Length five = length_from_mm(50);
    CHECK(std::get<Triangle>(it.session().scene().pieces.back().shape) == Triangle{{five, five, five}});
}

TEST_CASE("a menu opens, is gone through and closed by keys") {
    DrivenWindow it;
    it.open_example();
    it.tab_to("file");
    it.key(SDLK_RETURN);
    REQUIRE(it.shows("save as"));
    it.save_picture("keys_file_menu");
    it.key(SDLK_ESCAPE);
    CHECK_FALSE(it.shows("save as"));
    it.tab_to("file");
    it.key(SDLK_RETURN);
    it.tab_to("save as");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::save_as);
}

TEST_CASE("the help is read to its end by keys") {
    DrivenWindow it(1024, 700);
    it.open_example();
    it.key(SDLK_F1);
    REQUIRE(it.session().dialog() == Dialog::help);
    it.save_picture("keys_help");
    for (int i = 0; i < 10; ++i) it.key(SDLK_PAGEDOWN);
    it.save_picture("keys_help_end");
    it.tab_to("close");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::none);
}

TEST_CASE("every key of the command table leads to its action") {
    const std::map<std::string, SDL_Keycode> named = {
        {"left", SDLK_LEFT},     {"right", SDLK_RIGHT}, {"up", SDLK_UP},  {"down", SDLK_DOWN}, {"escape", SDLK_ESCAPE},
        {"delete", SDLK_DELETE}, {"F1", SDLK_F1},       {"+", SDLK_PLUS}, {"-", SDLK_MINUS}};
    for (const CommandRow& row : command_table()) {
        if (*row.keys.key == '\0') continue;
        const std::string key = row.keys.key;
        INFO(row.name);
        // These belong to whatever has the keys (gui/window/widgets.h).
        CHECK((key != "tab" && key != "enter" && key != "space"));
        const SDL_Keycode code = named.count(key) > 0 ? named.at(key) : static_cast<SDL_Keycode>(key.front());
        const auto action = action_of({code, row.keys.ctrl, row.keys.shift});
        REQUIRE(action);
        CHECK(*action == row.action);
    }
    CHECK_FALSE(action_of({SDLK_F9, false, false}));
    CHECK_FALSE(action_of({SDLK_s, true, false}) == action_of({SDLK_s, false, false}));
}

TEST_CASE("pieces, branches and bends are chosen and moved one after the other by keys") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_d);
    CHECK(it.session().chosen_piece() == PieceNumber{1});
    it.key(SDLK_d);
    CHECK(it.session().chosen_piece() == PieceNumber{2});
    it.key(SDLK_d, KMOD_LSHIFT);
    CHECK(it.session().chosen_piece() == PieceNumber{1});
    it.key(SDLK_ESCAPE);
    CHECK_FALSE(it.session().chosen_piece());
    it.key(SDLK_d, KMOD_LSHIFT);  // the last of all: the trunk's foot
    REQUIRE(it.session().trunk_chosen());
    const double width = it.session().plan().tree.trunk.base_width_mm;
    it.key(SDLK_RIGHT);
    CHECK(it.session().plan().tree.trunk.base_width_mm > width);
}
