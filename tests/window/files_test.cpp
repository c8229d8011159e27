// SPDX-License-Identifier: MIT
// Opening and saving from the window; what goes wrong leaves the plan.
#include "engine/storage/plan_file.h"
#include "tests/window/driven_window.h"

using namespace boughwork;

namespace {

void drop(DrivenWindow& it, const std::string& path) {
    SDL_Event event{};
    event.type = SDL_DROPFILE;
    event.drop.file = SDL_strdup(path.c_str());
    it.frame({event});
    it.frames();
}

}  // namespace

TEST_CASE("a file that is no plan is refused, says where, and leaves the open plan") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    it.files.contents["/fair/broken.bough.json"] = "{\n  \"format\": \"boughwork\",\n  oops\n}";
    it.click("file");
    it.click("open");
    REQUIRE(it.session().dialog() == Dialog::open);
    it.click("file broken.bough.json");
    CHECK(it.session().dialog() == Dialog::open);
    REQUIRE(it.session().problem());
    it.save_picture("files_refused");
    it.click("never mind");
    CHECK(it.session().dialog() == Dialog::none);
    CHECK(it.session().scene() == before);
    CHECK(it.session().path() == example_path);
    REQUIRE(it.session().problem());
    CHECK(in_words(*it.session().problem()).find("3") != std::string::npos);
    it.save_picture("files_refused_on_the_page");
}

TEST_CASE("a file is opened from the list, and from a path that is typed") {
    DrivenWindow it;
    it.open_example();
    Scene other = new_scene();
    other.title = "Owl table";
    it.files.contents["/fair/owl.bough.json"] = write_plan(other);
    it.key(SDLK_o, KMOD_LCTRL);
    it.save_picture("files_open");
    it.click("file owl.bough.json");
    CHECK(it.session().scene().title == "Owl table");
    CHECK(it.session().dialog() == Dialog::none);

    it.key(SDLK_o, KMOD_LCTRL);
    it.type(example_path);
    it.key(SDLK_RETURN);
    CHECK(it.session().path() == example_path);
}

TEST_CASE("a file dropped on the window is opened") {
    DrivenWindow it;
    it.open_example();
    Scene other = new_scene();
    other.title = "Owl table";
    it.files.contents["/fair/owl.bough.json"] = write_plan(other);
    drop(it, "/fair/owl.bough.json");
    CHECK(it.session().scene().title == "Owl table");
    drop(it, "/fair/not_there.bough.json");
    CHECK(it.session().scene().title == "Owl table");
    CHECK(it.session().problem());
}

TEST_CASE("saving under the name of another file asks first") {
    DrivenWindow it;
    it.open_example();
    it.files.contents["/fair/owl.bough.json"] = "precious";
    it.key(SDLK_s, KMOD_LCTRL | KMOD_LSHIFT);
    REQUIRE(it.session().dialog() == Dialog::save_as);
    it.click("file owl.bough.json");
    it.save_picture("files_save_as");
    it.click("save");
    REQUIRE(it.session().dialog() == Dialog::replace_file);
    it.save_picture("files_replace");
    CHECK(it.files.contents["/fair/owl.bough.json"] == "precious");
    it.click("never mind");
    CHECK(it.files.contents["/fair/owl.bough.json"] == "precious");

    it.key(SDLK_s, KMOD_LCTRL | KMOD_LSHIFT);
    it.click("file owl.bough.json");
    it.click("save");
    it.click("replace it");
    CHECK(it.session().path() == "/fair/owl.bough.json");
    CHECK(it.session().dialog() == Dialog::none);
    const auto saved = read_plan(it.files.contents["/fair/owl.bough.json"]);
    REQUIRE(saved);
    CHECK(*saved == it.session().scene());
}

TEST_CASE("saving over a file that somebody changed asks first, in words of its own") {
    DrivenWindow it;
    it.open_example();
    it.wish(SetTitle{"Robin table"});
    const std::string theirs = it.files.contents[example_path] + "\n";
    it.files.contents[example_path] = theirs;
    it.key(SDLK_s, KMOD_LCTRL);
    REQUIRE(it.session().dialog() == Dialog::replace_file);
    it.save_picture("files_changed");
    it.click("never mind");
    CHECK(it.files.contents[example_path] == theirs);
    it.key(SDLK_s, KMOD_LCTRL);
    it.click("another name");
    REQUIRE(it.session().dialog() == Dialog::save_as);
    it.click("never mind");
    it.key(SDLK_s, KMOD_LCTRL);
    it.click("replace it");
    CHECK(read_plan(it.files.contents[example_path])->title == "Robin table");
    CHECK(it.session().word() == "saved");

    it.files.contents.erase(example_path);
    it.key(SDLK_s, KMOD_LCTRL);
    it.save_picture("files_gone");
    it.click("make it again");
    CHECK(it.files.contents.count(example_path) == 1);
}

TEST_CASE("a window that can keep nothing asks before it closes") {
    DrivenWindow it;
    it.open_example();
    it.wish(SetTitle{"Robin table"});
    it.files.full = true;
    it.perform(Leave{});
    REQUIRE(it.session().dialog() == Dialog::leave);
    it.save_picture("files_leave");
    it.click("never mind");
    CHECK_FALSE(it.session().left());
    it.perform(Leave{});
    it.click("save as");
    REQUIRE(it.session().dialog() == Dialog::save_as);
    it.click("never mind");
    it.perform(Leave{});
    it.click("end and lose them");
    CHECK(it.session().left());
}

TEST_CASE("a new tree is saved under a name made of its title") {
    DrivenWindow it;
    it.wish(SetTitle{"Robin table, no. 4"});
    it.key(SDLK_s, KMOD_LCTRL);
    REQUIRE(it.session().dialog() == Dialog::save_as);
    it.key(SDLK_RETURN);
    CHECK(it.session().path() == "robin_table_no_4.bough.json");
    CHECK_FALSE(it.session().unsaved());
}

TEST_CASE("what was not saved when the program ended is found at the next start") {
    std::map<std::string, std::string> disk;
    {
        DrivenWindow it;
        it.wish(SetTitle{"Robin table"});
        it.frames(60);
        REQUIRE(it.files.kept() == 1);
        disk = it.files.contents;
    }
    {
        DrivenWindow it(1280, 800, 1, disk);
        REQUIRE(it.session().dialog() == Dialog::recover);
        it.save_picture("files_recover");
        it.key(SDLK_ESCAPE);  // there must be an answer
        REQUIRE(it.session().dialog() == Dialog::recover);
        it.click("take it back");
        CHECK(it.session().scene().title == "Robin table");
        CHECK(it.session().dialog() == Dialog::none);
    }
    DrivenWindow it(1280, 800, 1, disk);
    REQUIRE(it.session().dialog() == Dialog::recover);
    it.click("throw it away");
    CHECK(it.session().scene() == new_scene());
    CHECK(it.files.kept() == 0);
}

TEST_CASE("a plan gets another name, and a name that is taken is refused with the reason") {
    DrivenWindow it;
    it.open_example();
    it.click("plan Plan 1");
    it.click("rename plan");
    REQUIRE(it.session().dialog() == Dialog::rename_plan);
    it.type("Plan 2");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::rename_plan);
    CHECK(it.session().problem());
    it.save_picture("files_rename");
    it.key(SDLK_ESCAPE);
    CHECK(it.session().plan().name == "Plan 1");

    it.click("plan Plan 1");
    it.click("rename plan");
    it.type("Robins");
    it.click("rename");
    CHECK(it.session().plan().name == "Robins");
    CHECK(it.session().dialog() == Dialog::none);
}

TEST_CASE("plans are copied, made and thrown away from their tabs") {
    DrivenWindow it;
    it.open_example();
    it.click("new plan");
    CHECK(it.session().plan().hung.empty());
    CHECK(it.session().scene().plans.size() == 3);
    it.click("plan " + it.session().plan().name);
    it.click("throw this plan away");
    CHECK(it.session().scene().plans.size() == 2);
    if (it.session().plan().name != "Plan 2") it.click("plan Plan 2");
    it.click("plan Plan 2");
    it.click("copy plan");
    CHECK(it.session().scene().plans.size() == 3);
    CHECK(it.session().plan().hung == find_plan(it.session().scene(), "Plan 2")->hung);
    for (int i = 0; i < 6; ++i) it.click("new plan");
    it.save_picture("files_many_plans");
    CHECK(it.shows("plan " + it.session().plan().name));
    CHECK_FALSE(it.shows("plan Plan 1"));
    for (int i = 0; i < 8; ++i) it.click("earlier plans");
    it.click("plan Plan 1");
    CHECK(it.session().plan().name == "Plan 1");
}
