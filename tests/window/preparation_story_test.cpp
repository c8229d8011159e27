// SPDX-License-Identifier: MIT
// A teacher's evening before the lesson: a challenge of her own out of Big fair, six pieces on a tree to see that it
// can be met, and the sealed file for the class.
#include <array>

#include "engine/storage/fingerprint.h"
#include "rules/ready_challenges.h"
#include "tests/window/story.h"

using namespace boughwork;

namespace {

const std::string teachers_file = "/fair/owls_try.bough.json";

const Challenge& challenge(DrivenWindow& it) { return it.session().scene().challenge; }

/// Big fair for a shorter lesson: six pieces will do, and half of them are to be isosceles.
void set_the_challenge(DrivenWindow& it, const Size& size) {
    it.key(SDLK_4);
    it.click("section name");
    it.click("begin with Big fair");
    REQUIRE(challenge(it) == big_fair());
    type_into(it, "challenge name", "Owl fair");
    it.click("section limits");
    type_into(it, "pieces at least", "6");
    it.click("section criteria");
    it.click("change criterion 5");
    type_into(it, "criterion 5 of 100", "50");
    keep_picture(it, size, "preparation_1_share");
}

/// A tree with a branch on either side and one more.
void plant(DrivenWindow& it) {
    it.key(SDLK_1);
    for (int i = 0; i < 3; ++i) it.click("add a branch");
    REQUIRE(it.session().plan().tree.branches.size() == 3);
    it.key(SDLK_ESCAPE);
}

/// Three numbers with Tab between; the first field has the keys already.
void make(DrivenWindow& it, const std::string& way, const std::array<std::string, 3>& numbers) {
    it.click("make a piece");
    it.click(way);
    it.type(numbers[0]);
    it.key(SDLK_TAB);
    it.type(numbers[1]);
    it.key(SDLK_TAB);
    it.type(numbers[2]);
}

/// The piece that was made last is the chosen one: N hangs it, and again N moves it to the next branch.
void hang_from(DrivenWindow& it, int piece, std::size_t branch) {
    REQUIRE(it.session().chosen_piece() == PieceNumber{piece});
    it.key(SDLK_n);
    for (int i = 0; i < 6 && it.report(piece).hangs_from->branch != branch; ++i) it.key(SDLK_n);
    CHECK(it.report(piece).hangs_from->branch == branch);
    CHECK(it.counts(piece));
}

void make_and_hang_six(DrivenWindow& it, const Size& size) {
    make(it, "three sides", {"10", "8", "6"});
    it.click("make it");
    hang_from(it, 1, 0);
    make(it, "three sides", {"9", "7", "7"});
    it.key(SDLK_RETURN);
    hang_from(it, 2, 0);
    make(it, "two sides and the angle between", {"7", "120", "7"});
    keep_picture(it, size, "preparation_2_angle_between");
    it.click("make it");
    hang_from(it, 3, 1);
    make(it, "two sides and the angle between", {"8", "90", "6"});  // alike to piece 1
    it.click("make it");
    hang_from(it, 4, 1);
    make(it, "a side and its two angles", {"60", "8", "60"});
    it.click("make it");
    hang_from(it, 5, 2);
    it.click("make a piece");
    it.click("pull its corners");
    it.click("make two sides equal");
    keep_picture(it, size, "preparation_3_pulled");
    it.click("make it");
    hang_from(it, 6, 2);
}

}  // namespace

TEST_CASE("story: a teacher prepares a challenge, sees that it can be met, and saves it sealed for the class") {
    const Size size = GENERATE(values(tellings));
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale);
    type_into(it, "title", "Owls");
    set_the_challenge(it, size);
    CHECK(std::get<KindShare>(challenge(it).criteria[4].asks) == KindShare{Kind::isosceles, 50});

    plant(it);
    make_and_hang_six(it, size);
    // 10 8 6; 9 7 7; 7 7 12 (120 degrees: 12.1 to half a centimetre); 8 6 10; 8 8 8; two equal sides pulled.
    REQUIRE(it.session().scene().pieces.size() == 6);
    CHECK(std::get<Triangle>(piece_of(it, 3).shape) ==
          Triangle{{length_from_mm(70), length_from_mm(70), length_from_mm(120)}});
    CHECK(it.report(6).measures.kinds->by_sides == Kind::isosceles);
    for (const ChallengeLine& line : it.session().report().challenge) {
        INFO(line.asks);
        CHECK(line.met != false);
    }
    CHECK(reads(it, say("Every piece that hangs counts, and so far nothing is missing.")));
    keep_picture(it, size, "preparation_4_met");

    // One piece less, and the share is not reached any more: the card and the referee say so.
    choose_with_keys(it, 2);
    it.key(SDLK_e);
    it.click("later cards");
    it.click("card isosceles share");
    keep_picture(it, size, "preparation_5_not_met");
    it.key(SDLK_z, KMOD_LCTRL);
    save_as_with_keys(it, teachers_file);

    it.key(SDLK_4);
    it.click("section class");
    it.click("seal it");
    it.click("save for the class");
    REQUIRE(it.session().dialog() == Dialog::save_for_class);
    keep_picture(it, size, "preparation_6_for_the_class");
    type_into(it, "file name", "owls_class.bough.json");
    REQUIRE(it.session().dialog() == Dialog::none);
    CHECK(reads(it, say("saved for the class")));
    it.key(SDLK_s, KMOD_LCTRL);
    const Scene teachers = it.session().scene();
    const std::string print = fingerprint(teachers.challenge);
    CHECK(reads(it, print));

    // What the class will see.
    it.key(SDLK_o, KMOD_LCTRL);
    it.click("file owls_class.bough.json");
    CHECK(it.session().path() == "/fair/owls_class.bough.json");
    it.key(SDLK_4);
    it.click("section read");
    CHECK(challenge(it).sealed);
    CHECK(std::get<KindShare>(challenge(it).criteria[4].asks).percent == 50);
    CHECK(it.session().scene().pieces.empty());
    CHECK(it.session().plan().tree == current_plan(teachers).tree);
    CHECK(reads(it, say("Sealed: this is the class's challenge. Its fingerprint is {0}.", {print})));
    keep_picture(it, size, "preparation_7_the_class_opens_it");
    CHECK(saved_in(it, teachers_file) == teachers);
}
