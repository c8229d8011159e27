// SPDX-License-Identifier: MIT
// The data table page: pupils measure, answer and sort; the table goes out and comes back as CSV.
#include <SDL_clipboard.h>

#include <fstream>
#include <iterator>

#include "engine/storage/csv.h"
#include "engine/words/say.h"
#include "rules/hand_measured.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

void keep_back(DrivenWindow& it, Shows kinds, Shows others) {
    Challenge challenge = it.session().scene().challenge;
    challenge.shown = {.lengths = others, .kinds = kinds, .sums = others, .points = others};
    it.wish(SetChallenge{challenge});
}

void open_scene(DrivenWindow& it, const std::string& name) {
    std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/" + name + ".bough.json");
    it.files.contents["/fair/" + name + ".bough.json"] = {std::istreambuf_iterator<char>(file), {}};
    it.perform(OpenFile{"/fair/" + name + ".bough.json"});
}

const Piece& piece(DrivenWindow& it, int number) { return *find_piece(it.session().scene(), {number}); }

/// As a pupil does: into the field, the number, Enter.
void measure(DrivenWindow& it, int number, int side, const std::string& typed) {
    it.click("piece " + std::to_string(number) + " by hand " + std::to_string(side));
    it.type(typed);
    it.key(SDLK_RETURN);
}

std::vector<int> seen_order(DrivenWindow& it) {
    std::vector<std::pair<double, int>> places;
    for (const Piece& made : it.session().scene().pieces) {
        const int number = made.number.value;
        places.emplace_back(it.place("piece " + std::to_string(number) + " by hand 1").y, number);
    }
    std::sort(places.begin(), places.end());
    std::vector<int> order;
    for (const auto& [y, number] : places) order.push_back(number);
    return order;
}

/// "who" is not read as one with the heading before it.
void heading_of_signs_stands_alone(DrivenWindow& it) {
    const std::vector<Written>& written = it.window().widgets().lettering().written();
    const auto who =
        std::find_if(written.begin(), written.end(), [](const Written& w) { return w.words == say("who"); });
    REQUIRE(who != written.end());
    for (const Written& other : written) {
        const bool beside = other.box.y < who->box.y + who->box.height && who->box.y < other.box.y + other.box.height;
        if (!beside || other.box.x >= who->box.x) continue;
        INFO(other.words);
        CHECK(other.box.x + other.box.width + it.window().widgets().px(8) <= who->box.x);
    }
}

}  // namespace

TEST_CASE("the data table is one press or one key away, with every piece, and so is the way back") {
    DrivenWindow it;
    it.open_example();
    it.click("Data table");
    CHECK(it.session().page() == Page::table);
    for (const Piece& made : it.session().scene().pieces)
        CHECK(it.shows("piece " + std::to_string(made.number.value) + " by hand 1"));
    it.save_picture("table_example");
    it.key(SDLK_1);
    CHECK(it.session().page() == Page::tree);
    it.key(SDLK_2);
    CHECK(it.session().page() == Page::table);
}

TEST_CASE("a kind that is kept back is answered, judged kindly and then shown") {
    DrivenWindow it;
    it.open_example();
    keep_back(it, Shows::after_an_answer, Shows::always);
    it.key(SDLK_2);
    it.save_picture("table_kinds_kept_back");

    it.click("piece 4 by sides");  // 8 8 8
    REQUIRE(it.session().dialog() == Dialog::answer);
    it.click("answer isosceles");
    CHECK(piece(it, 4).answers.by_sides == Kind::isosceles);
    it.save_picture("table_answer_nearly");
    it.click("answer equilateral");
    CHECK(piece(it, 4).answers.by_sides == Kind::equilateral);
    it.click("close");
    CHECK(it.shows("piece 4 by sides"));  // the other kind is still to be said

    it.click("piece 4 by angles");
    it.click("answer right");
    it.save_picture("table_answer_not_yet");
    it.click("close");
    CHECK_FALSE(it.shows("piece 4 by sides"));
    CHECK_FALSE(it.shows("piece 4 by angles"));
    CHECK(it.shows("piece 5 by sides"));

    it.click("answers");
    REQUIRE(it.session().dialog() == Dialog::answers);
    it.save_picture("table_answers");
    it.key(SDLK_ESCAPE);
    CHECK(it.session().dialog() == Dialog::none);
    it.save_picture("table_answered");
}

TEST_CASE("perimeter and points are answered by a typed number") {
    DrivenWindow it;
    it.open_example();
    keep_back(it, Shows::always, Shows::after_an_answer);
    it.key(SDLK_2);
    it.click("piece 1 perimeter");
    it.type("abc");
    it.key(SDLK_RETURN);
    CHECK_FALSE(piece(it, 1).answers.perimeter);
    it.save_picture("table_answer_no_number");
    it.type("24");  // what was wrong is chosen, and written over
    it.click("answer it");
    CHECK(piece(it, 1).answers.perimeter == length_from_mm(240));
    it.save_picture("table_answer_perimeter");
    it.key(SDLK_ESCAPE);
    CHECK_FALSE(it.shows("piece 1 perimeter"));
    it.click("piece 1 points");
    it.type("20");
    it.key(SDLK_RETURN);
    CHECK(piece(it, 1).answers.points == 20.0);
    it.key(SDLK_ESCAPE);
    CHECK(it.session().dialog() == Dialog::none);
}

TEST_CASE("sides are measured by hand, one slip is pointed at, and a sign says who it was") {
    DrivenWindow it;
    it.open_example();
    keep_back(it, Shows::always, Shows::after_an_answer);
    it.key(SDLK_2);
    it.click("piece 1 measured by");
    it.click("piece 1 measured by");
    CHECK(piece(it, 1).by_hand.by == "moon");
    measure(it, 1, 1, "10");
    measure(it, 1, 2, "9");
    measure(it, 1, 3, "6");
    CHECK(piece(it, 1).by_hand.sides ==
          std::vector<std::optional<Length>>{length_from_mm(100), length_from_mm(90), length_from_mm(60)});
    CHECK(readings_of(piece(it, 1), it.session().scene().challenge)[1] == Reading::began_at_one);
    it.save_picture("table_slip");
    measure(it, 1, 2, "8");
    CHECK(readings_of(piece(it, 1), it.session().scene().challenge)[1] == Reading::fits);

    measure(it, 2, 1, "nine");
    CHECK(piece(it, 2).by_hand.sides.empty());
    it.save_picture("table_no_length");
    // Another press leaves the field, and what was typed.
    it.click("piece 2 by hand 1");
    it.key(SDLK_a, KMOD_LCTRL);
    it.type("9");
    it.click("piece 2 by hand 3");
    REQUIRE(piece(it, 2).by_hand.sides.size() == 3);
    CHECK(piece(it, 2).by_hand.sides[0] == length_from_mm(90));
    CHECK(piece(it, 2).by_hand.by == "moon");
    it.key(SDLK_ESCAPE);

    it.click("undo");
    CHECK(piece(it, 2).by_hand.sides.empty());
}

TEST_CASE("a press on a heading sorts, another one turns it round") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_2);
    it.click("sort by perimeter");
    const std::vector<int> up = seen_order(it);
    std::vector<std::int64_t> perimeters;
    for (const int number : up) perimeters.push_back(it.report(number).measures.perimeter_in_steps);
    CHECK(std::is_sorted(perimeters.begin(), perimeters.end()));
    it.click("sort by perimeter");
    it.save_picture("table_sorted");
    CHECK(seen_order(it).front() == up.back());
    CHECK(it.session().table_order() == TableOrder{Column::perimeter, true});
}

TEST_CASE("with keys alone one sorts, goes from cell to cell, measures and answers") {
    DrivenWindow it;
    it.open_example();
    keep_back(it, Shows::after_an_answer, Shows::after_an_answer);
    it.key(SDLK_2);
    it.tab_to("sort by number");
    it.key(SDLK_RIGHT);
    CHECK(it.window().widgets().focused() == "sort by sides");
    it.key(SDLK_RETURN);
    CHECK(it.session().table_order().by == Column::sides);
    it.key(SDLK_LEFT);
    it.key(SDLK_RETURN);
    it.key(SDLK_DOWN);
    CHECK(it.window().widgets().focused() == "piece 1 by hand 1");
    it.type("10");
    it.key(SDLK_RETURN);
    CHECK(it.window().widgets().focused() == "piece 1 by hand 2");
    it.type("8");
    it.key(SDLK_DOWN);
    CHECK(piece(it, 1).by_hand.sides[1] == length_from_mm(80));
    CHECK(it.window().widgets().focused() == "piece 2 by hand 2");
    it.save_picture("table_keys");
    it.key(SDLK_TAB);
    it.key(SDLK_TAB);
    CHECK(it.window().widgets().focused() == "piece 2 measured by");
    it.key(SDLK_RETURN);
    CHECK(piece(it, 2).by_hand.by == "star");
    it.key(SDLK_RIGHT);
    CHECK(it.window().widgets().focused() == "piece 2 by sides");
    it.key(SDLK_RETURN);
    REQUIRE(it.session().dialog() == Dialog::answer);
    it.tab_to("answer isosceles");
    it.key(SDLK_SPACE);
    it.key(SDLK_ESCAPE);
    CHECK(piece(it, 2).answers.by_sides == Kind::isosceles);
    CHECK(it.window().widgets().focused() == "piece 2 by sides");

    // Down to the last piece, which comes into view, and can be written into at once.
    for (int i = 0; i < 13; ++i) it.key(SDLK_DOWN);
    CHECK(it.window().widgets().focused() == "piece 15 by sides");
    it.key(SDLK_LEFT);
    it.key(SDLK_LEFT);
    CHECK(it.window().widgets().focused() == "piece 15 by hand 3");
    it.type("5");
    it.key(SDLK_UP);
    REQUIRE(piece(it, 15).by_hand.sides.size() == 3);
    CHECK(piece(it, 15).by_hand.sides[2] == length_from_mm(50));
    it.save_picture("table_keys_at_the_end");
}

TEST_CASE("Tab and Shift Tab reach the last field from out of sight, and it takes letters at once") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_2);
    it.tab_to("piece 15 by hand 2");
    it.type("8");
    it.key(SDLK_TAB);
    CHECK(it.session().page() == Page::table);  // no key of the digits went astray
    REQUIRE(piece(it, 15).by_hand.sides.size() == 3);
    CHECK(piece(it, 15).by_hand.sides[1] == length_from_mm(80));
}

TEST_CASE("the table is saved as CSV, filled in elsewhere and taken in again as one step") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_2);
    it.click("save as CSV");
    REQUIRE(it.session().dialog() == Dialog::save_table);
    it.save_picture("table_save");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::none);
    const std::string path = "/fair/wren_table_the_fair_tree.csv";
    REQUIRE(it.files.contents.count(path) == 1);
    CHECK(it.files.contents[path] == it.session().table_csv());

    it.click("save as CSV");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::replace_table);
    it.save_picture("table_replace");
    it.click("never mind");

    const auto rows = read_csv(it.files.contents[path]);
    REQUIRE(rows);
    std::vector<CsvRow> filled = *rows;
    const auto column = [&](const std::string& name) {
        return static_cast<std::size_t>(std::find(filled[0].begin(), filled[0].end(), name) - filled[0].begin());
    };
    filled[4][column("by hand 2")] = "8";
    filled[4][column("measured by")] = "leaf";
    filled[5][column("note")] = "=torn";
    filled[6][column("by hand 1")] = "long";
    CsvRow fresh(filled[0].size());
    fresh[0] = "40";
    fresh[1] = "5";
    fresh[2] = "5";
    fresh[3] = "6";
    filled.push_back(fresh);
    it.files.contents["/fair/back.csv"] = csv_text(filled);
    const Scene before = it.session().scene();
    it.click("take in a CSV");
    REQUIRE(it.session().dialog() == Dialog::take_in_table);
    it.click("file back.csv");
    REQUIRE(it.session().dialog() == Dialog::table_taken_in);
    it.save_picture("table_taken_in");
    it.click("close");
    CHECK(piece(it, 4).by_hand.sides[1] == length_from_mm(80));
    CHECK(piece(it, 4).by_hand.by == "leaf");
    CHECK(piece(it, 5).note == "=torn");
    CHECK(piece(it, 6).by_hand.sides.empty());
    CHECK(it.session().scene().pieces.size() == before.pieces.size() + 1);
    it.click("undo");
    CHECK(it.session().scene() == before);

    it.key(SDLK_c, KMOD_LCTRL);
    char* copied = SDL_GetClipboardText();
    CHECK(std::string(copied) == it.session().table_csv());
    SDL_free(copied);
    it.save_picture("table_copied");
}

TEST_CASE("a finger pulls the table along, and the wheel turns it") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_2);
    const double before = it.place("piece 1 by hand 1").y;
    const PixelBox rows = it.place("table rows");
    const Vec2 on_words{it.place("sort by area").x + 10, rows.y + 200};
    it.drag(on_words, on_words - Vec2{0, 100});
    const double pulled = it.place("piece 1 by hand 1").y;
    CHECK(pulled < before - 60);
    it.move(on_words);
    it.wheel(3);
    CHECK(it.place("piece 1 by hand 1").y > pulled);
}

TEST_CASE("the table is legible at every size, in both languages, told and kept back") {
    for (const Language language : {Language::english, Language::spanish}) {
        const Speaking speaking(language);
        const std::string end = language == Language::english ? "" : "_spanish";
        for (const auto& [width, height, scale] :
             {std::tuple{1280, 800, 1.0}, std::tuple{2560, 1600, 2.0}, std::tuple{1024, 700, 1.0}}) {
            DrivenWindow it(width, height, scale);
            it.open_example();
            it.wish(SetHandMeasured{
                {1}, {.sides = {length_from_mm(100), length_from_mm(90), length_from_mm(60)}, .by = "star"}});
            it.wish(Hang{{8}, {.at_mm = {330, 300}}});
            it.key(SDLK_2);
            it.save_picture("table_told_" + std::to_string(width) + end);
            open_scene(it, "grand_fair");
            keep_back(it, Shows::after_an_answer, Shows::after_an_answer);
            it.key(SDLK_2);
            it.save_picture("table_kept_back_" + std::to_string(width) + end);
            CHECK(it.window().widgets().shortened().empty());
            heading_of_signs_stands_alone(it);
            for (const auto& [label, box] : it.window().places()) {
                if (label.rfind("piece ", 0) != 0) continue;
                INFO(label);
                CHECK(box.width >= 24 * scale);
                CHECK(box.height >= 24 * scale);
            }
        }
    }
}
