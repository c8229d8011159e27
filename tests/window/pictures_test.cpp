// SPDX-License-Identifier: MIT
// The page in all its states at several sizes, in both languages: nothing overlaps, nothing is cut off, everything is
// large enough for a finger. Saves a picture of each, for people to look at.
#include "engine/storage/plan_file.h"
#include "gui/picture/palette.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

TEST_CASE("at every size and scale the page is whole, whatever is chosen and said") {
    const Size size =
        GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1}, Size{2560, 1600, 1},
                 Size{1920, 1080, 1.5}, Size{1280, 800, 1, es}, Size{2560, 1600, 2, es}, Size{1024, 700, 1, es});
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    look_at(it, size.name() + "page");
    nothing_overlaps(it);
    CHECK(it.window().layout().scale == Approx(size.scale));

    it.click(it.middle_of(2));
    look_at(it, size.name() + "piece_chosen");
    nothing_overlaps(it);
    it.click("envelope piece 8");
    look_at(it, size.name() + "waiting_piece_chosen");
    it.click(it.px({300, 433}));
    look_at(it, size.name() + "branch_chosen");
    nothing_overlaps(it);
    it.wish(Hang{{4}, {.at_mm = {-300, 250}}});
    it.wish(Hang{{2}, {.at_mm = {60, 448}, .turn_ccw_deg = -4.51399}});
    look_at(it, size.name() + "findings");
    it.click("next");
    it.click("show");
    look_at(it, size.name() + "lens");
    nothing_overlaps(it);
}

TEST_CASE("at every size and scale the dialogs are whole") {
    const Size size = GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1}, Size{1280, 800, 1, es},
                               Size{2560, 1600, 2, es}, Size{1024, 700, 1, es});
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.files.contents["/fair/broken.bough.json"] = "{ oops";
    it.click("make a piece");
    it.type("8");
    it.click("side 2");
    it.type("6");
    it.click("side 3");
    it.type("5");
    look_at(it, size.name() + "make");
    it.click("never mind");
    it.click("help");
    look_at(it, size.name() + "help");
    it.click("close");
    it.click("file");
    look_at(it, size.name() + "file_menu");
    it.click("save as");
    look_at(it, size.name() + "save_as");
    it.click("file broken.bough.json");
    it.click("save");
    look_at(it, size.name() + "replace");
    it.click("never mind");
    it.key(SDLK_o, KMOD_LCTRL);
    it.click("file broken.bough.json");
    look_at(it, size.name() + "refused");
    it.click("never mind");
    REQUIRE(it.session().problem());
    look_at(it, size.name() + "refused_on_the_page");
}

TEST_CASE("the dialogs that ask one thing are whole") {
    const Size size = GENERATE(Size{1280, 800, 1}, Size{1024, 700, 1}, Size{1280, 800, 1, es}, Size{1024, 700, 1, es});
    const SpeakingIn speaking(size.language);
    std::map<std::string, std::string> left_behind;
    {
        DrivenWindow before(size.width, size.height, size.scale);
        before.open_example();
        before.wish(SetTitle{"Owls, table 4"});
        before.frames(60);
        left_behind = before.files.contents;
    }
    DrivenWindow it(size.width, size.height, size.scale, left_behind);
    it.perform(OpenFile{example_path});
    REQUIRE(it.session().dialog() == Dialog::recover);
    look_at(it, size.name() + "recover");
    it.click("take it back");
    it.perform(Press{Action::rename_plan});
    look_at(it, size.name() + "rename");
    it.click("never mind");
    it.files.contents.erase(example_path);
    it.perform(SaveFile{example_path});
    look_at(it, size.name() + "gone");
    it.click("never mind");
    it.files.contents[example_path] = "changed meanwhile";
    it.perform(SaveFile{example_path});
    look_at(it, size.name() + "changed");
    it.click("never mind");
    it.files.full = true;
    it.perform(Leave{});
    look_at(it, size.name() + "leave");
}

TEST_CASE("the ready challenges and an empty tree are whole too") {
    const std::string scene = GENERATE("little_fair", "big_fair", "grand_fair");
    const Size size = GENERATE(Size{1280, 800, 1}, Size{1024, 700, 1}, Size{1280, 800, 1, es}, Size{1024, 700, 1, es});
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale);
    look_at(it, size.name() + "new_tree");
    std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/" + scene + ".bough.json");
    it.files.contents["/fair/" + scene + ".bough.json"] = {std::istreambuf_iterator<char>(file), {}};
    it.perform(OpenFile{"/fair/" + scene + ".bough.json"});
    REQUIRE_FALSE(it.session().problem());
    look_at(it, size.name() + scene);
    nothing_overlaps(it);
}

TEST_CASE("what is drawn wears the colours of the palette") {
    DrivenWindow it;
    it.open_example();
    const auto inside = [&](int piece) {  // beside number and marks, near the second corner
        const Hung& hung = *find_hung(it.session().plan(), {piece});
        const std::vector<Vec2> corners = corners_mm(find_piece(it.session().scene(), {piece})->shape, hung.pose);
        const Vec2 middle_mm = centroid(corners);
        return it.px(middle_mm + 0.6 * (corners[1] - middle_mm));
    };
    CHECK(it.colour_at(inside(1)) == palette::right);
    CHECK(it.colour_at(inside(2)) == palette::acute);
    CHECK(it.colour_at(inside(5)) == palette::obtuse);
    CHECK(it.colour_at(it.px({0, 200})) == palette::trunk);
    CHECK(it.colour_at(it.px({150, 225})) == palette::wood);
    CHECK(it.colour_at({5, 5}) == palette::desk);

    it.wish(Hang{{2}, {.at_mm = {-300, 250}}});
    const Vec2 there = inside(2);  // a line of the squared paper may run through it
    const std::vector<Colour> seen = it.colours_in({there.x - 3, there.y - 3, 6, 6});
    CHECK(std::count(seen.begin(), seen.end(), palette::paper) > 6);
    CHECK(std::count(seen.begin(), seen.end(), palette::acute) == 0);
}

TEST_CASE("the referee's sentence is seen, short or long") {
    DrivenWindow it;
    it.open_example();
    const auto letters = [&](Colour colour) {
        const PixelBox box = inset(it.window().layout().referee, it.window().layout().px(6));
        const std::vector<Colour> seen = it.colours_in({box.x, box.y, box.width / 2, box.height});
        return std::count(seen.begin(), seen.end(), colour);
    };
    CHECK(letters(palette::ink) > 200);
    CHECK(letters(palette::unmet) == 0);
    it.files.contents["/fair/broken.bough.json"] = "{ oops";
    it.perform(OpenFile{"/fair/broken.bough.json"});
    CHECK(letters(palette::unmet) > 200);
    const std::string far = "/fair/" + std::string(300, 'x') + "/a_plan_that_is_not_there.bough.json";
    it.perform(OpenFile{far});
    CHECK(letters(palette::unmet) > 200);
}
