// SPDX-License-Identifier: MIT
// What was built stands on the table: the teacher judges it piece by piece, rules twice against the referee, finds a
// piece that nobody planned, and opens it all again.
#include <algorithm>

#include "rules/built_tree.h"
#include "tests/window/story.h"

using namespace boughwork;

namespace {

const std::string groups_file = "/fair/wrens.bough.json";

Report tree_says(DrivenWindow& it) {
    return built_report(it.session().scene(), it.session().plan(), it.session().report());
}

void rule_on(DrivenWindow& it, int piece, const std::string& ruling, const std::string& reason) {
    it.click("built piece " + std::to_string(piece));
    it.click("ruling: " + ruling);
    type_into(it, "reason " + std::to_string(piece), reason);
}

/// No number hangs into the row of another piece.
void numbers_stand_in_their_rows(DrivenWindow& it) {
    const PixelBox& list = it.place("built pieces");
    for (int piece = 1; piece <= 8; ++piece) {
        INFO("piece " << piece);
        const PixelBox row = it.place("built piece " + std::to_string(piece));
        if (row.y < list.y || row.y + row.height > list.y + list.height) continue;
        const auto& written = it.window().widgets().lettering().written();
        CHECK(std::any_of(written.begin(), written.end(), [&](const Written& number) {
            return number.words == std::to_string(piece) && contains(row, {number.box.x, number.box.y}) &&
                   contains(row, {number.box.x + number.box.width, number.box.y + number.box.height});
        }));
    }
}

LeftBehind judge_what_stands_there(const Size& size) {
    DrivenWindow it(size.width, size.height, size.scale, {{groups_file, write_plan(ready_scene("fair_example"))}});
    open_with_keys(it, groups_file);
    it.key(SDLK_3);
    // Perimeters of 24 23 24 24 33.5 27.5 18 24 22 25.5 cm, 5 for an equilateral, 3 for a chain, 10 for eight not
    // alike.
    CHECK(it.session().report().score == Approx(263.5));

    it.click("built piece 1");
    it.click("found: wrong");
    it.click("rule ground");
    keep_picture(it, size, "judging_1_wrong");
    numbers_stand_in_their_rows(it);
    it.click("built piece 2");
    it.click("found: not there");
    it.click("the rest is as planned");
    CHECK(reads(it, say("Every planned piece was looked at.")));
    // Without pieces 1 and 2, and still eight of which no two are alike: piece 9 is like piece 1.
    CHECK(tree_says(it).score == Approx(263.5 - 24 - 23));

    rule_on(it, 1, "counts", "the table shook");     // the referee would not count it
    rule_on(it, 3, "does not count", "it is torn");  // the referee would
    // Seven that differ are left, so the ten points are lost.
    CHECK(tree_says(it).score == Approx(263.5 - 23 - 24 - 10));
    CHECK(it.session().report().score == Approx(263.5));
    keep_picture(it, size, "judging_2_two_rulings");

    it.click("make a piece");  // "one more piece"
    for (const char* side : {"6", "5", "4"}) {
        it.type(side);
        it.key(side == std::string("4") ? SDLK_RETURN : SDLK_TAB);
    }
    REQUIRE(it.session().chosen_piece() == PieceNumber{16});
    it.click("found: as planned");  // "as it should"
    CHECK_FALSE(find_hung(it.session().plan(), {16}));
    // 15 cm around it, and again eight that differ.
    CHECK(tree_says(it).score == Approx(263.5 - 23 - 24 + 15));
    CHECK(reads(it, say("plan says")));
    CHECK(reads(it, say("tree says")));
    CHECK(reads(it, "231.5"));
    keep_picture(it, size, "judging_3_never_planned");
    return save_and_close(it);
}

}  // namespace

TEST_CASE("story: a built tree is judged with two rulings and a piece that was never planned") {
    const Size size = GENERATE(values(tellings));
    const SpeakingIn speaking(size.language);
    const LeftBehind before = judge_what_stands_there(size);

    DrivenWindow again(size.width, size.height, size.scale, before.disk);
    open_with_keys(again, groups_file);
    CHECK(again.session().scene() == before.scene);
    again.key(SDLK_3);
    again.click("built piece 3");
    CHECK(find_built(again.session().plan(), {1})->ruling == Ruling{true, "the table shook"});
    CHECK(find_built(again.session().plan(), {3})->ruling == Ruling{false, "it is torn"});
    CHECK(reads(again, "263.5"));
    CHECK(reads(again, "231.5"));
    keep_picture(again, size, "judging_4_opened_again");
}
