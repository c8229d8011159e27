// SPDX-License-Identifier: MIT
#include "gui/session/piece_draft.h"

#include <catch2/catch.hpp>

#include "engine/storage/plan_file.h"
#include "gui/session/other_pieces.h"
#include "gui/session/work.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

PieceDraft typed(Way way, const std::array<std::string, 3>& words) {
    PieceDraft draft = new_draft({});
    draft.way = way;
    const std::vector<PieceField> fields = fields_of(way);
    for (std::size_t i = 0; i < 3; ++i) draft.text(fields[i]) = words[i];
    return draft;
}

Challenge whole_cm() {
    Challenge challenge;
    challenge.step = {1, 1, Unit::cm};
    return challenge;
}

std::vector<Triangle> made(const PieceDraft& draft, const Challenge& challenge = {}) {
    const auto triangles = triangles_of(draft, challenge);
    if (!triangles) FAIL(in_words(triangles.problem()));
    return *triangles;
}

}  // namespace

TEST_CASE("each typed way makes the triangle that its three fields say") {
    CHECK(made(typed(Way::three_sides, {"8", "6 cm", "50 mm"})) == std::vector{triangle_mm(80, 60, 50)});
    CHECK(made(typed(Way::angle_between, {"3", "90", "4"})) == std::vector{triangle_mm(30, 40, 50)});
    CHECK(made(typed(Way::two_angles, {"60", "7", "60°"})) == std::vector{triangle_mm(70, 70, 70)});
    CHECK(made(typed(Way::angle_opposite, {"7", "8", "60"})) ==
          std::vector{triangle_mm(70, 80, 50), triangle_mm(70, 80, 30)});
}

TEST_CASE("what stands in the way is told: the first field that cannot be read, or why there is none") {
    CHECK(first_empty(typed(Way::angle_between, {"3", " ", ""})) == PieceField::angle_between);
    CHECK_FALSE(first_empty(typed(Way::angle_between, {"3", "x", "y"})));
    CHECK(triangles_of(typed(Way::angle_between, {"3", "x", "y"}), {}).problem().found == "\"x\" is not an angle.");
    CHECK_FALSE(triangles_of(typed(Way::three_sides, {"9", "4", "5"}), {}));
    CHECK_FALSE(triangles_of(typed(Way::angle_opposite, {"3", "8", "60"}), {}));
    CHECK_FALSE(chosen_triangle(typed(Way::angle_opposite, {"3", "8", "60"}), {}));
}

TEST_CASE("worked-out sides stop at the challenge's step unless asked not to") {
    PieceDraft draft = typed(Way::angle_between, {"5", "90", "5"});
    CHECK(made(draft, whole_cm()) == std::vector{triangle_mm(50, 50, 70)});
    draft.exact = true;
    CHECK(made(draft, whole_cm())[0].sides[2] == length_from_mm(70.7105));
}

TEST_CASE("of two triangles the chosen one is made") {
    PieceDraft draft = typed(Way::angle_opposite, {"7", "8", "60"});
    CHECK(chosen_triangle(draft, {}) == triangle_mm(70, 80, 50));
    draft.choice = 1;
    CHECK(chosen_triangle(draft, {}) == triangle_mm(70, 80, 30));
    draft.text(PieceField::angle_opposite) = "30";  // only one now: 7 and 8 stay, the choice is kept for later
    CHECK(chosen_triangle(draft, {}));
}

TEST_CASE("a triangle comes along from one way to the next") {
    PieceDraft draft = typed(Way::three_sides, {"8", "6", "5"});
    draft = turned_to(draft, Way::corners, {});
    CHECK(made(draft) == std::vector{triangle_mm(80, 60, 50)});
    draft.pulled = with_sides(draft.pulled, triangle_mm(80, 55, 50));
    draft = turned_to(draft, Way::three_sides, {});
    CHECK(draft.text(PieceField::side_2) == "5.5");
    CHECK(made(draft) == std::vector{triangle_mm(80, 55, 50)});
    // What was typed and makes none stays typed.
    draft.text(PieceField::side_1) = "80";
    draft = turned_to(turned_to(draft, Way::two_angles, {}), Way::three_sides, {});
    CHECK(draft.text(PieceField::side_1) == "80");
}

TEST_CASE("a piece is changed under its number; where it hangs, it goes on hanging by that side") {
    FairTable table;
    table.hang(1, 100);
    REQUIRE(table.counts(1));
    table.session.perform(reshaped(table.session.scene(), table.session.report(), {1}, triangle_mm(60, 50, 50)));
    CHECK(std::get<Triangle>(find_piece(table.session.scene(), {1})->shape) == triangle_mm(60, 50, 50));
    CHECK(table.counts(1));
    CHECK(near(table.corners(1)[0], {110, 416}));
    CHECK(near(table.corners(1)[1], {170, 416}));
    CHECK(table.session.history().undo_label() == "change piece 1");
    table.press(Action::undo);  // one step
    CHECK(near(table.corners(1)[1], {180, 416}));
}

TEST_CASE("a piece is copied, and mirrored where that makes another one; numbers are never used twice") {
    FairTable table;
    table.choose(1);
    table.press(Action::copy_piece);
    CHECK(table.session.chosen_piece() == PieceNumber{2});
    table.press(Action::mirrored_copy);
    CHECK(table.session.chosen_piece() == PieceNumber{3});
    CHECK(std::get<Triangle>(find_piece(table.session.scene(), {2})->shape) == triangle_mm(80, 60, 50));
    CHECK(std::get<Triangle>(find_piece(table.session.scene(), {3})->shape) == triangle_mm(80, 50, 60));
    table.press(Action::throw_away);
    table.choose(1);
    table.hang(1, 100);
    table.press(Action::copy_piece);  // of a hung one, into the envelope
    CHECK(table.session.chosen_piece() == PieceNumber{4});
    CHECK_FALSE(table.hung(4));
    table.wish(AddPiece{triangle_mm(60, 60, 50)});
    table.press(Action::mirrored_copy);  // looks the same: not possible
    CHECK(table.session.scene().pieces.size() == 4);
}

TEST_CASE("change asks for a triangle") {
    FairTable table;
    table.press(Action::choose_nothing);
    table.press(Action::change_piece);
    CHECK(table.session.dialog() == Dialog::none);
    table.choose(1);
    table.press(Action::change_piece);
    CHECK(table.session.dialog() == Dialog::change_piece);
    table.session.perform(CloseDialog{});
    table.wish(AddPiece{Cone{length_from_mm(20), length_from_mm(60)}});
    table.press(Action::change_piece);
    CHECK(table.session.dialog() == Dialog::none);
}

TEST_CASE("pieces of another file come into the envelope in one step, with their notes") {
    FairTable other;
    other.wish(AddPiece{triangle_mm(70, 60, 50), "Wren"});
    other.wish(AddPiece{Cone{length_from_mm(20), length_from_mm(60)}});
    FairTable table;
    table.files.contents["/fair/other.bough.json"] = write_plan(other.session.scene());
    const auto pieces = pieces_of_file(table.files, "/fair/other.bough.json");
    REQUIRE(pieces);
    REQUIRE(pieces->size() == 3);
    table.session.perform(brought_in({(*pieces)[1], (*pieces)[2]}));
    const Scene& scene = table.session.scene();
    REQUIRE(scene.pieces.size() == 3);
    CHECK(scene.pieces[1].number == PieceNumber{2});
    CHECK(scene.pieces[1].note == "Wren");
    CHECK(std::holds_alternative<Cone>(scene.pieces[2].shape));
    CHECK(table.session.chosen_piece() == PieceNumber{2});
    CHECK(table.session.history().undo_label() == "bring in 2 pieces");
    table.press(Action::undo);
    CHECK(table.session.scene().pieces.size() == 1);
    CHECK_FALSE(pieces_of_file(table.files, "/fair/none.bough.json"));
    table.files.contents["/fair/broken.bough.json"] = "{";
    CHECK_FALSE(pieces_of_file(table.files, "/fair/broken.bough.json"));
}
