// SPDX-License-Identifier: MIT
#pragma once
// The console as a person calls it, for tests, and a plan file that it can be called on.

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "engine/storage/plan_file.h"
#include "gui/console/console.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {

struct Ran {
    int exit_code = 0;
    std::string out;
    std::string err;
};

inline Ran run(const std::vector<std::string>& words) {
    std::vector<const char*> argv{"boughwork"};
    for (const std::string& word : words) argv.push_back(word.c_str());
    std::ostringstream out;
    std::ostringstream err;
    const int exit_code = run_console(static_cast<int>(argv.size()), argv.data(), out, err);
    return {exit_code, out.str(), err.str()};
}

/// A folder that is gone after the test.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "boughwork-test-XXXXXX").string();
        REQUIRE(mkdtemp(name.data()));
        path_ = name;
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string file(const std::string& name) const { return (path_ / name).string(); }
    std::string with(const std::string& name, const std::string& content) const {
        std::ofstream(path_ / name, std::ios::binary) << content;
        return file(name);
    }
    std::string with(const std::string& name, const Scene& scene) const { return with(name, write_plan(scene)); }

private:
    std::filesystem::path path_;
};

inline std::string content_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

/// Plan 1: piece 1 counts, piece 2 is past the branch's end, piece 3 waits. Plan "all well": 1 alone.
inline Scene fair_scene() {
    SceneBuilder builder = with_level_branch();
    builder.challenge().units = Unit::cm;
    builder.challenge().name = "Little fair";
    builder.hang(triangle(1, 100, 80, 60), under(20)).hang(triangle(2, 80, 80, 80), under(340));
    builder.keep(triangle(3, 110, 70, 60));
    builder.scene.pieces[2].note = "=nice, \"red\" one";
    Plan well = builder.plan();
    well.name = "all well";
    well.hung.pop_back();
    builder.scene.plans.push_back(well);
    return builder.scene;
}

}  // namespace boughwork::testing
