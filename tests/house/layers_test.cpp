// SPDX-License-Identifier: MIT
// The house rules that a compiler does not see: includes go down only (gui, rules, engine), a library stays with
// its owner, every file begins alike, and no source grows past 400 lines.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

using Lines = std::vector<std::string>;

struct Source {
    std::string path;  ///< From the root of the repository: "engine/scene.h".
    Lines lines;
};

bool begins_with(const std::string& text, const std::string& start) { return text.rfind(start, 0) == 0; }
bool ends_with(const std::string& text, const std::string& end) {
    return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

/// A library's headers begin with `header`; files that begin with one of the `owners` may include them.
struct Library {
    std::string header;
    std::vector<std::string> owners;
};

const std::vector<Library> libraries{{"nlohmann/", {"engine/storage/", "gui/console/", "gui/web/"}},
                                     {"box2d/", {"engine/settle/"}},
                                     {"cairo", {"engine/drawing/"}},
                                     {"CLI/", {"gui/console/"}},
                                     {"imgui", {"gui/window/", "gui/web/"}},
                                     {"SDL", {"gui/window/", "gui/web/"}},
                                     {"emscripten", {"gui/web/"}},
                                     {"GL/", {"gui/window/"}},
                                     {"catch2/", {"tests/"}},
                                     {"CGAL/", {"tests/"}},
                                     {"boost/", {"tests/"}}};

/// What a file of a folder may not include from this repository.
struct Layer {
    std::string folder;
    std::vector<std::string> above;
};

const std::vector<Layer> layers{{"engine/", {"rules/", "gui/", "tests/"}},
                                {"rules/", {"gui/", "tests/"}},
                                {"gui/", {"tests/"}},
                                {"gui/session/", {"gui/picture/", "gui/console/", "gui/window/", "gui/web/"}},
                                {"gui/picture/", {"gui/console/", "gui/window/", "gui/web/"}},
                                {"gui/console/", {"gui/window/", "gui/web/"}},
                                {"gui/window/", {"gui/web/"}}};

constexpr std::size_t most_lines = 400;

/// The file that a line includes, or nothing.
std::string included(const std::string& line) {
    std::istringstream words(line);
    std::string directive;
    words >> std::ws;
    if (words.get() != '#') return "";
    words >> directive >> std::ws;
    if (!begins_with(directive, "include")) return "";
    const std::size_t open = line.find_first_of("\"<");
    if (open == std::string::npos) return "";
    const std::size_t close = line.find(line[open] == '<' ? '>' : '"', open + 1);
    return close == std::string::npos ? "" : line.substr(open + 1, close - open - 1);
}

Lines complaints_about_includes(const Source& source) {
    Lines complaints;
    for (const std::string& line : source.lines) {
        const std::string file = included(line);
        if (file.empty()) continue;
        const std::string says = source.path + " includes " + file;
        if (begins_with(file, ".")) complaints.push_back(says + ": give the path from the root");
        for (const Layer& layer : layers)
            for (const std::string& above : layer.above)
                if (begins_with(source.path, layer.folder) && begins_with(file, above))
                    complaints.push_back(says + ": includes go down only");
        if (begins_with(source.path, "tests/")) continue;
        for (const Library& library : libraries) {
            bool owned = !begins_with(file, library.header);
            for (const std::string& owner : library.owners) owned = owned || begins_with(source.path, owner);
            if (!owned) complaints.push_back(says + ": that library belongs to " + library.owners.front());
        }
    }
    return complaints;
}

Lines complaints(const Source& source) {
    Lines all = complaints_about_includes(source);
    if (source.lines.empty() || source.lines.front() != "// SPDX-License-Identifier: MIT")
        all.push_back(source.path + " does not begin with its licence");
    if (ends_with(source.path, ".h") && (source.lines.size() < 2 || source.lines[1] != "#pragma once"))
        all.push_back(source.path + " is a header without #pragma once in its second line");
    if (source.lines.size() > most_lines)
        all.push_back(source.path + " has " + std::to_string(source.lines.size()) +
                      " lines: which second idea crept in?");
    return all;
}

std::vector<Source> sources_of_the_house() {
    namespace fs = std::filesystem;
    const fs::path root = BOUGHWORK_SOURCE_FOLDER;
    std::vector<Source> sources;
    for (const char* folder : {"engine", "rules", "gui", "tests"})
        for (const fs::directory_entry& entry : fs::recursive_directory_iterator(root / folder)) {
            const std::string extension = entry.path().extension().string();
            if (extension != ".h" && extension != ".cpp") continue;
            Source source{fs::relative(entry.path(), root).generic_string(), {}};
            std::ifstream file(entry.path());
            for (std::string line; std::getline(file, line);) source.lines.push_back(line);
            sources.push_back(std::move(source));
        }
    return sources;
}

std::size_t complaints_about(const std::string& path, const std::string& include) {
    return complaints_about_includes({path, {"// SPDX-License-Identifier: MIT", "#include " + include}}).size();
}

TEST_CASE("The house keeps its rules: includes go down, libraries stay with their owners, no file is too long") {
    const std::vector<Source> sources = sources_of_the_house();
    std::size_t engine = 0;
    std::size_t rules = 0;
    std::size_t gui = 0;
    for (const Source& source : sources) {
        engine += begins_with(source.path, "engine/");
        rules += begins_with(source.path, "rules/");
        gui += begins_with(source.path, "gui/");
        for (const std::string& complaint : complaints(source)) {
            UNSCOPED_INFO(complaint);
            CHECK(complaint.empty());
        }
    }
    // The walk has seen the whole house.
    CHECK(engine > 20);
    CHECK(rules > 10);
    CHECK(gui > 20);
}

TEST_CASE("An include that goes up is seen") {
    CHECK(complaints_about("engine/scene.cpp", "\"rules/report.h\"") == 1);
    CHECK(complaints_about("engine/geometry/shape.h", "\"gui/session/session.h\"") == 1);
    CHECK(complaints_about("rules/check.cpp", "\"gui/session/session.h\"") == 1);
    CHECK(complaints_about("gui/session/session.cpp", "\"gui/window/window.h\"") == 1);
    CHECK(complaints_about("gui/main.cpp", "\"tests/rules/scene_builder.h\"") == 1);
    CHECK(complaints_about("rules/check.cpp", "\"../gui/session/session.h\"") == 1);
    CHECK(complaints_about("rules/check.cpp", "\"engine/scene.h\"") == 0);
    CHECK(complaints_about("gui/window/window.cpp", "\"gui/session/session.h\"") == 0);
    CHECK(complaints_about("gui/window/window.cpp", "\"rules/check.h\"") == 0);
}

TEST_CASE("A library outside the folder that owns it is seen") {
    CHECK(complaints_about("engine/edit.cpp", "<nlohmann/json.hpp>") == 1);
    CHECK(complaints_about("engine/storage/plan_reader.cpp", "<nlohmann/json.hpp>") == 0);
    CHECK(complaints_about("gui/picture/plan_picture.cpp", "<cairo/cairo.h>") == 1);
    CHECK(complaints_about("gui/picture/plan_picture.cpp", "<cairo.h>") == 1);
    CHECK(complaints_about("engine/drawing/cairo_pages.cpp", "<cairo.h>") == 0);
    CHECK(complaints_about("gui/main.cpp", "<CLI/CLI.hpp>") == 1);
    CHECK(complaints_about("gui/session/session.cpp", "<imgui.h>") == 1);
    CHECK(complaints_about("gui/session/session.cpp", "<SDL2/SDL.h>") == 1);
    CHECK(complaints_about("gui/session/session.cpp", "  <SDL.h>") == 1);
    CHECK(complaints_about("gui/window/screen.cpp", "<GL/gl.h>") == 0);
    CHECK(complaints_about("rules/check.cpp", "<catch2/catch.hpp>") == 1);
    CHECK(complaints_about("tests/engine/plan_file_test.cpp", "<nlohmann/json.hpp>") == 0);
    CHECK(complaints_about("engine/scene.cpp", "<vector>") == 0);
}

TEST_CASE("A file without its licence, a header without its guard and a long file are seen") {
    const Lines good{"// SPDX-License-Identifier: MIT", "#pragma once", "int x;"};
    CHECK(complaints({"engine/scene.h", good}).empty());
    CHECK(complaints({"engine/scene.h", {good[1], good[0]}}).size() == 2);
    CHECK(complaints({"engine/scene.h", {good[0], good[2]}}).size() == 1);
    CHECK(complaints({"engine/scene.cpp", {good[0], good[2]}}).empty());
    CHECK(complaints({"engine/scene.cpp", {good[2]}}).size() == 1);
    CHECK(complaints({"engine/scene.cpp", {}}).size() == 1);
    Lines longer(most_lines, "");
    longer[0] = good[0];
    CHECK(complaints({"engine/scene.cpp", longer}).empty());
    longer.push_back("");
    CHECK(complaints({"engine/scene.cpp", longer}).size() == 1);
}

}  // namespace
