// SPDX-License-Identifier: MIT
// Pieces made in every way there is, changed, copied and brought in.
#include "engine/storage/plan_file.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "tests/engine/triangle_mm.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

/// The last piece of the file.
const Piece& last(DrivenWindow& it) { return it.session().scene().pieces.back(); }
const Triangle& last_triangle(DrivenWindow& it) { return std::get<Triangle>(last(it).shape); }
std::size_t count(DrivenWindow& it) { return it.session().scene().pieces.size(); }

/// Three fields, with Tab between; the first has the keys already.
void type_three(DrivenWindow& it, const std::string& one, const std::string& two, const std::string& three) {
    it.type(one);
    it.key(SDLK_TAB);
    it.type(two);
    it.key(SDLK_TAB);
    it.type(three);
}

Scene class_with(const Step& step, Unit unit) {
    Scene scene = new_scene();
    scene.challenge.units = unit;
    scene.challenge.step = step;
    return scene;
}

void open(DrivenWindow& it, const Scene& scene) {
    it.files.contents["/fair/class.bough.json"] = write_plan(scene);
    it.perform(OpenFile{"/fair/class.bough.json"});
    REQUIRE_FALSE(it.session().problem());
}

const char* const ways[] = {"three sides",
                            "two sides and the angle between",
                            "a side and its two angles",
                            "two sides and an angle opposite one",
                            "pull its corners",
                            "ready pieces",
                            "from another file"};

}  // namespace

TEST_CASE("making: six pieces in three ways, by fields and keys") {
    DrivenWindow it;
    open(it, class_with({1, 1, Unit::mm}, Unit::cm));
    for (const char* way : {"three sides", "two sides and the angle between", "a side and its two angles"})
        for (int i = 0; i < 2; ++i) {
            it.click("make a piece");
            it.click(way);
            const std::string name = way;
            if (name == "three sides") type_three(it, i == 0 ? "8" : "6", "6", "5");
            if (name == "two sides and the angle between") type_three(it, "3", "90", i == 0 ? "4" : "3");
            if (name == "a side and its two angles") type_three(it, "60", i == 0 ? "7" : "5", "60");
            if (i == 0) it.save_picture("making " + name);
            i == 0 ? it.click("make it") : it.key(SDLK_RETURN);
            REQUIRE(it.session().dialog() == Dialog::none);
        }
    const std::vector<Piece>& pieces = it.session().scene().pieces;
    REQUIRE(pieces.size() == 6);
    const std::vector<Triangle> made{triangle_mm(80, 60, 50), triangle_mm(60, 60, 50), triangle_mm(30, 40, 50),
                                     triangle_mm(30, 30, 42), triangle_mm(70, 70, 70), triangle_mm(50, 50, 50)};
    for (std::size_t i = 0; i < made.size(); ++i) {
        CHECK(std::get<Triangle>(pieces[i].shape) == made[i]);
        CHECK(pieces[i].number == PieceNumber{static_cast<int>(i) + 1});
    }
}

TEST_CASE("making: two sides and an angle opposite one may be two triangles, and one is chosen") {
    DrivenWindow it;
    open(it, class_with({1, 1, Unit::mm}, Unit::cm));
    it.click("make a piece");
    it.click("two sides and an angle opposite one");
    type_three(it, "7", "8", "60");
    CHECK(it.shows("the first"));
    it.click("the second");
    it.save_picture("making two");
    it.click("make it");
    CHECK(last_triangle(it) == triangle_mm(70, 80, 30));
    it.click("make a piece");
    it.click("two sides and an angle opposite one");
    type_three(it, "3", "8", "60");
    CHECK_FALSE(it.shows("the first"));
    it.save_picture("making none");
    it.click("make it");
    CHECK(it.session().dialog() == Dialog::make_a_piece);
    CHECK(count(it) == 1);
}

TEST_CASE("making: a worked-out side stops at the step, unless exact lengths are asked for") {
    DrivenWindow it;
    open(it, class_with({1, 1, Unit::cm}, Unit::cm));
    it.click("make a piece");
    it.click("two sides and the angle between");
    type_three(it, "5", "90", "5");
    it.save_picture("making rounded");
    it.click("make it");
    CHECK(last_triangle(it) == triangle_mm(50, 50, 70));
    it.click("make a piece");
    it.click("two sides and the angle between");
    type_three(it, "5", "90", "5");
    it.click("exact lengths");
    it.click("make it");
    CHECK(last_triangle(it).sides[2] == length_from_mm(70.7105));
}

TEST_CASE("making: corners are pulled with the mouse, and made of a kind by one press") {
    DrivenWindow it;
    open(it, class_with({5, 1, Unit::mm}, Unit::cm));
    it.click("make a piece");
    it.click("pull its corners");
    it.save_picture("making pulled before");
    const Vec2 corner = middle(it.place("corner 3"));
    it.press(corner);
    it.drag_on(corner + Vec2{90, 40});
    it.save_picture("making pulled");
    it.release();
    CHECK(distance(middle(it.place("corner 3")), corner + Vec2{90, 40}) < 20);  // to the step of 5 mm
    it.click("make it right-angled");
    it.save_picture("making pulled right");
    it.click("make it");
    for (const Length side : last_triangle(it).sides) CHECK(side.half_um % 10000 == 0);
    CHECK(it.report(1).measures.kinds->by_angles == Kind::right);

    it.click("make a piece");
    it.click("pull its corners");
    it.click("make two sides equal");
    it.click("make it");
    CHECK(it.report(2).measures.kinds->by_sides == Kind::isosceles);
    it.click("make a piece");
    it.click("pull its corners");
    it.click("make all equal");
    it.click("make it");
    CHECK(it.report(3).measures.kinds->by_sides == Kind::equilateral);
}

TEST_CASE("making: a corner is moved by buttons as well") {
    DrivenWindow it;
    open(it, class_with({5, 1, Unit::mm}, Unit::cm));
    it.click("make a piece");
    it.click("pull its corners");
    it.click("corner 1");
    const Vec2 before = middle(it.place("corner 1"));
    it.click("corner left");
    CHECK(middle(it.place("corner 1")).x < before.x - 5);
    it.click("corner right");
    CHECK(distance(middle(it.place("corner 1")), before) < 1);
}

TEST_CASE("making: with keys alone, a corner is chosen and pulled, and the piece made, changed and thrown away") {
    DrivenWindow it;
    open(it, class_with({5, 1, Unit::mm}, Unit::cm));
    it.key(SDLK_a);
    REQUIRE(it.session().dialog() == Dialog::make_a_piece);
    it.tab_to("pull its corners");
    it.key(SDLK_RETURN);
    it.tab_to("corner 2");
    const Vec2 before = middle(it.place("corner 2"));
    for (int i = 0; i < 3; ++i) it.key(SDLK_RIGHT);
    CHECK(middle(it.place("corner 2")).x > before.x + 20);
    it.save_picture("making by keys");
    it.tab_to("make two sides equal");
    it.key(SDLK_RETURN);
    it.tab_to("make it");
    it.key(SDLK_RETURN);
    REQUIRE(count(it) == 1);
    CHECK(it.report(1).measures.kinds->by_sides == Kind::isosceles);

    it.key(SDLK_h);
    REQUIRE(it.session().dialog() == Dialog::change_piece);
    it.type("9");  // the whole first side is taken, so this is all of it
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::none);
    CHECK(last_triangle(it).sides[0] == length_from_mm(90));
    CHECK(last(it).number == PieceNumber{1});
    it.key(SDLK_u);
    CHECK(count(it) == 2);
    it.key(SDLK_DELETE);
    CHECK(count(it) == 1);
    it.key(SDLK_a);
    for (const char* side : {"side 1", "side 2", "side 3"}) {
        it.tab_to(side);
        it.type("5");
    }
    it.key(SDLK_RETURN);
    CHECK(last(it).number == PieceNumber{3});  // a number is never used twice
}

TEST_CASE("making: ready pieces go into the envelope, one a press") {
    DrivenWindow it;
    open(it, class_with({1, 1, Unit::cm}, Unit::cm));
    it.click("make a piece");
    it.click("ready pieces");
    it.click("ready equilateral acute middle");
    it.click("ready equilateral acute middle");
    it.click("ready isosceles acute large");
    it.save_picture("making ready");
    CHECK(it.session().dialog() == Dialog::make_a_piece);
    it.tab_to("ready scalene obtuse small");  // scrolls there
    it.save_picture("making ready end");
    it.key(SDLK_RETURN);
    it.click("close");
    REQUIRE(count(it) == 4);
    CHECK(std::get<Triangle>(it.session().scene().pieces[1].shape) == triangle_mm(80, 80, 80));
    CHECK(it.report(4).measures.kinds->by_angles == Kind::obtuse);
    CHECK(it.shows("envelope piece 4"));
}

TEST_CASE("making: pieces of another file are ticked and brought in, and taken back by one undo") {
    DrivenWindow it;
    std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/fair_example.bough.json");
    it.files.contents[example_path] = {std::istreambuf_iterator<char>(file), {}};
    open(it, class_with({1, 1, Unit::mm}, Unit::cm));
    it.click("make a piece");
    it.click("from another file");
    it.save_picture("making file list");
    it.click("file fair_example.bough.json");
    it.click("bring in piece 2");
    it.click("bring in piece 4");
    it.click("bring in piece 2");
    it.click("bring in piece 1");
    it.save_picture("making file pieces");
    it.click("bring them in");
    REQUIRE(count(it) == 2);
    CHECK(last_triangle(it) != triangle_mm(0, 0, 0));
    CHECK(last(it).number == PieceNumber{2});
    it.key(SDLK_z, KMOD_CTRL);
    CHECK(count(it) == 0);
    it.click("make a piece");
    it.click("from another file");
    it.click("file fair_example.bough.json");
    it.click("tick all");
    it.click("another file");
    it.click("file fair_example.bough.json");
    it.click("tick all");
    it.click("bring them in");
    CHECK(count(it) > 10);
}

TEST_CASE("making: a piece is changed where it hangs, and goes on hanging") {
    DrivenWindow it;
    it.open_example();
    it.click(it.middle_of(1));
    REQUIRE(it.session().chosen_piece() == PieceNumber{1});
    it.save_picture("making strip hung");
    it.click_in_strip("change");
    CHECK(it.session().dialog() == Dialog::change_piece);
    CHECK_FALSE(it.shows("ready pieces"));
    it.click("pull its corners");
    it.save_picture("making change");
    it.click("make two sides equal");
    it.click("change it");
    CHECK(it.report(1).measures.kinds->by_sides == Kind::isosceles);
    CHECK(it.report(1).hangs_from);
    const std::size_t before = count(it);
    it.click_in_strip("copy the piece");
    CHECK(count(it) == before + 1);
    it.click_in_strip("throw away");
    CHECK(count(it) == before);
}

TEST_CASE("making: in a narrow window the strip keeps everything within reach") {
    DrivenWindow it(1024, 700);
    it.open_example();
    it.click(it.middle_of(1));
    it.save_picture("making strip 1024");
    const std::size_t before = count(it);
    it.click("more");
    it.save_picture("making strip 1024 more");
    it.click_in_strip("mirrored copy");
    CHECK(count(it) == before + 1);
}

TEST_CASE("making: kinds and lengths that are kept back are kept back while a piece is made") {
    DrivenWindow it;
    Scene scene = class_with({1, 1, Unit::mm}, Unit::cm);
    scene.challenge.shown.kinds = Shows::after_an_answer;
    scene.challenge.shown.lengths = Shows::after_the_lesson;
    open(it, scene);
    const auto yellow = [&](const std::string& label) {
        const std::vector<Colour> colours = it.colours_in(it.place(label));
        return std::count(colours.begin(), colours.end(), palette::right) > 0;
    };
    it.click("make a piece");
    it.click("ready pieces");
    CHECK_FALSE(yellow("ready isosceles right small"));
    it.save_picture("making kept back ready");
    it.click("pull its corners");
    it.save_picture("making kept back pulled");
    it.click("never mind");
    scene.lesson.over = true;
    open(it, scene);
    it.click("make a piece");
    it.click("ready pieces");
    CHECK(yellow("ready isosceles right small"));
}

TEST_CASE("making: every way, in both languages, in three sizes, says all its words") {
    struct Size {
        int width;
        int height;
        double scale;
        const char* name;
    };
    for (const bool spanish : {false, true})
        for (const Size& size : {Size{1280, 800, 1, "1280"}, Size{2560, 1600, 2, "2560"}, Size{1024, 700, 1, "1024"}}) {
            const Speaking language(spanish ? Language::spanish : Language::english);
            DrivenWindow it(size.width, size.height, size.scale);
            open(it, class_with({5, 1, Unit::mm}, Unit::cm));
            it.click("make a piece");
            for (const char* way : ways) {
                it.click(way);
                if (std::string(way) == "two sides and an angle opposite one") type_three(it, "7", "8", "60");
                if (std::string(way) == "a side and its two angles") type_three(it, "44", "8", "57");
                it.save_picture(std::string("making_") + size.name + (spanish ? "_es_" : "_en_") + way);
                INFO(way << " " << size.name);
                for (const std::string& words : it.window().widgets().shortened()) {
                    INFO(words);
                    CHECK(words.empty());
                }
            }
        }
}
