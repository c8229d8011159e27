// SPDX-License-Identifier: MIT
// Making pieces, and what the picture cards and the referee say.
#include "engine/storage/plan_file.h"
#include "gui/window/picture_cards.h"
#include "gui/window/pointed_pieces.h"
#include "gui/window/referee_panel.h"
#include "tests/window/driven_window.h"

using namespace boughwork;

TEST_CASE("a piece is made of three typed sides and waits in the envelope") {
    DrivenWindow it;
    it.open_example();
    it.click("make a piece");
    it.type("7.5");
    it.click("side 2");
    it.type("60 mm");
    it.click("side 3");
    it.type("4,5");
    it.save_picture("pieces_make");
    it.click("make it");
    REQUIRE(it.session().dialog() == Dialog::none);
    const Piece& made = it.session().scene().pieces.back();
    CHECK(std::get<Triangle>(made.shape) == Triangle{{length_from_mm(75), length_from_mm(60), length_from_mm(45)}});
    CHECK(it.shows("envelope piece " + std::to_string(made.number.value)));
    REQUIRE(it.report(made.number.value).measures.kinds);
    CHECK(it.report(made.number.value).measures.kinds->by_angles == Kind::right);
}

TEST_CASE("sides that make no triangle are refused while they are typed") {
    DrivenWindow it;
    it.open_example();
    const std::size_t pieces = it.session().scene().pieces.size();
    it.click("make a piece");
    it.type("9");
    it.key(SDLK_TAB);
    it.type("4");
    it.key(SDLK_TAB);
    it.type("5");
    it.save_picture("pieces_impossible");
    it.click("make it");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::make_a_piece);
    CHECK(it.session().scene().pieces.size() == pieces);
    it.click("never mind");
    CHECK(it.session().dialog() == Dialog::none);
    CHECK(it.session().scene().pieces.size() == pieces);
}

TEST_CASE("inches are typed as fractions") {
    DrivenWindow it;
    Scene inches = new_scene();
    inches.challenge.units = Unit::in;
    inches.challenge.step = {1, 4, Unit::in};
    it.files.contents["/fair/inches.bough.json"] = write_plan(inches);
    it.perform(OpenFile{"/fair/inches.bough.json"});
    it.click("make a piece");
    it.type("2 1/2");
    it.key(SDLK_TAB);
    it.type("2");
    it.key(SDLK_TAB);
    it.type("1.5");
    it.save_picture("pieces_inches");
    it.click("make it");
    REQUIRE(it.session().scene().pieces.size() == 1);
    CHECK(std::get<Triangle>(it.session().scene().pieces[0].shape) == Triangle{{{{127000}, {101600}, {76200}}}});
}

TEST_CASE("there is a card for each family of rules and for each line of the challenge") {
    DrivenWindow it;
    it.open_example();
    const Report& report = it.session().report();
    const std::vector<PictureCard> cards = picture_cards(it.session().scene(), report);
    CHECK(cards.size() == 5 + report.challenge.size());
    for (const PictureCard& card : cards) {
        INFO(card.label);
        CHECK(it.shows("card " + card.label));
    }
}

TEST_CASE("while kinds are kept back no card tells how many of a kind there are, nor does the referee") {
    DrivenWindow it;
    it.open_example();
    Challenge challenge = it.session().scene().challenge;
    challenge.shown.kinds = Shows::after_the_lesson;
    it.wish(SetChallenge{challenge});
    int kept_back = 0;
    for (const PictureCard& card : picture_cards(it.session().scene(), it.session().report())) {
        if (!card.kind) continue;
        CHECK_FALSE(card.met);
        CHECK(card.says == "find out");
        ++kept_back;
    }
    CHECK(kept_back == 3);
    it.wish(TakeDown{{{1}, {9}}});  // both right triangles
    CHECK(referee_words(it.session()).find("right") == std::string::npos);
    challenge.shown.kinds = Shows::always;
    it.wish(SetChallenge{challenge});
    CHECK(referee_words(it.session()).find("right") != std::string::npos);
}

TEST_CASE("a card of a line shows which pieces it is about, until it is pressed again") {
    DrivenWindow it;
    it.open_example();
    it.click("card right");
    REQUIRE(it.session().pointed_line());
    CHECK(referee_words(it.session()).find("At least 2 right") == 0);
    it.save_picture("pieces_pointed_at");
    it.click("card right");
    CHECK_FALSE(it.session().pointed_line());
}

TEST_CASE("the pieces that a card is about are those that count for its line") {
    DrivenWindow it;
    it.open_example();
    const auto pieces_of = [&](const std::string& card) {
        it.click("card " + card);
        std::vector<int> numbers;
        for (const PieceNumber piece : pointed_pieces(it.session())) numbers.push_back(piece.value);
        return numbers;
    };
    // Of the sides in the example: 100, 80, 60 and 80, 100, 60 are right; 110, 65, 65 and 110, 150, 75 and
    // 100, 60, 60 obtuse; pieces 1 and 9 are alike.
    CHECK(pieces_of("right") == std::vector<int>{1, 9});
    CHECK(pieces_of("obtuse") == std::vector<int>{3, 5, 10});
    CHECK(pieces_of("isosceles share") == std::vector<int>{2, 3, 7, 10, 11});
    CHECK(pieces_of("no two alike") == std::vector<int>{1, 2, 3, 4, 5, 6, 7, 10, 11});
    CHECK(pieces_of("pieces") == std::vector<int>{1, 2, 3, 4, 5, 6, 7, 9, 10, 11});
    CHECK(pieces_of("sheets").empty());
    it.wish(Hang{{9}, {.at_mm = {-300, 250}}});
    CHECK(pieces_of("right") == std::vector<int>{1});
}

TEST_CASE("a card of a family leads to its first finding, and counts the pieces that keep it") {
    DrivenWindow it;
    it.open_example();
    // Piece 4 into the air, piece 5 onto the ground.
    it.wish(Hang{{4}, {.at_mm = {-300, 250}}});
    it.wish(Hang{{5}, {.at_mm = {150, 60}}});
    const std::vector<PictureCard> cards = picture_cards(it.session().scene(), it.session().report());
    CHECK(cards[0].label == "whole side");
    CHECK(cards[0].met == false);
    CHECK(cards[0].says == "8 of 10");
    it.click("card off the ground");
    REQUIRE(it.session().finding());
    CHECK(it.session().finding()->rule == Rule::ground);
    it.save_picture("pieces_two_findings");
    const std::size_t before = it.session().finding_index();
    it.click("next");
    CHECK(it.session().finding_index() != before);
}
