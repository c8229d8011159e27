// SPDX-License-Identifier: MIT
#include "engine/storage/autosave.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <memory>

#include "engine/storage/plan_file.h"
#include "tests/engine/edited.h"
#include "tests/engine/generated_scene.h"
#include "tests/session/memory_files.h"

namespace boughwork {
namespace {

/// Sets an environment variable until the end of the scope; null: takes it out.
class Environment {
public:
    Environment(const char* name, const char* value) : name_(name) {
        if (const char* old = std::getenv(name)) old_ = old;
        set(value);
    }
    ~Environment() { set(old_ ? old_->c_str() : nullptr); }

private:
    void set(const char* value) const {
        if (value) {
            ::setenv(name_, value, 1);
        } else {
            ::unsetenv(name_);
        }
    }
    const char* name_;
    std::optional<std::string> old_;
};

}  // namespace

TEST_CASE("what was kept comes back, until it is forgotten") {
    MemoryFiles files;
    const Scene scene = SceneGenerator(11).scene();
    {
        Autosave autosave(files, "/kept");
        CHECK_FALSE(autosave.open("/trees/wren.bough.json"));
        REQUIRE(autosave.keep(scene));
        CHECK(autosave.kept() == scene);
    }
    Autosave later(files, "/kept");
    CHECK(later.open("/trees/wren.bough.json") == scene);
    CHECK_FALSE(later.shared());
    REQUIRE(later.forget());
    CHECK_FALSE(later.kept());
    CHECK(files.contents.empty());
    CHECK(later.forget());
}

TEST_CASE("each plan file has a copy of its own, and a plan that was never saved has one too") {
    MemoryFiles files;
    const std::vector<std::string> paths{"", "/a/tree.bough.json", "/b/tree.bough.json", "/a/tree.2.bough.json",
                                         "/a/\xE9\xB3\xA5.bough.json"};
    Autosave autosave(files, "/kept");
    for (const std::string& path : paths) {
        CHECK_FALSE(autosave.open(path));
        REQUIRE(autosave.keep(titled(path)));
    }
    CHECK(files.kept() == paths.size());
    for (const std::string& path : paths) CHECK(autosave.open(path) == titled(path));
}

TEST_CASE("a copy is not offered to a plan whose file only looks like its own") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("/tree");
    REQUIRE(autosave.keep(titled("Robins")));
    const std::string copy = files.contents.begin()->first;
    CHECK_FALSE(autosave.open(copy));  // the copy itself, opened as a plan
    REQUIRE(autosave.keep(titled("Wrens")));
    CHECK(autosave.open("/tree") == titled("Robins"));
    REQUIRE(autosave.forget());
    CHECK_FALSE(autosave.open("/tree"));
    CHECK_FALSE(autosave.open("/trees"));
    CHECK_FALSE(autosave.open("/fair/tree"));
}

TEST_CASE("two windows at one plan keep a copy each, and neither is offered the other's") {
    MemoryFiles files;
    Autosave first(files, "/kept");
    Autosave second(files, "/kept");
    first.open("/tree");
    REQUIRE(first.keep(titled("Robins")));
    CHECK_FALSE(second.open("/tree"));
    CHECK(second.shared());
    REQUIRE(second.keep(titled("Wrens")));
    CHECK(first.kept() == titled("Robins"));

    SECTION("one that saves forgets its own alone") {
        REQUIRE(second.forget());
        CHECK(first.kept() == titled("Robins"));
    }
    SECTION("after a crash of both, both are offered, one after the other") {
        files.end_all_programs();
        Autosave third(files, "/kept");
        CHECK(third.open("/tree") == titled("Robins"));
        Autosave fourth(files, "/kept");
        CHECK(fourth.open("/tree") == titled("Wrens"));
        REQUIRE(third.forget());
        CHECK_FALSE(third.open("/tree"));
    }
    SECTION("after a crash of one alone, its copy is offered, whichever it was") {
        REQUIRE(first.forget());
        files.end_all_programs();
        CHECK(Autosave(files, "/kept").open("/tree") == titled("Wrens"));
    }
}

TEST_CASE("a plan that takes the place of another leaves the copy that waits there") {
    MemoryFiles files;
    Autosave(files, "/kept").open("/tree");
    {
        Autosave crashed(files, "/kept");
        crashed.open("/tree");
        REQUIRE(crashed.keep(titled("Robins")));
    }
    Autosave other(files, "/kept");
    other.begin("/tree");
    REQUIRE(other.keep(titled("Wrens")));
    REQUIRE(other.forget());
    CHECK(files.kept() == 1);
    CHECK(other.open("/tree") == titled("Robins"));
}

TEST_CASE("more windows at one plan than can keep a copy are told") {
    MemoryFiles files;
    std::vector<std::unique_ptr<Autosave>> windows;
    bool told = false;
    for (int i = 0; i < 300 && !told; ++i) {
        windows.push_back(std::make_unique<Autosave>(files, "/kept"));
        windows.back()->open("/tree");
        told = !windows.back()->keep(new_scene());
    }
    CHECK(told);
    CHECK(files.kept() == windows.size() - 1);
    REQUIRE(windows.front()->forget());
    windows.erase(windows.begin());  // where one closes, another finds its place
    CHECK(windows.back()->keep(new_scene()));
}

TEST_CASE("a copy is a plan file under a name that a person can recognize") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("/trees/Our tree, 4.bough.json");
    REQUIRE(autosave.keep(new_scene()));
    // The digits are FNV-1a 64 of "/trees/Our tree, 4.bough.json", computed apart from this program
    // with the algorithm of draft-eastlake-fnv (of which "foobar" gives 85944171f73967e8).
    CHECK(files.contents.begin()->first == "/kept/Our-tree--4-452dcfbaad17fcd7.bough.json");
    CHECK(files.contents.begin()->second == write_plan(new_scene()));
}

TEST_CASE("a plan is the same however its path is spelled") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("trees/../tree.bough.json");
    REQUIRE(autosave.keep(new_scene()));
    CHECK(autosave.open("tree.bough.json"));
    CHECK(autosave.open((std::filesystem::current_path() / "tree.bough.json").string()));
}

TEST_CASE("a copy that cannot be read is none, and is left alone") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("/tree");
    REQUIRE(autosave.keep(titled("Robins")));
    const std::string path = files.contents.begin()->first;
    files.contents[path] = "{\"format\": \"bough";
    CHECK_FALSE(autosave.open("/tree"));
    REQUIRE(autosave.keep(titled("Wrens")));
    CHECK(files.contents[path] == "{\"format\": \"bough");
    CHECK(autosave.open("/tree") == titled("Wrens"));
}

TEST_CASE("a full disk is told, keeps the copy from before, and is tried again") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("/tree");
    REQUIRE(autosave.keep(titled("Robins")));
    files.full = true;
    CHECK_FALSE(autosave.keep(titled("Wrens")));
    CHECK(autosave.kept() == titled("Robins"));
    CHECK_FALSE(autosave.open("/owls"));
    CHECK_FALSE(autosave.keep(titled("Owls")));
    files.full = false;
    CHECK(autosave.keep(titled("Owls")));
    CHECK(autosave.open("/tree") == titled("Robins"));
}

TEST_CASE("a plan too large to be opened again is not kept over one that is not") {
    MemoryFiles files;
    Autosave autosave(files, "/kept");
    autosave.open("/tree");
    REQUIRE(autosave.keep(titled("Robins")));
    const Result<Done> kept = autosave.keep(titled(std::string(largest_file_bytes, 'x')));
    REQUIRE_FALSE(kept);
    CHECK(kept.problem().found.find("16 MiB") != std::string::npos);
    CHECK(autosave.kept() == titled("Robins"));
}

TEST_CASE("without a folder nothing is kept") {
    MemoryFiles files;
    Autosave autosave(files, "");
    CHECK_FALSE(autosave.open("/tree"));
    CHECK(autosave.keep(new_scene()));
    CHECK_FALSE(autosave.kept());
    CHECK(autosave.forget());
    CHECK(files.contents.empty());
}

TEST_CASE("copies lie in the machine's folder for state") {
    // XDG Base Directory Specification 0.8: XDG_STATE_HOME, else ~/.local/state; relative paths are ignored.
    {
        const Environment state("XDG_STATE_HOME", "/var/state");
        const Environment home("HOME", "/home/wren");
        CHECK(autosave_folder() == "/var/state/boughwork");
    }
    for (const char* ignored : {static_cast<const char*>(nullptr), "", "state"}) {
        const Environment state("XDG_STATE_HOME", ignored);
        const Environment home("HOME", "/home/wren");
        CHECK(autosave_folder() == "/home/wren/.local/state/boughwork");
    }
    const Environment state("XDG_STATE_HOME", nullptr);
    const Environment home("HOME", nullptr);
    CHECK(autosave_folder().empty());
}

}  // namespace boughwork
