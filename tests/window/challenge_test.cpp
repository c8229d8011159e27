// SPDX-License-Identifier: MIT
// The challenge's page: settings changed by hand and by keys alone, sealed, saved for the class, opened by pupils.
#include "engine/storage/fingerprint.h"
#include "engine/storage/plan_file.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "rules/ready_challenges.h"
#include "tests/window/driven_window.h"
#include "tests/window/story.h"

using namespace boughwork;

namespace {

const Challenge& challenge(DrivenWindow& it) { return it.session().scene().challenge; }

/// As type_into, by keys alone.
void type_by_keys(DrivenWindow& it, const std::string& label, const std::string& words) {
    it.tab_to(label);
    it.key(SDLK_a, KMOD_LCTRL);
    it.type(words);
    it.key(SDLK_RETURN);
}

void press_by_keys(DrivenWindow& it, const std::string& label) {
    it.tab_to(label);
    it.key(SDLK_RETURN);
}

const char* sections[] = {"read",     "name",  "measuring",   "hanging", "limits",
                          "criteria", "score", "mathematics", "class"};

}  // namespace

TEST_CASE("at every size, in both languages, each section of the challenge is whole") {
    const Size size = GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1});
    const Language language = GENERATE(Language::english, Language::spanish);
    speak(language);
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.key(SDLK_4);
    for (const char* section : sections) {
        it.click("section " + std::string(section));
        if (section == std::string("criteria")) it.click("change criterion 1");
        if (section == std::string("score")) it.click("change bonus 1");
        it.save_picture("challenge_" + size.name() + (language == Language::spanish ? "es_" : "") + section);
        const PixelBox field = it.place("settings " + std::string(section));
        for (const auto& [label, box] : it.window().places()) {
            INFO(section << ": " << label);
            CHECK(box.width >= it.window().widgets().px(palette::target_px));
            CHECK(box.height >= it.window().widgets().px(palette::target_px));
            if (box.x < field.x + field.width) CHECK(box.x + box.width <= it.window().layout().page.width);
        }
        for (const std::string& words : it.window().widgets().shortened()) {
            INFO(section << ": no room for: " << words);
            CHECK(false);
        }
    }
    speak(Language::english);
}

TEST_CASE("several settings are changed by mouse, and each is judged at once") {
    DrivenWindow it;
    it.open_example();
    it.click("challenge");
    REQUIRE(it.session().page() == Page::challenge);
    const std::string before = fingerprint(challenge(it));

    it.click("section measuring");
    it.click("step: 5 mm");
    CHECK(challenge(it).step == Step{5, 1, Unit::mm, ""});
    type_into(it, "another step", "2 mm");
    CHECK(challenge(it).step == Step{2, 1, Unit::mm, ""});
    it.click("right angle: 0.1");
    CHECK(challenge(it).right_within_deg == 0.1);

    it.click("section hanging");
    it.click("chains: up to");
    CHECK(challenge(it).depth_limit == 2);
    type_into(it, "longest chain", "3");
    CHECK(challenge(it).depth_limit == 3);
    it.click("chains: any");
    CHECK_FALSE(challenge(it).depth_limit);
    it.click("at fault: fewest points");
    CHECK(challenge(it).at_fault == AtFault::fewest_points);

    it.click("section limits");
    REQUIRE(it.counts(1));
    type_into(it, "side at least", "9");
    CHECK(challenge(it).limits.side.least == length_from_mm(90));
    CHECK_FALSE(it.counts(1));  // it has a side of 6 cm
    it.click("side at least");
    it.key(SDLK_a, KMOD_LCTRL);
    it.key(SDLK_BACKSPACE);
    it.key(SDLK_RETURN);
    CHECK_FALSE(challenge(it).limits.side.least);
    CHECK(it.counts(1));

    it.click("section mathematics");
    it.click("kinds: after an answer");
    CHECK(challenge(it).shown.kinds == Shows::after_an_answer);
    CHECK(fingerprint(challenge(it)) != before);
    it.click("undo");
    CHECK(challenge(it).shown.kinds == Shows::always);
}

TEST_CASE("a number takes effect when its field is left, and not before") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_t);
    it.click("section limits");
    type_into(it, "pieces at most", "15", false);
    CHECK_FALSE(challenge(it).limits.pieces.most == 15);
    it.key(SDLK_TAB);
    CHECK(challenge(it).limits.pieces.most == 15);
    type_into(it, "pieces at most", "17", false);
    it.click("section hanging");
    CHECK(challenge(it).limits.pieces.most == 17);
    it.click("section limits");
    type_into(it, "pieces at most", "18", false);
    it.key(SDLK_ESCAPE);
    CHECK(challenge(it).limits.pieces.most == 17);
}

TEST_CASE("what cannot be meant is told at the field; what was typed is kept, and the old value in force") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_4);
    it.click("section limits");
    const Challenge before = challenge(it);
    type_into(it, "pieces at most", "1");  // less than the least
    CHECK(challenge(it) == before);
    REQUIRE(it.session().problem());
    const auto unmet_words = [&] {
        const std::vector<Colour> seen = it.colours_in(it.place("settings limits"));
        return std::count(seen.begin(), seen.end(), palette::unmet);
    };
    CHECK(unmet_words() > 100);
    it.save_picture("challenge_refused");
    // It is there still, to be mended.
    it.click("pieces at most");
    it.key(SDLK_END);
    it.type("8");
    it.key(SDLK_RETURN);
    CHECK(challenge(it).limits.pieces.most == 18);
    CHECK_FALSE(it.session().problem());

    type_into(it, "side at most", "as long as my arm");
    CHECK(challenge(it).limits.side == before.limits.side);
    CHECK(unmet_words() > 100);
    it.click("section measuring");
    type_into(it, "tolerance", "0");
    CHECK(challenge(it).tolerance_mm == before.tolerance_mm);
    REQUIRE(it.session().problem());
    it.click("section read");
    CHECK(it.session().scene().challenge.limits.pieces.most == 18);
}

TEST_CASE("criteria and bonuses are added, changed and taken out") {
    DrivenWindow it;
    it.open_example();
    it.wish(SetChallenge{little_fair()});
    it.key(SDLK_4);
    it.click("section criteria");
    it.click("add a share");
    REQUIRE(challenge(it).criteria.size() == 2);
    it.click("criterion 2 kind: obtuse");
    it.click("criterion 2 bound: at most");
    it.click("criterion 2 share of: points");
    type_into(it, "criterion 2 of 100", "33,5");
    CHECK(std::get<KindShare>(challenge(it).criteria[1].asks) == KindShare{Kind::obtuse, 33.5, true, ShareOf::points});
    it.click("add a kind");
    it.click("criterion 3 kind: scalene");
    type_into(it, "criterion 3 triangles", "4");
    CHECK(std::get<KindAppears>(challenge(it).criteria[2].asks) == KindAppears{Kind::scalene, 4});
    it.save_picture("challenge_criterion_added");

    it.click("section score");
    it.click("add a bonus if met");
    it.click("bonus 1: criterion 3");
    type_into(it, "bonus 1 points", "7");
    CHECK(challenge(it).score.bonuses[0] == Bonus{IfMet{2}, 7, ""});
    it.click("add a bonus in words");
    type_into(it, "bonus 2 words", "neat labels");
    CHECK(std::get<InWords>(challenge(it).score.bonuses[1].for_what).words == "neat labels");
    it.click("add a bonus for a chain");
    type_into(it, "bonus 3 place", "3");
    it.click("add a bonus for a kind");
    it.click("bonus 4 kind: isosceles");
    CHECK(challenge(it).score.bonuses[3].for_what ==
          std::variant<PerPiece, PerDepth, IfMet, InWords>(PerPiece{Kind::isosceles}));
    CHECK(challenge(it).score.bonuses[2].for_what == std::variant<PerPiece, PerDepth, IfMet, InWords>(PerDepth{3}));
    it.save_picture("challenge_bonuses");

    // What a bonus is for stays; an earlier one goes, and the bonus follows its criterion.
    it.click("section criteria");
    it.click("take out criterion 3");
    CHECK(challenge(it).criteria.size() == 3);
    it.click("take out criterion 2");
    REQUIRE(challenge(it).criteria.size() == 2);
    CHECK(challenge(it).score.bonuses[0] == Bonus{IfMet{1}, 7, ""});
    it.click("section score");
    it.click("take out bonus 1");
    CHECK(challenge(it).score.bonuses.size() == 3);
}

TEST_CASE("with keys alone a challenge is begun, changed, sealed and its seal broken") {
    DrivenWindow it(1024, 700);
    it.open_example();
    it.key(SDLK_4);
    press_by_keys(it, "section name");
    press_by_keys(it, "begin with Big fair");
    REQUIRE(challenge(it) == big_fair());
    type_by_keys(it, "challenge name", "Owl fair");
    CHECK(challenge(it).name == "Owl fair");
    press_by_keys(it, "section criteria");
    press_by_keys(it, "change criterion 5");
    type_by_keys(it, "criterion 5 of 100", "50");
    CHECK(std::get<KindShare>(challenge(it).criteria[4].asks).percent == 50);
    press_by_keys(it, "section limits");
    type_by_keys(it, "height at least", "3");
    CHECK(challenge(it).limits.least_height == length_from_mm(30));
    it.save_picture("challenge_by_keys");
    press_by_keys(it, "section hanging");
    press_by_keys(it, "neighbours: apart");
    CHECK(challenge(it).neighbours == Neighbours::apart);
    // All of a section is read by keys.
    press_by_keys(it, "section read");
    const std::vector<Colour> top = it.colours_in(it.place("settings read"));
    for (int i = 0; i < 5; ++i) it.key(SDLK_PAGEDOWN);
    CHECK(it.colours_in(it.place("settings read")) != top);

    press_by_keys(it, "section class");
    press_by_keys(it, "seal it");
    REQUIRE(challenge(it).sealed);
    press_by_keys(it, "break the seal");
    REQUIRE(it.session().dialog() == Dialog::break_seal);
    it.key(SDLK_ESCAPE);
    CHECK(challenge(it).sealed);
    press_by_keys(it, "break the seal");
    press_by_keys(it, "break it");
    CHECK_FALSE(challenge(it).sealed);
    it.key(SDLK_1);
    CHECK(it.session().page() == Page::tree);
}

TEST_CASE("saved for the class, opened by pupils, it cannot be changed; the fingerprint is the teacher's") {
    std::map<std::string, std::string> on_disk;
    Scene teachers;
    {
        DrivenWindow teacher;
        teacher.open_example();
        teacher.key(SDLK_4);
        teacher.click("section limits");
        type_into(teacher, "sheets at most", "5");
        teacher.click("section class");
        teacher.click("save for the class");
        REQUIRE(teacher.session().dialog() == Dialog::save_for_class);
        teacher.save_picture("challenge_save_for_class");
        teacher.files.contents["/fair/class.bough.json"] = "precious";
        type_into(teacher, "file name", "class.bough.json");
        REQUIRE(teacher.session().dialog() == Dialog::replace_file);
        teacher.click("another name");
        REQUIRE(teacher.session().dialog() == Dialog::save_for_class);
        CHECK(teacher.files.contents["/fair/class.bough.json"] == "precious");
        type_into(teacher, "file name", "class.bough.json");
        teacher.click("replace it");
        REQUIRE(teacher.session().dialog() == Dialog::none);
        CHECK_FALSE(challenge(teacher).sealed);
        on_disk = teacher.files.contents;
        teachers = teacher.session().scene();
    }

    DrivenWindow pupils(1280, 800, 1, on_disk);
    pupils.perform(OpenFile{"/fair/class.bough.json"});
    REQUIRE_FALSE(pupils.session().problem());
    CHECK(pupils.session().scene().pieces.empty());
    CHECK(pupils.session().plan().tree == current_plan(teachers).tree);
    CHECK(fingerprint(challenge(pupils)) == fingerprint(teachers.challenge));
    const Challenge before = challenge(pupils);
    pupils.key(SDLK_4);
    pupils.save_picture("challenge_sealed_read");
    const char* tries[][2] = {{"name", "begin with Little fair"}, {"name", "units: mm"},
                              {"measuring", "step: 1 in"},        {"hanging", "neighbours: apart"},
                              {"limits", "sheets at most"},       {"criteria", "take out criterion 1"},
                              {"criteria", "add a kind"},         {"mathematics", "kinds: after the lesson"},
                              {"class", "take from a file"}};
    for (const auto& [section, label] : tries) {
        INFO(label);
        pupils.click("section " + std::string(section));
        pupils.click(label);
        pupils.type("9");
        pupils.key(SDLK_RETURN);
        CHECK(challenge(pupils) == before);
        CHECK(pupils.session().dialog() == Dialog::none);
    }
    pupils.click("section hanging");
    pupils.save_picture("challenge_sealed_hanging");
    pupils.click("section limits");
    pupils.save_picture("challenge_sealed_limits");

    pupils.click("section class");
    pupils.click("break the seal");
    pupils.save_picture("challenge_break_seal");
    CHECK(challenge(pupils) == before);
    pupils.click("break it");
    CHECK_FALSE(challenge(pupils).sealed);
    CHECK(fingerprint(challenge(pupils)) == fingerprint(before));
    pupils.click("section name");
    pupils.click("units: mm");
    CHECK(fingerprint(challenge(pupils)) != fingerprint(before));
}

TEST_CASE("the challenge of another file is put on this plan") {
    DrivenWindow it;
    it.open_example();
    Scene other = new_scene();
    other.challenge = grand_fair();
    it.files.contents["/fair/grand.bough.json"] = write_plan(other);
    it.files.contents["/fair/broken.bough.json"] = "{ oops";
    const auto pieces = it.session().scene().pieces;
    it.key(SDLK_4);
    it.click("section class");
    it.click("take from a file");
    REQUIRE(it.session().dialog() == Dialog::take_challenge);
    it.click("file broken.bough.json");
    CHECK(it.session().problem());
    REQUIRE(it.session().dialog() == Dialog::take_challenge);
    it.click("file grand.bough.json");
    CHECK(it.session().dialog() == Dialog::none);
    CHECK(challenge(it) == grand_fair());
    CHECK(it.session().scene().pieces == pieces);
    it.click("section read");
    it.save_picture("challenge_grand_read");
    it.click("section criteria");
    it.save_picture("challenge_grand_criteria");
    it.click("undo");
    CHECK(challenge(it).name != "Grand fair");
}
