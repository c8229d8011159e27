// SPDX-License-Identifier: MIT
#include "gui/session/table_reader.h"

#include <catch2/catch.hpp>

#include "engine/storage/csv.h"
#include "gui/session/table_rows.h"
#include "rules/check.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

/// Piece 1 is 80, 60, 50 mm; the challenge is in centimetres.
struct Reading {
    FairTable table;

    TakenIn read(const std::string& csv) {
        Result<TakenIn> taken = taken_in(table.session.scene(), csv);
        if (!taken) FAIL(in_words(taken.problem()));
        return std::move(taken).value();
    }
    Problem refusal(const std::string& csv) {
        const Result<TakenIn> taken = taken_in(table.session.scene(), csv);
        REQUIRE_FALSE(taken);
        return taken.problem();
    }
    /// Taken in by the session, from a file.
    void take(const std::string& csv) {
        table.files.contents["/fair/a.csv"] = csv;
        table.session.perform(TakeInTable{"/fair/a.csv"});
    }
    const Piece& piece(int number) { return *find_piece(table.session.scene(), {number}); }
};

}  // namespace

TEST_CASE("Lengths by hand, who measured and a note are taken by the piece's number") {
    Reading it;
    it.take("number,by hand 1,by hand 2,by hand 3,measured by,note\r\n1,8,\"6,1\",50 mm,star,torn\r\n");
    CHECK(it.piece(1).by_hand.sides ==
          std::vector<std::optional<Length>>{length_from_mm(80), length_from_mm(61), length_from_mm(50)});
    CHECK(it.piece(1).by_hand.by == "star");
    CHECK(it.piece(1).note == "torn");
    CHECK(it.table.session.dialog() == Dialog::table_taken_in);
    CHECK(it.table.session.taken_in().taken.size() == 2);
    CHECK(it.table.session.taken_in().left.empty());
}

TEST_CASE("A table is taken in as one step, which undo takes back") {
    Reading it;
    const Scene before = it.table.session.scene();
    it.take("number,note,side 1,side 2,side 3\n1,one,,,\n2,two,4,4,5\n");
    CHECK(it.table.session.scene().pieces.size() == 2);
    it.table.press(Action::undo);
    CHECK(it.table.session.scene() == before);
}

TEST_CASE("An empty cell, and a column that is not there, change nothing") {
    Reading it;
    it.take("number,by hand 1,by hand 2,by hand 3,measured by,note\n1,8,,,moon,torn\n");
    const Scene before = it.table.session.scene();
    CHECK(it.read("number,by hand 1,by hand 2,by hand 3,measured by,note\n1,,,,,\n").edits.empty());
    CHECK(it.read("number\n1\n").edits.empty());
    CHECK(it.read("number,by hand 2\n1,6\n").edits.size() == 1);
    CHECK(it.table.session.scene() == before);
}

TEST_CASE("A table that was saved brings nothing new, whatever is written in it") {
    Reading it;
    it.table.wish(SetNote{{1}, "=SUM(A1), \"red\"\r\n'=x"});
    it.table.wish(
        SetHandMeasured{{1}, {.sides = {length_from_mm(80.05), std::nullopt, length_from_mm(50)}, .by = "sun"}});
    it.table.add(44, 44, 86);
    Challenge coarse = it.table.session.scene().challenge;
    coarse.step = {.numerator = 10, .denominator = 1, .unit = Unit::mm};  // then the table adds a note of its own
    it.table.wish(SetChallenge{coarse});
    const TakenIn taken = it.read(it.table.session.table_csv());
    CHECK(taken.edits.empty());
    CHECK(taken.left.empty());

    it.table.wish(SetNote{{2}, "mine"});
    const std::string csv = it.table.session.table_csv();
    it.table.press(Action::undo);
    const TakenIn note = it.read(csv);
    REQUIRE(note.edits.size() == 1);
    CHECK(std::get<SetNote>(note.edits[0]).note == "mine");

    // A note of a person's own that is longer than the table's, and ends otherwise, is theirs from end to end.
    const std::string longer = "this one was cut twice since the first was torn, by the window";
    const TakenIn own = it.read("number,note\n2,\"" + longer + "\"\n");
    REQUIRE(own.edits.size() == 1);
    CHECK(std::get<SetNote>(own.edits[0]).note == longer);
}

TEST_CASE("Three sides under a number that is not there make a piece, which gets the next number") {
    Reading it;
    const TakenIn taken = it.read("number,side 1,side 2,side 3,by hand 1\n2,3,4,5,3\n40,30,40,50,\n");
    REQUIRE(taken.edits.size() == 3);
    CHECK(std::get<Triangle>(std::get<AddPiece>(taken.edits[0]).shape) == triangle_mm(30, 40, 50));
    CHECK(std::get<SetHandMeasured>(taken.edits[1]).piece == PieceNumber{2});
    CHECK(taken.taken.size() == 3);
    CHECK(taken.taken.back().find("40") != std::string::npos);
    CHECK(taken.taken.back().find("3") != std::string::npos);
}

TEST_CASE("What is not taken is said, row by row, and the rest is taken") {
    Reading it;
    const TakenIn taken = it.read(
        "number,side 1,side 2,side 3,side 4,by hand 1,by hand 4,measured by\n"
        "1,8,6,5,,long,,\n"     // no length
        "1,,,,,7,,\n"           // a second row of the same piece
        "x,,,,,7,,\n"           // no number
        "7,3,4,,,,,\n"          // two sides only
        "8,1,2,3,,,,\n"         // no triangle (Euclid I.20)
        "9,3,4,5,6,,,\n"        // four sides
        "-1,,,,,,,\n"           // below zero
        "99999999999,,,,,,,\n"  // past every number
        "10,4,4,4,,4,4,Anna\n"  // made; has no fourth side; a name
    );
    CHECK(taken.left.size() == 10);
    REQUIRE(taken.edits.size() == 2);
    CHECK(std::holds_alternative<AddPiece>(taken.edits[0]));
    CHECK(std::get<SetHandMeasured>(taken.edits[1]).by_hand.by.empty());
    CHECK(taken.left.front().rfind("Row 2:", 0) == 0);
}

TEST_CASE("Planned sides that differ are pointed at and stay") {
    Reading it;
    const TakenIn other = it.read("number,side 1,side 2,side 3\n1,9,6,5\n");
    CHECK(other.edits.empty());
    CHECK(other.left.size() == 1);
    CHECK(it.read("number,unit,side 1,side 2,side 3\n1,mm,80,60,50\n").left.empty());
}

TEST_CASE("What is no table of pieces is refused, and says what to do") {
    Reading it;
    CHECK_FALSE(it.refusal("").to_do.empty());
    CHECK_FALSE(it.refusal("a,b\n1,2\n").to_do.empty());
    CHECK_FALSE(it.refusal("number,\"note\n1,x\n").to_do.empty());
    std::string long_table = "number,note\n";
    for (int i = 0; i < 3000; ++i) long_table += "1,x\n";
    CHECK_FALSE(it.refusal(long_table).to_do.empty());

    const Scene before = it.table.session.scene();
    it.take("\xFF\xFE");
    CHECK(it.table.session.problem());
    it.table.session.perform(TakeInTable{"/fair/not_there.csv"});
    CHECK(it.table.session.problem());
    CHECK(it.table.session.scene() == before);
}

TEST_CASE("The table is saved as a file that ends in .csv, and asks before it replaces another") {
    Reading it;
    it.table.session.perform(SaveTable{"/fair/table"});
    REQUIRE(it.table.files.contents.count("/fair/table.csv") == 1);
    const std::string saved = it.table.files.contents["/fair/table.csv"];
    CHECK(saved == csv_text(table_rows(it.table.session.scene(), it.table.session.plan(), it.table.session.report())));
    it.table.add(30, 40, 50);
    it.table.session.perform(SaveTable{"/fair/table"});
    CHECK(it.table.session.dialog() == Dialog::replace_table);
    CHECK(it.table.files.contents["/fair/table.csv"] == saved);
    it.table.session.perform(SaveTable{it.table.session.replace_path(), true});
    CHECK(it.table.files.contents["/fair/table.csv"] == it.table.session.table_csv());
    CHECK(it.table.session.dialog() == Dialog::none);
    it.table.files.full = true;
    it.table.session.perform(SaveTable{"/fair/other.csv"});
    CHECK(it.table.session.problem());
}

TEST_CASE("What is copied is the table with nothing that is kept back") {
    Reading it;
    it.table.press(Action::table_page);
    it.table.press(Action::copy_table);
    REQUIRE(it.table.session.to_clipboard());
    CHECK(it.table.session.to_clipboard()->find("scalene") != std::string::npos);
    Challenge challenge = it.table.session.scene().challenge;
    challenge.shown.kinds = Shows::after_an_answer;
    it.table.wish(SetChallenge{challenge});
    CHECK_FALSE(it.table.session.to_clipboard());
    it.table.press(Action::copy_table);
    CHECK(it.table.session.to_clipboard()->find("scalene") == std::string::npos);
}

TEST_CASE("Only what there is can be asked about") {
    Reading it;
    it.table.session.perform(Ask{{1}, Asked::by_sides});
    CHECK(it.table.session.dialog() == Dialog::answer);
    it.table.session.perform(CloseDialog{});
    it.table.session.perform(Ask{{1}, Asked::points});  // it waits in the envelope
    it.table.session.perform(Ask{{7}, Asked::by_sides});
    CHECK(it.table.session.dialog() == Dialog::none);
}
