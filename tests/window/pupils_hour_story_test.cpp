// SPDX-License-Identifier: MIT
// A pupil's hour with the class's file: kinds answered, sides measured, pieces hung with the mouse and with keys, a
// chain, a slip with a rule and its fix, and the table for the spreadsheet.
#include <algorithm>

#include "gui/window/pointed_pieces.h"
#include "tests/window/csv_by_rfc_4180.h"
#include "tests/window/story.h"

using namespace boughwork;

namespace {

const std::string class_file = "/fair/owls.bough.json";
const std::string table_file = "/fair/owls.csv";

/// Big fair as its teacher gives it out: who wants to know lengths and kinds finds them out.
std::string file_for_the_class() {
    Scene scene = ready_scene("big_fair");
    scene.title = "Owls";
    scene.challenge.shown = {.lengths = Shows::after_an_answer, .kinds = Shows::after_an_answer};
    scene.challenge.sealed = true;
    return write_plan(scene);
}

/// Piece 4 has sides 8, 8, 8; piece 1 has 10, 8, 6.
void answer_kinds(DrivenWindow& it, const Size& size) {
    it.key(SDLK_2);
    keep_picture(it, size, "hour_1_kept_back");
    CHECK_FALSE(reads(it, say("equilateral") + " "));
    it.click("piece 4 by sides");
    it.click("answer isosceles");
    CHECK(reads(it, say("Nearly: even three of its sides are equal.")));
    keep_picture(it, size, "hour_2_nearly");
    it.click("answer equilateral");
    CHECK(reads(it, say("Yes, that is what its sides say.")));
    it.click("close");
    CHECK(answer_a_kind(it, 4, "angles", "acute").find(say("Yes, that is what its largest angle says.")) !=
          std::string::npos);
    CHECK_FALSE(it.shows("piece 4 by sides"));
    CHECK(reads(it, say("equilateral") + " "));
    CHECK(answer_a_kind(it, 1, "angles", "acute")
              .find(say("Not yet. Hold the corner of a card into its largest angle.")) != std::string::npos);
}

void measure(DrivenWindow& it, const Size& size) {
    it.click("piece 1 measured by");
    it.click("piece 1 measured by");  // the moon
    measure_by_hand(it, 1, 1, "10");
    measure_by_hand(it, 1, 2, "9");
    measure_by_hand(it, 1, 3, "6");
    const std::string again = say("Measure side {0} of piece {1} again. Begin at 0, not at 1.", {"2", "1"});
    CHECK(reads(it, again));
    keep_picture(it, size, "hour_3_slip");
    measure_by_hand(it, 1, 2, "8");
    CHECK_FALSE(reads(it, again));
    for (int side = 1; side <= 3; ++side) measure_by_hand(it, 4, side, "8");
}

/// With the mouse from the envelope onto branch and piece, with keys alone the others.
void hang(DrivenWindow& it, const Size& size) {
    it.click("Tree");
    hang_with_mouse(it, 5, {.at_mm = {150, 236}});
    CHECK(it.report(5).depth == 1);
    hang_with_mouse(it, 1, {.at_mm = {60, 434}, .turn_ccw_deg = -3});
    for (const int piece : {4, 2, 3}) {
        choose_with_keys(it, piece);
        it.key(SDLK_n);
        CHECK(it.counts(piece));
    }
    it.key(SDLK_n);  // to the next branch
    for (int i = 0; i < 5; ++i) it.key(SDLK_LEFT);
    CHECK(it.counts(3));
    CHECK(it.report(3).hangs_from->branch == 1);

    hang_with_mouse(it, 7, {.at_mm = {162, 195}});  // its top side across the long side of 5
    REQUIRE(it.report(7).hangs_from);
    CHECK(it.report(7).hangs_from->piece == PieceNumber{5});
    CHECK(it.report(7).depth == 2);
    CHECK(it.counts(7));
    keep_picture(it, size, "hour_4_chain");

    // Which pieces are acute? 2, 4 and 7; but only of 4 has anybody said so.
    it.click("card acute");
    CHECK(pointed_pieces(it.session()) == std::vector{PieceNumber{4}});
    it.click("card acute");
}

/// Piece 1 is pulled over its neighbour, the referee tells it, and his smallest move mends it.
void break_a_rule_and_mend_it(DrivenWindow& it, const Size& size) {
    const double before = it.session().report().score;
    const Vec2 neighbour = it.middle_of(4);
    it.drag(it.middle_of(1), it.middle_of(1) + 0.4 * (neighbour - it.middle_of(1)));
    REQUIRE(it.session().finding());
    CHECK(it.session().finding()->rule == Rule::overlap);
    CHECK_FALSE(it.counts(1));
    CHECK(it.session().report().score < before);
    CHECK(reads(it, it.session().finding()->says));
    it.click("show");
    keep_picture(it, size, "hour_5_overlap");
    it.click("show");
    it.click("fix");
    CHECK_FALSE(it.session().finding());
    CHECK(it.session().report().score == Approx(before));
}

void look_into_the_table(const std::string& csv) {
    const auto rows = rows_of(csv);
    REQUIRE(rows.size() == 11);  // a heading and ten pieces
    const auto cell = [&](std::size_t piece, const std::string& column) {
        REQUIRE(rows[piece].size() == rows[0].size());
        const auto at = std::find(rows[0].begin(), rows[0].end(), column);
        INFO(column);
        REQUIRE(at != rows[0].end());
        return rows[piece][static_cast<std::size_t>(at - rows[0].begin())];
    };
    CHECK(cell(1, "number") == "1");
    CHECK(cell(1, "side 1") == "10");  // measured, so told
    CHECK(cell(1, "by hand 2") == "8");
    CHECK(cell(1, "measured by") == "moon");
    CHECK(cell(1, "by sides").empty());  // answered by its angles alone
    CHECK(cell(1, "points") == "24");
    CHECK(cell(2, "side 1").empty());  // kept back
    CHECK(cell(2, "by angles").empty());
    CHECK(cell(4, "by sides") == "equilateral");
    CHECK(cell(4, "by angles") == "acute");
    CHECK(cell(7, "hangs from") == "piece 5, side 2");
    CHECK(cell(7, "state") == "counts");
    CHECK(cell(8, "hangs from") == "in the envelope");
    CHECK(csv.find("\"piece 5, side 2\"") != std::string::npos);
}

}  // namespace

TEST_CASE("story: a pupil answers, measures, hangs with mouse and keys, mends what is broken, and keeps the table") {
    const Size size = GENERATE(values(tellings));
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale, {{class_file, file_for_the_class()}});
    open_with_keys(it, class_file);
    answer_kinds(it, size);
    measure(it, size);
    hang(it, size);
    break_a_rule_and_mend_it(it, size);

    it.key(SDLK_2);
    keep_picture(it, size, "hour_6_table");
    it.key(SDLK_e, KMOD_LCTRL);
    REQUIRE(it.session().dialog() == Dialog::save_table);
    it.key(SDLK_RETURN);
    CHECK(reads(it, say("The table is saved.")));
    REQUIRE(it.files.contents.count(table_file) == 1);
    look_into_the_table(it.files.contents[table_file]);
    it.key(SDLK_s, KMOD_LCTRL);
    CHECK_FALSE(it.session().unsaved());
    CHECK(saved_in(it, class_file) == it.session().scene());
}
