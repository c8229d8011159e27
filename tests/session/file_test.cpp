// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "engine/storage/plan_file.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

std::string a_file(const std::string& title) {
    Scene scene = new_scene();
    scene.title = title;
    return write_plan(scene);
}

}  // namespace

TEST_CASE("Save and open give the same scene again") {
    FairTable table;
    table.hang(1, 60);
    table.press(Action::copy_plan);
    const Scene saved = table.session.scene();
    table.session.perform(SaveFile{"/fair/table4"});
    CHECK(table.session.path() == "/fair/table4.bough.json");
    CHECK_FALSE(table.session.unsaved());
    CHECK(table.session.word() == "saved");

    Session other(table.files, "/kept");
    other.perform(OpenFile{"/fair/table4.bough.json"});
    CHECK(other.scene() == saved);
    CHECK(other.path() == "/fair/table4.bough.json");
    CHECK_FALSE(other.unsaved());
    CHECK(other.report() == table.session.report());
}

TEST_CASE("A path with an extension keeps it") {
    CHECK(with_extension("/fair/table4") == "/fair/table4.bough.json");
    CHECK(with_extension("/fair/table4.json") == "/fair/table4.json");
    CHECK(with_extension("/fair.2/table4") == "/fair.2/table4.bough.json");
}

TEST_CASE("Save without a file asks for a name, then saves there again and again") {
    FairTable table;
    table.press(Action::save);
    CHECK(table.session.dialog() == Dialog::save_as);
    CHECK(table.files.contents.empty());
    table.session.perform(SaveFile{"/fair/t.json"});
    CHECK(table.session.dialog() == Dialog::none);
    table.hang(1, 60);
    CHECK(table.session.unsaved());
    table.press(Action::save);
    CHECK_FALSE(table.session.unsaved());
    CHECK(*read_plan(table.files.contents["/fair/t.json"]) == table.session.scene());
}

TEST_CASE("Saving onto another file asks first") {
    FairTable table;
    table.files.contents["/fair/robins.bough.json"] = a_file("Robins");
    table.session.perform(SaveFile{"/fair/robins"});
    CHECK(table.session.dialog() == Dialog::replace_file);
    CHECK(table.session.replace_path() == "/fair/robins.bough.json");
    CHECK(table.files.contents["/fair/robins.bough.json"] == a_file("Robins"));
    table.session.perform(SaveFile{table.session.replace_path(), true});
    CHECK(table.files.contents["/fair/robins.bough.json"] == write_plan(table.session.scene()));
    CHECK(table.session.dialog() == Dialog::none);
}

TEST_CASE("A save that fails keeps everything, and says so") {
    FairTable table;
    table.files.full = true;
    table.session.perform(SaveFile{"/fair/t.json"});
    REQUIRE(table.session.problem());
    CHECK(table.session.path().empty());
    CHECK(table.session.unsaved());
    CHECK(table.session.word().empty());
    table.files.full = false;
    table.session.perform(SaveFile{"/fair/t.json"});
    CHECK_FALSE(table.session.problem());
}

TEST_CASE("A file that is refused leaves the open plan as it was") {
    FairTable table;
    table.hang(1, 60);
    table.choose(1);
    table.session.perform(SaveFile{"/fair/t.json"});
    table.press(Action::nudge_right);
    const Scene before = table.session.scene();
    table.files.contents["/fair/broken.bough.json"] = "{\"format\": \"boughwork\",";
    table.files.contents["/fair/other.bough.json"] = "{\"format\": \"something else\", \"version\": 1}";
    for (const char* path : {"/fair/broken.bough.json", "/fair/other.bough.json", "/fair/missing.bough.json"}) {
        table.session.perform(OpenFile{path});
        INFO(path);
        REQUIRE(table.session.problem());
        CHECK_FALSE(table.session.problem()->found.empty());
        CHECK(table.session.scene() == before);
        CHECK(table.session.path() == "/fair/t.json");
        CHECK(table.session.history().can_undo());
        CHECK(table.session.chosen_piece() == PieceNumber{1});
        CHECK(table.session.unsaved());
    }
}

TEST_CASE("Opening another file loses nothing that was not saved") {
    FairTable table;
    table.session.perform(SaveFile{"/fair/t.json"});
    table.hang(1, 60);
    const Scene unsaved = table.session.scene();
    table.files.contents["/fair/robins.json"] = a_file("Robins");
    table.session.perform(OpenFile{"/fair/robins.json"});
    CHECK(table.session.scene().title == "Robins");
    CHECK_FALSE(table.session.history().can_undo());
    CHECK(table.session.dialog() == Dialog::none);

    table.session.perform(OpenFile{"/fair/t.json"});
    CHECK(table.session.dialog() == Dialog::recover);
    REQUIRE(table.session.recovered());
    CHECK(*table.session.recovered() == unsaved);
    table.session.perform(Recover{true});
    CHECK(table.session.scene() == unsaved);
    CHECK(table.session.unsaved());
    CHECK(table.session.dialog() == Dialog::none);
    table.press(Action::undo);
    CHECK_FALSE(table.hung(1));
}

TEST_CASE("When no copy can be kept, an unsaved plan does not make way for another") {
    FairTable table;
    table.files.contents["/fair/robins.json"] = a_file("Robins");
    const Scene before = table.session.scene();
    SECTION("the disk is full") {
        table.files.full = true;
        table.session.perform(OpenFile{"/fair/robins.json"});
        CHECK(table.session.problem());
        CHECK(table.session.scene() == before);
    }
    SECTION("there is no folder to keep it in") {
        Session homeless(table.files, "");
        homeless.perform(Wish{SetTitle{"Wrens"}});
        homeless.perform(OpenFile{"/fair/robins.json"});
        CHECK(homeless.problem());
        CHECK(homeless.scene().title == "Wrens");
    }
}

TEST_CASE("An unsaved scene is kept within half a second, and a new session offers it") {
    FairTable table;
    CHECK(table.session.waits_for_tick());
    table.session.tick(100.0);
    CHECK(table.files.kept() == 0);
    for (double now = 100.05; now < 100.45; now += 0.05) {
        table.session.perform(Wish{SetTitle{"at " + std::to_string(now)}});  // changes all the while
        table.session.tick(now);
    }
    CHECK(table.files.kept() == 1);
    table.session.tick(100.5);
    table.session.tick(100.9);
    CHECK_FALSE(table.session.waits_for_tick());
    const Scene left = table.session.scene();

    table.files.end_all_programs();
    Session after_the_crash(table.files, "/kept");
    CHECK(after_the_crash.dialog() == Dialog::recover);
    REQUIRE(after_the_crash.recovered());
    CHECK(*after_the_crash.recovered() == left);
    SECTION("taken, it is an unsaved change that can be undone") {
        after_the_crash.perform(Recover{true});
        CHECK(after_the_crash.scene() == left);
        CHECK(after_the_crash.unsaved());
        CHECK_FALSE(after_the_crash.recovered());
        after_the_crash.perform(Press{Action::undo});
        CHECK(after_the_crash.scene() == new_scene());
    }
    SECTION("thrown away, it is not offered again") {
        after_the_crash.perform(Recover{false});
        CHECK(after_the_crash.scene() == new_scene());
        CHECK(table.files.kept() == 0);
        CHECK(Session(table.files, "/kept").dialog() == Dialog::none);
    }
    SECTION("until it is answered, nothing is kept over it") {
        after_the_crash.perform(Press{Action::help});
        after_the_crash.perform(CloseDialog{});
        CHECK(after_the_crash.dialog() == Dialog::recover);
        after_the_crash.perform(Wish{SetTitle{"Wrens"}});
        after_the_crash.tick(0);
        after_the_crash.tick(10);
        after_the_crash.perform(SaveFile{"/fair/wrens.json"});
        CHECK(*Session(table.files, "/kept").recovered() == left);
    }
}

TEST_CASE("After a save, and after an undo back to what was saved, no copy is left") {
    FairTable table;
    table.session.tick(0);
    table.session.tick(0.5);
    CHECK(table.files.kept() == 1);
    table.session.perform(SaveFile{"/fair/t.json"});
    CHECK(table.files.kept() == 0);
    table.hang(1, 60);
    table.session.tick(1);
    table.session.tick(1.5);
    CHECK(table.files.kept() == 1);
    table.press(Action::undo);
    table.session.tick(1.6);
    CHECK(table.files.kept() == 0);
    CHECK_FALSE(table.session.waits_for_tick());
}

TEST_CASE("A copy that could not be kept is told, and tried again") {
    FairTable table;
    table.files.full = true;
    table.session.tick(0);
    table.session.tick(0.5);
    CHECK(table.session.problem());
    table.files.full = false;
    table.session.tick(1);
    table.session.tick(1.5);
    CHECK(table.files.kept() == 1);
}

TEST_CASE("A new tree can be undone as long as nothing was saved") {
    FairTable table;
    const Scene before = table.session.scene();
    table.press(Action::new_tree);
    CHECK(table.session.scene() == new_scene());
    table.press(Action::undo);
    CHECK(table.session.scene() == before);
}

TEST_CASE("A new tree leaves the saved file alone") {
    FairTable table;
    table.session.perform(SaveFile{"/fair/t.json"});
    const std::string saved = table.files.contents["/fair/t.json"];
    table.press(Action::new_tree);
    CHECK(table.session.path().empty());
    CHECK(table.session.scene() == new_scene());
    table.press(Action::save);
    CHECK(table.session.dialog() == Dialog::save_as);
    CHECK(table.files.contents["/fair/t.json"] == saved);
}

TEST_CASE("What a hand holds is kept as it is seen, and forgotten when the hand is called back") {
    FairTable table;
    table.hang(1, 60);
    table.session.perform(SaveFile{"/fair/t.json"});
    table.grab(1, table.pose(1).at_mm);
    table.hold_at({200, 300}, true);
    const Scene seen = table.session.scene();
    REQUIRE(seen != table.session.history().scene());
    CHECK(table.session.waits_for_tick());
    table.session.tick(0);
    table.session.tick(0.5);
    CHECK_FALSE(table.session.waits_for_tick());

    SECTION("a crash then loses nothing that was seen") {
        table.files.end_all_programs();
        Session after(table.files, "/kept");
        after.perform(OpenFile{"/fair/t.json"});
        REQUIRE(after.recovered());
        CHECK(*after.recovered() == seen);
    }
    SECTION("called back, the scene is the saved one again") {
        table.session.perform(CancelHold{});
        table.session.tick(1);
        CHECK(table.files.kept() == 0);
    }
    SECTION("let go, there is nothing more to keep") {
        table.let_go();
        CHECK_FALSE(table.session.waits_for_tick());
        CHECK(table.files.kept() == 1);
    }
}

TEST_CASE("A plan that another program changed is asked about before it is saved over") {
    FairTable table;
    table.session.perform(SaveFile{"/fair/t.json"});
    table.hang(1, 60);
    table.files.contents["/fair/t.json"] = a_file("Robins");
    SECTION("with the key") { table.press(Action::save); }
    SECTION("with the dialog") { table.session.perform(SaveFile{"/fair/t.json"}); }
    CHECK(table.session.dialog() == Dialog::replace_file);
    CHECK(table.session.in_the_way() == InTheWay::changed);
    CHECK(table.files.contents["/fair/t.json"] == a_file("Robins"));
    table.session.perform(SaveFile{table.session.replace_path(), true});
    CHECK(table.session.word() == "saved");
    table.press(Action::undo);
    table.press(Action::save);
    CHECK(table.session.word() == "saved");
}

TEST_CASE("A plan that was taken away is asked about before it is made again") {
    FairTable table;
    table.session.perform(SaveFile{"/fair/t.json"});
    table.files.contents.clear();
    table.press(Action::save);
    CHECK(table.session.in_the_way() == InTheWay::gone);
    CHECK(table.files.contents.empty());
    table.session.perform(SaveFile{table.session.replace_path(), true});
    CHECK(table.files.contents.count("/fair/t.json") == 1);
}

TEST_CASE("A second window at a plan is told, one at a plan of its own is not") {
    FairTable table;
    table.session.perform(SaveFile{"/fair/t.json"});
    Session second(table.files, "/kept");
    CHECK_FALSE(second.problem());
    second.perform(OpenFile{"/fair/t.json"});
    REQUIRE(second.problem());
    CHECK(second.path() == "/fair/t.json");
    second.perform(Press{Action::new_tree});
    CHECK_FALSE(second.problem());
    table.session.perform(OpenFile{"/fair/t.json"});
    CHECK_FALSE(table.session.problem());
}

TEST_CASE("A new tree in a second window is not taken for what a crash left of the first") {
    FairTable table;
    table.session.tick(0);
    table.session.tick(1);
    REQUIRE(table.files.kept() == 1);
    Session second(table.files, "/kept");
    CHECK(second.dialog() == Dialog::none);
    second.perform(Wish{SetTitle{"Wrens"}});
    second.tick(0);
    second.tick(1);
    CHECK(table.files.kept() == 2);
    second.perform(SaveFile{"/fair/wrens.json"});
    CHECK(table.files.kept() == 1);
}

TEST_CASE("A file opened as a new tree is only looked at: a save asks for a name") {
    FairTable table;
    table.files.contents["/fair/example.json"] = a_file("Example");
    table.session.perform(OpenFile{"/fair/example.json", true});
    CHECK(table.session.scene().title == "Example");
    CHECK(table.session.path().empty());
    CHECK_FALSE(table.session.unsaved());
    table.wish(SetTitle{"Robins"});
    table.press(Action::save);
    CHECK(table.session.dialog() == Dialog::save_as);
    CHECK(table.files.contents["/fair/example.json"] == a_file("Example"));
}

TEST_CASE("The program ends once everything is saved or kept, and otherwise asks") {
    FairTable table;
    SECTION("saved") {
        table.session.perform(SaveFile{"/fair/t.json"});
        table.session.perform(Leave{});
        CHECK(table.session.left());
        CHECK(table.files.kept() == 0);
    }
    SECTION("kept, with what a hand holds") {
        table.hang(1, 60);
        table.grab(1, table.pose(1).at_mm);
        table.hold_at({200, 300}, true);
        const Scene seen = table.session.scene();
        table.session.perform(Leave{});
        CHECK(table.session.left());
        table.files.end_all_programs();
        CHECK(Session(table.files, "/kept").recovered() == seen);
    }
    SECTION("neither: the disk is full") {
        table.files.full = true;
        table.session.perform(Leave{});
        CHECK_FALSE(table.session.left());
        CHECK(table.session.dialog() == Dialog::leave);
        REQUIRE(table.session.problem());
        table.session.perform(CloseDialog{});
        CHECK(table.session.dialog() == Dialog::none);
        table.session.perform(Leave{true});
        CHECK(table.session.left());
    }
    SECTION("neither: there is no folder for copies") {
        Session homeless(table.files, "");
        homeless.perform(Wish{SetTitle{"Wrens"}});
        homeless.perform(Leave{});
        CHECK_FALSE(homeless.left());
        homeless.perform(SaveFile{"/fair/wrens.json"});
        homeless.perform(Leave{});
        CHECK(homeless.left());
    }
}
