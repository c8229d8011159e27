// SPDX-License-Identifier: MIT
#include "engine/storage/autosave.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <map>

#include "engine/storage/plan_file.h"
#include "tests/engine/generated_scene.h"

namespace boughwork {
namespace {

/// A disk in memory that can fail.
class MemoryFiles final : public Files {
public:
    std::map<std::string, std::string> held;
    bool full = false;

    Result<std::string> read(const std::string& path, std::size_t) override {
        if (!exists(path)) return Problem{.found = "nothing there"};
        return held[path];
    }
    Result<Done> save(const std::string& path, const std::string& content) override {
        if (full) return Problem{.found = "the disk is full"};
        held[path] = content;
        return Done{};
    }
    bool exists(const std::string& path) override { return held.count(path) > 0; }
    Result<Done> remove(const std::string& path) override {
        held.erase(path);
        return Done{};
    }
    Result<std::vector<Entry>> list(const std::string&) override { return std::vector<Entry>{}; }
};

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
    Autosave autosave(files, "/state");
    const Scene scene = SceneGenerator(11).scene();
    CHECK_FALSE(autosave.kept("/trees/wren.bough.json"));
    REQUIRE(autosave.keep("/trees/wren.bough.json", scene));
    CHECK(autosave.kept("/trees/wren.bough.json") == scene);
    REQUIRE(autosave.forget("/trees/wren.bough.json"));
    CHECK_FALSE(autosave.kept("/trees/wren.bough.json"));
    CHECK(files.held.empty());
    CHECK(autosave.forget("/trees/wren.bough.json"));
}

TEST_CASE("each plan file has a copy of its own, and a plan that was never saved has one too") {
    MemoryFiles files;
    Autosave autosave(files, "/state");
    const std::vector<std::string> paths{"", "/a/tree.bough.json", "/b/tree.bough.json", "/a/tree.2.bough.json",
                                         "/a/\xE9\xB3\xA5.bough.json"};
    for (const std::string& path : paths) {
        Scene scene = new_scene();
        scene.title = path;
        REQUIRE(autosave.keep(path, scene));
    }
    CHECK(files.held.size() == paths.size());
    for (const std::string& path : paths) CHECK(autosave.kept(path)->title == path);
}

TEST_CASE("a copy is a plan file under a name that a person can recognize") {
    MemoryFiles files;
    REQUIRE(Autosave(files, "/state").keep("/trees/Our tree, 4.bough.json", new_scene()));
    // The digits are FNV-1a 64 of "/trees/Our tree, 4.bough.json", computed apart from this program
    // with the algorithm of draft-eastlake-fnv (of which "foobar" gives 85944171f73967e8).
    CHECK(files.held.begin()->first == "/state/Our-tree--4-452dcfbaad17fcd7.bough.json");
    CHECK(files.held.begin()->second == write_plan(new_scene()));
}

TEST_CASE("a plan is the same however its path is spelled") {
    MemoryFiles files;
    Autosave autosave(files, "/state");
    REQUIRE(autosave.keep("trees/../tree.bough.json", new_scene()));
    CHECK(autosave.kept("tree.bough.json"));
    CHECK(autosave.kept((std::filesystem::current_path() / "tree.bough.json").string()));
}

TEST_CASE("a copy that cannot be read is none") {
    MemoryFiles files;
    Autosave autosave(files, "/state");
    REQUIRE(autosave.keep("/tree", new_scene()));
    files.held.begin()->second.resize(20);
    CHECK_FALSE(autosave.kept("/tree"));
}

TEST_CASE("a full disk is told, and keeps the copy from before") {
    MemoryFiles files;
    Autosave autosave(files, "/state");
    REQUIRE(autosave.keep("/tree", new_scene()));
    files.full = true;
    CHECK_FALSE(autosave.keep("/tree", SceneGenerator(1).scene()));
    CHECK(autosave.kept("/tree") == new_scene());
}

TEST_CASE("without a folder nothing is kept") {
    MemoryFiles files;
    Autosave autosave(files, "");
    CHECK(autosave.keep("/tree", new_scene()));
    CHECK_FALSE(autosave.kept("/tree"));
    CHECK(autosave.forget("/tree"));
    CHECK(files.held.empty());
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
