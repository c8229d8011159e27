// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include <set>
#include <string>

#include "engine/storage/plan_file.h"
#include "rules/check.h"
#include "rules/rule_words.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

TEST_CASE("A wish that cannot be carried out says why and changes nothing") {
    FairTable table;
    const Scene before = table.session.scene();
    table.wish(AddPiece{triangle_mm(10, 20, 40)});
    REQUIRE(table.session.problem());
    CHECK_FALSE(table.session.problem()->to_do.empty());
    CHECK(table.session.scene() == before);
    table.wish(AddPiece{triangle_mm(30, 20, 40)});
    CHECK_FALSE(table.session.problem());
    CHECK(table.session.chosen_piece() == PieceNumber{2});
}

TEST_CASE("Looking about does not wipe away what went wrong") {
    FairTable table;
    table.wish(AddPiece{triangle_mm(10, 20, 40)});
    table.session.perform(Pan{{10, 10}});
    table.session.perform(LookFrom{2, {100, 100}});
    table.session.perform(CloseDialog{});
    CHECK(table.session.problem());
}

TEST_CASE("Undo and redo go through every change, by name") {
    FairTable table;
    table.hang(1, 60);
    table.hang(1, 90);
    const Scene last = table.session.scene();
    std::size_t steps = 0;
    for (; table.session.history().can_undo(); ++steps) table.press(Action::undo);
    CHECK(steps == 4);  // the branch, the piece, hung twice
    CHECK(table.session.scene() == new_scene());
    while (table.session.history().can_redo()) table.press(Action::redo);
    CHECK(table.session.scene() == last);
    CHECK(table.session.word() == "done again: " + in_words(Edit(Hang{{1}, {}})));
    CHECK(table.session.report() == check(last));
}

TEST_CASE("The fix of the finding that is shown puts it right, as one step") {
    FairTable table;
    table.hang(1, 270);  // the branch ends at 320, the side at 350
    REQUIRE(table.session.finding());
    CHECK(table.session.finding()->rule == Rule::runs_past_the_end);
    REQUIRE(table.session.finding_remedy());
    const std::string says = table.session.finding_remedy()->says;
    table.press(Action::fix_finding);
    CHECK(table.counts(1));
    CHECK(table.session.report().findings.empty());
    CHECK_FALSE(table.session.finding());
    CHECK(table.session.history().undo_label() == "fix: " + says);
    table.press(Action::undo);
    CHECK(table.pose(1).at_mm.x == 270);
}

TEST_CASE("The referee's findings are gone through one by one, and come round") {
    FairTable table;
    table.add(80, 60, 50);
    table.wish(Hang{{1}, {.at_mm = {100, 200}}});
    table.wish(Hang{{2}, {.at_mm = {-200, 200}}});
    REQUIRE(table.session.report().findings.size() == 2);
    const std::size_t first = table.session.finding_index();
    table.press(Action::next_finding);
    CHECK(table.session.finding_index() == 1 - first);
    table.press(Action::next_finding);
    CHECK(table.session.finding_index() == first);
    table.session.perform(ShowFinding{99});
    CHECK(table.session.finding_index() == 1);
}

TEST_CASE("A piece that is chosen has its finding shown") {
    FairTable table;
    table.add(80, 60, 50);
    table.wish(Hang{{1}, {.at_mm = {100, 200}}});
    table.wish(Hang{{2}, {.at_mm = {-200, 200}}});
    for (const int piece : {1, 2, 1}) {
        table.choose(piece);
        CHECK(table.session.finding()->pieces == std::vector<PieceNumber>{{piece}});
    }
}

TEST_CASE("The lens is there while there is a finding to look at") {
    FairTable table;
    table.press(Action::show_finding);
    CHECK_FALSE(table.session.lens());
    table.hang(1, 270);
    table.press(Action::show_finding);
    CHECK(table.session.lens());
    table.press(Action::fix_finding);
    CHECK_FALSE(table.session.lens());
}

TEST_CASE("Plans are copied, begun, named, gone through and taken out") {
    FairTable table;
    table.hang(1, 60);
    table.press(Action::copy_plan);
    CHECK(table.session.plan().name == "Plan 2");
    CHECK(table.hung(1));
    table.press(Action::new_plan);
    CHECK(table.session.plan().name == "Plan 3");
    CHECK_FALSE(table.hung(1));
    CHECK(table.session.plan().tree.branches.size() == 1);

    table.press(Action::rename_plan);
    CHECK(table.session.dialog() == Dialog::rename_plan);
    table.wish(RenamePlan{"Plan 2"});  // taken
    CHECK(table.session.problem());
    CHECK(table.session.dialog() == Dialog::rename_plan);
    table.wish(RenamePlan{"Wrens"});
    CHECK(table.session.dialog() == Dialog::none);

    table.press(Action::next_plan);
    CHECK(table.session.plan().name == "Plan 1");
    table.wish(ChoosePlan{"Wrens"});
    table.press(Action::remove_plan);
    CHECK(table.session.scene().plans.size() == 2);
    table.press(Action::remove_plan);
    CHECK_FALSE(row_of(Action::remove_plan).possible(table.session));
    table.press(Action::undo);
    CHECK(table.session.scene().plans.size() == 2);
}

TEST_CASE("Every plan has its score, and it is the referee's") {
    FairTable table;
    table.hang(1, 60);
    table.press(Action::copy_plan);
    table.add(80, 60, 50);
    table.hang(2, 160);
    const auto right = [&] {
        for (const Plan& plan : table.session.scene().plans)
            CHECK(table.session.scores().at(plan.name) == check(table.session.scene(), plan).score);
        CHECK(table.session.scores().size() == table.session.scene().plans.size());
    };
    right();
    // 80 + 60 + 50 mm is 19 cm, one point each (contract.md's example: perimeter 19.0, points 19.0).
    CHECK(table.session.scores().at("Plan 1") == Approx(19));
    CHECK(table.session.scores().at("Plan 2") == Approx(38));
    table.wish(ChoosePlan{"Plan 1"});
    right();
    table.choose(1);
    table.press(Action::throw_away);  // from both
    right();
    CHECK(table.session.scores().at("Plan 1") == 0);
    table.press(Action::undo);
    right();
    table.wish(RenamePlan{"Wrens"});
    right();
    table.grab(2, {200, 396});
    table.hold_at({200, 398});
    right();
}

TEST_CASE("Scores are those of the file that is open, however like the one before it is") {
    FairTable table;
    table.hang(1, 60);
    table.press(Action::new_plan);  // Plan 1 is not the current one
    CHECK(table.session.scores().at("Plan 1") == Approx(19));
    const auto score_of_plan_1 = [&](const Scene& scene) {
        table.files.contents["/fair/t.json"] = write_plan(scene);
        table.session.perform(OpenFile{"/fair/t.json"});
        return table.session.scores().at("Plan 1");
    };
    Scene scene = table.session.scene();
    scene.pieces[0].shape = triangle_mm(80, 60, 60);
    CHECK(score_of_plan_1(scene) == Approx(20));
    scene.challenge.score.by = ScoreBy::longest_side;
    CHECK(score_of_plan_1(scene) == Approx(8));
    scene.plans[0].hung.clear();
    CHECK(score_of_plan_1(scene) == 0);
}

TEST_CASE("A branch of one plan is not chosen in another") {
    FairTable table;
    table.press(Action::new_plan);
    table.session.perform(Choose{PickedBranch{0}});
    table.press(Action::next_plan);
    CHECK_FALSE(table.session.chosen_branch());
}

TEST_CASE("A picture card that is pressed is pointed at, until another is") {
    FairTable table;
    Scene scene = table.session.scene();
    scene.challenge.limits.pieces.least = 1;
    scene.challenge.limits.branches.least = 1;
    table.files.contents["/fair/t.json"] = write_plan(scene);
    table.session.perform(OpenFile{"/fair/t.json"});
    REQUIRE(table.session.report().challenge.size() == 2);
    table.session.perform(PointAtLine{1});
    CHECK(table.session.pointed_line() == std::size_t{1});
    table.session.perform(PointAtLine{7});
    CHECK_FALSE(table.session.pointed_line());
}

TEST_CASE("The first view shows everything, later ones stay where they were") {
    FairTable table;
    table.session.set_view({.x = 0, .y = 0, .width = 900, .height = 600});
    const Camera first = table.session.camera();
    for (const Vec2 corner : {Vec2{-30, 0}, Vec2{320, 420}, Vec2{0, 500}}) {
        const Vec2 px = to_px(first, corner);
        CHECK(px.x >= 0);
        CHECK(px.x <= 900);
        CHECK(px.y >= 0);
        CHECK(px.y <= 600);
    }
    table.session.set_view({.x = 0, .y = 0, .width = 700, .height = 500});
    CHECK(table.session.camera().centre_mm == first.centre_mm);
    CHECK(table.session.camera().px_per_mm == first.px_per_mm);
    table.press(Action::zoom_in);
    CHECK(table.session.camera().px_per_mm > first.px_per_mm);
    table.press(Action::show_all);
    CHECK(table.session.camera().px_per_mm < first.px_per_mm);  // the view is smaller now
}

TEST_CASE("Every action has one row, words, and a key of its own") {
    std::set<Action> actions;
    std::set<std::string> keys;
    for (const CommandRow& row : command_table()) {
        INFO(row.name);
        CHECK(actions.insert(row.action).second);
        CHECK(std::string(row.name).size() > 1);
        CHECK(std::string(row.help).back() == '.');
        for (const Keys& key : {row.keys, row.also})
            if (!key_name(key).empty()) CHECK(keys.insert(key_name(key)).second);
        CHECK_FALSE(key_name(row.keys).empty());
    }
    CHECK(actions.size() == static_cast<std::size_t>(Action::help) + 1);  // the last of the list
    CHECK(key_name(row_of(Action::undo).keys) == "Ctrl+Z");
    CHECK(key_name(row_of(Action::redo).also) == "Ctrl+Shift+Z");
}

TEST_CASE("A key that can do nothing does nothing") {
    FairTable table;
    table.press(Action::choose_nothing);
    const Scene before = table.session.scene();
    for (const CommandRow& row : command_table()) {
        if (row.possible(table.session)) continue;
        table.press(row.action);
        CHECK(table.session.scene() == before);
        CHECK_FALSE(table.session.problem());
    }
}

TEST_CASE("Escape drops what is held, and then what is chosen") {
    FairTable table;
    table.grab(1, {200, 100});
    table.press(Action::choose_nothing);
    CHECK_FALSE(table.session.held());
    CHECK(table.session.chosen_piece() == PieceNumber{1});
    table.press(Action::choose_nothing);
    CHECK_FALSE(table.session.chosen_piece());
}

TEST_CASE("The tour begins with the first rule each time, and goes round") {
    FairTable table;
    for (int time = 0; time < 2; ++time) {
        table.press(Action::tour);
        CHECK(table.session.dialog() == Dialog::tour);
        CHECK(table.session.tour_stop() == 0);
        table.press(Action::next_stop);
        CHECK(table.session.tour_stop() == 1);
        table.press(Action::stop_before);
        table.press(Action::stop_before);
        CHECK(table.session.tour_stop() == rules_in_order().size() - 1);
        table.session.perform(CloseDialog{});
    }
}
