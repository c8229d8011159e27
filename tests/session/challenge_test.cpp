// SPDX-License-Identifier: MIT
// The challenge in the session: changed, sealed, saved for the class, taken from a file.
#include <catch2/catch.hpp>

#include "engine/storage/plan_file.h"
#include "rules/ready_challenges.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

const std::string own_path = "/fair/owl.bough.json";
const std::string class_path = "/fair/class.bough.json";

/// Piece 1 hangs on the branch under Little fair.
struct TeachersTable : FairTable {
    TeachersTable() {
        wish(SetChallenge{little_fair()});
        hang(1, 60);
        press(Action::challenge_page);
    }
    const Challenge& challenge() const { return session.scene().challenge; }
    Scene in_file(const std::string& path) const {
        const auto scene = read_plan(files.contents.at(path));
        REQUIRE(scene);
        return *scene;
    }
};

}  // namespace

TEST_CASE("keys lead to the challenge's page, and back to the tree") {
    TeachersTable table;
    table.press(Action::challenge_page);
    CHECK(table.session.page() == Page::challenge);
    CHECK(row_of(Action::challenge_page).keys.key == std::string("4"));
    CHECK(row_of(Action::challenge_page).also.key == std::string("t"));
    table.press(Action::tree_page);
    CHECK(table.session.page() == Page::tree);
}

TEST_CASE("a change of the challenge is judged at once, and is one step to take back") {
    TeachersTable table;
    REQUIRE(table.counts(1));
    const double score = table.session.report().score;
    Challenge asked = table.challenge();
    asked.limits.side.least = length_from_mm(60);
    table.wish(SetChallenge{asked});
    CHECK_FALSE(table.counts(1));
    CHECK(table.session.report().score == 0);
    table.press(Action::undo);
    CHECK(table.session.report().score == score);
    CHECK(table.challenge() == little_fair());
}

TEST_CASE("a challenge that asks for gravity is answered a moment after each change, and not while a hand is at work") {
    TeachersTable table;
    const auto line = [&] { return table.session.report().challenge.back(); };
    double now_s = 0;
    const auto wait = [&] {
        for (int i = 0; i < 1000 && table.session.waits_for_tick(); ++i) table.session.tick(now_s += 0.02);
    };
    Challenge asked = table.challenge();
    asked.holds_after_settling = true;
    table.wish(SetChallenge{asked});
    REQUIRE(line().about == "after_settling");
    CHECK_FALSE(line().met);
    REQUIRE(table.session.waits_for_tick());
    wait();
    CHECK(line().met == true);
    CHECK(line().have == 1);

    table.grab(1, {80, 400});
    table.hold_at({120, 400});
    table.session.tick(now_s += 0.02);
    CHECK_FALSE(line().met);
    table.let_go();
    wait();
    CHECK(line().met == true);

    table.wish(SetBase{{.width_mm = 1, .weight_g = 0}});
    table.wish(SetPaper{{"card", 5000, ""}});
    wait();
    CHECK(line().met == false);
    table.press(Action::undo);
    table.press(Action::undo);
    wait();
    CHECK(line().met == true);
}

TEST_CASE("what cannot be meant is refused, and the old challenge stays in force") {
    TeachersTable table;
    Challenge asked = table.challenge();
    asked.limits.pieces = {9, 2};
    table.wish(SetChallenge{asked});
    REQUIRE(table.session.problem());
    CHECK(table.challenge() == little_fair());
}

TEST_CASE("a sealed challenge cannot be changed until the seal is broken by two presses") {
    TeachersTable table;
    table.press(Action::seal_challenge);
    REQUIRE(table.challenge().sealed);
    CHECK_FALSE(row_of(Action::seal_challenge).possible(table.session));
    CHECK_FALSE(row_of(Action::take_challenge).possible(table.session));
    table.wish(SetChallenge{big_fair()});
    REQUIRE(table.session.problem());
    CHECK(table.challenge().name == "Little fair");

    table.press(Action::break_seal);
    CHECK(table.session.dialog() == Dialog::break_seal);
    CHECK(table.challenge().sealed);
    table.session.perform(CloseDialog{});
    CHECK(table.challenge().sealed);
    table.press(Action::break_seal);
    table.session.perform(BreakSeal{});
    CHECK(table.session.dialog() == Dialog::none);
    CHECK_FALSE(table.challenge().sealed);
    CHECK_FALSE(row_of(Action::break_seal).possible(table.session));
    table.wish(SetChallenge{big_fair()});
    CHECK(table.challenge() == big_fair());
    table.press(Action::undo);
    table.press(Action::undo);
    CHECK(table.challenge().sealed);
}

TEST_CASE("the file for the class has the challenge, sealed, this tree, no pieces and one empty plan") {
    TeachersTable table;
    table.session.perform(SaveFile{own_path});
    table.wish(CopyPlan{"Second try"});
    table.wish(AddBranch{{.path_mm = {{0, 300}, {-200, 300}}, .thickness_mm = 8}});
    const Scene before = table.session.scene();
    table.press(Action::save_for_class);
    REQUIRE(table.session.dialog() == Dialog::save_for_class);
    table.session.perform(SaveForClass{"/fair/class"});
    CHECK(table.session.dialog() == Dialog::none);
    CHECK(table.session.word() == "saved for the class");

    const Scene begun = table.in_file(class_path);
    CHECK(begun.title == "Little fair");
    CHECK(begun.challenge.sealed);
    Challenge opened = begun.challenge;
    opened.sealed = false;
    CHECK(opened == before.challenge);
    CHECK(begun.pieces.empty());
    REQUIRE(begun.plans.size() == 1);
    CHECK(begun.plans.front().tree == table.session.plan().tree);
    CHECK(begun.plans.front().hung.empty());
    // The teacher's own plan is as it was.
    CHECK(table.session.scene() == before);
    CHECK(table.session.path() == own_path);
    CHECK(table.session.unsaved());
}

TEST_CASE("a file that is there is not overwritten by the class's unasked, and the open plan's never") {
    TeachersTable table;
    table.session.perform(SaveFile{own_path});
    table.files.contents[class_path] = "precious";
    table.session.perform(SaveForClass{class_path});
    REQUIRE(table.session.dialog() == Dialog::replace_file);
    CHECK(table.session.replaces_for_class());
    CHECK(table.session.replace_path() == class_path);
    CHECK(table.files.contents[class_path] == "precious");
    table.session.perform(SaveForClass{class_path, true});
    CHECK(table.session.dialog() == Dialog::none);
    CHECK(table.in_file(class_path).challenge.sealed);

    const std::string own = table.files.contents[own_path];
    table.session.perform(SaveForClass{own_path, true});
    CHECK(table.session.problem());
    CHECK(table.files.contents[own_path] == own);

    table.files.contents["/fair/other.bough.json"] = "precious";
    table.session.perform(SaveFile{"/fair/other.bough.json"});
    CHECK(table.session.dialog() == Dialog::replace_file);
    CHECK_FALSE(table.session.replaces_for_class());
}

TEST_CASE("a full disk is told, and the dialog stays") {
    TeachersTable table;
    table.press(Action::save_for_class);
    table.files.full = true;
    table.session.perform(SaveForClass{class_path});
    CHECK(table.session.problem());
    CHECK(table.session.dialog() == Dialog::save_for_class);
    CHECK(table.files.contents.count(class_path) == 0);
}

TEST_CASE("the challenge of any plan file is put on the open plan, as one step") {
    TeachersTable table;
    Scene other = new_scene();
    other.challenge = grand_fair();
    table.files.contents["/fair/other.bough.json"] = write_plan(other);
    const Scene before = table.session.scene();
    table.press(Action::take_challenge);
    REQUIRE(table.session.dialog() == Dialog::take_challenge);
    table.session.perform(TakeChallenge{"/fair/other.bough.json"});
    CHECK(table.session.dialog() == Dialog::none);
    CHECK(table.challenge() == grand_fair());
    CHECK(table.session.scene().pieces == before.pieces);
    CHECK(table.session.scene().plans == before.plans);
    table.press(Action::undo);
    CHECK(table.session.scene() == before);
}

TEST_CASE("a challenge from a file that is none is refused, with the file's name") {
    TeachersTable table;
    table.files.contents["/fair/broken.bough.json"] = "{ oops";
    table.press(Action::take_challenge);
    for (const char* path : {"/fair/broken.bough.json", "/fair/gone.bough.json"}) {
        table.session.perform(TakeChallenge{path});
        REQUIRE(table.session.problem());
        CHECK(table.session.problem()->found.find(path + 6) != std::string::npos);
        CHECK(table.session.dialog() == Dialog::take_challenge);
        CHECK(table.challenge() == little_fair());
    }
}
