// SPDX-License-Identifier: MIT
// No text of two or more words reaches a person unsaid: in the sources every such literal stands in say(...) or
// phrase(...), is a widget's label, or is one of the few that are written and not said.
#include <catch2/catch.hpp>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <vector>

namespace boughwork {
namespace {

/// What files and other programs read, in whole sources.
const std::set<std::string> written{
    "engine/storage/plan_words.h",  // the words of the plan file
    "gui/console/console.cpp",      // --help
    "gui/console/hands_json.cpp",
    "gui/console/settled_json.cpp",  // names in the JSON
    "gui/console/table_rows.cpp",    // headings and words of the CSV
    "gui/session/table_rows.cpp",
    "gui/picture/palette.h",  // what pairs of colours are for: read by tests
};

/// Symbols of units, names to count on from that a file keeps, and what is meant for a library.
const std::set<std::string> plain{" mm",          " cm",         " MiB",     "Plan ",     "Plan 1",
                                  "Bell ",        " class",      "\\n  ",    R"( \t)",    R"( \t\r\n)",
                                  "#version 150", "Little fair", "Big fair", "Grand fair"};

/// Labels, by which keys and tests reach a widget and which are the same in every language, stand first in these.
const std::vector<std::string> before_a_label{
    "widgets.area(",
    "widgets.area(std::string(",
    "widgets.button(",
    "widgets.button(std::string(",
    "widgets_.button(",
    "text_field(",
    "begin_scroll(",
    "begin_sheet(",
    "draw_arrow(",
    "draw_rows(",
    "choice_row(widgets,",
    "draw_words(",
    "tick_box(widgets,",
    "form.text(",
    "form.count(",
    "form.number(",
    "form.choose(",
    "form.length(",
    "form.button(",
    "form.changed(",
    "form.typed(",
    "form.refuse(",
    "add_on_press(tools,",
    "least_and_most(tools,",
    "label =",
    "label ==",
    "label +=",
    "(name +",
    "(label +",
    "draw(widgets, {",
};

/// Labels in tables, and parts of some that are put together elsewhere.
const std::set<std::string> labels{
    "as planned", "corner 1",    "corner 2",      "corner 3",          "corner left",    "corner right",
    "corner up",  "corner down", "the first",     "the second",        "criterion ",     "bonus ",
    "reason ",    "ready ",      "angle between", "angle opposite",    "side 1",         "side 2",
    "side 3",     "angle 1",     "angle 2",       "kind by sides",     "kind by angles", "to do",
    "by hand",    "measured by", " by sides",     " by angles",        " perimeter",     " points",
    "sort by ",   "piece ",      "answer ",       "what was taken in", " by hand ",      " measured by"};

bool ends_in(const std::string& text, const std::string& end) {
    return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

bool is_words(const std::string& literal) {
    bool letter = false;
    for (const char c : literal) letter = letter || std::isalpha(static_cast<unsigned char>(c)) != 0;
    return letter && literal.find(' ') != std::string::npos;
}

bool begins_with(const std::string& text, std::size_t at, const std::string& word) {
    while (at < text.size() && (text[at] == ',' || std::isspace(static_cast<unsigned char>(text[at])) != 0)) ++at;
    return text.compare(at, word.size(), word) == 0;
}

/// The code before a literal, without blanks at its end, says that nobody but the program reads it, or that it is said.
bool is_well(const std::string& code) {
    if (ends_in(code, "say(") || ends_in(code, "phrase(")) return true;
    for (const std::string& before : before_a_label)
        if (ends_in(code, before)) return true;
    const std::size_t statement = code.find_last_of(";{}");
    return code.find("assert(", statement == std::string::npos ? 0 : statement) != std::string::npos;
}

/// The literals of a source that are words, and are not well.
std::vector<std::string> unsaid(const std::string& source) {
    std::vector<std::string> found;
    std::string code;  // what was read, without comments; neighbouring literals are one
    for (std::size_t at = 0; at < source.size(); ++at) {
        const char c = source[at];
        if (c == '/' && source[at + 1] == '/') {
            at = source.find('\n', at);
            if (at == std::string::npos) break;
            continue;
        }
        if (c == '\'' && (at == 0 || std::isalnum(static_cast<unsigned char>(source[at - 1])) == 0)) {
            for (++at; source[at] != '\''; ++at) at += source[at] == '\\' ? 1 : 0;
            continue;
        }
        if (c != '"') {
            const bool broken_line = std::isspace(static_cast<unsigned char>(c)) != 0 && ends_in(code, "(");
            if (!broken_line) code += c;
            continue;
        }
        std::string literal;
        for (++at; source[at] != '"'; ++at) {
            literal += source[at];
            if (source[at] == '\\') literal += source[++at];
        }
        while (!code.empty() && std::isspace(static_cast<unsigned char>(code.back())) != 0) code.pop_back();
        const bool named = at + 1 < source.size() && source[at + 1] == ',' &&
                           (begins_with(source, at + 1, "say(") || begins_with(source, at + 1, "phrase("));
        // A label that stands before its words: {"at least", phrase("at least")}.
        if (is_words(literal) && !named && plain.count(literal) == 0 && labels.count(literal) == 0 && !is_well(code))
            found.push_back(literal);
    }
    return found;
}

TEST_CASE("No text of several words reaches a person unsaid") {
    const std::filesystem::path root(BOUGHWORK_SOURCE_FOLDER);
    int sources = 0;
    for (const char* folder : {"engine", "rules", "gui"})
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
            const std::string path = std::filesystem::relative(entry.path(), root).generic_string();
            const bool list = path.rfind("engine/words/", 0) == 0;
            if (list || written.count(path) > 0 || !(ends_in(path, ".cpp") || ends_in(path, ".h"))) continue;
            ++sources;
            std::ifstream file(entry.path());
            for (const std::string& text : unsaid({std::istreambuf_iterator<char>(file), {}})) {
                INFO(path << ": \"" << text << "\" is not said");
                CHECK(false);
            }
        }
    CHECK(sources > 100);
}

TEST_CASE("The search for unsaid texts tells what is said from what is not") {
    CHECK(unsaid(R"(write("Two words");)") == std::vector<std::string>{"Two words"});
    CHECK(unsaid(R"(write("Two \"words\"" + name);)").size() == 1);
    CHECK(unsaid(R"(write(say("Two words", {"and more"}));)") == std::vector<std::string>{"and more"});
    CHECK(unsaid("write(say(\"Two words \"\n    \"and two more\"));").empty());
    CHECK(unsaid("say(\"Two words\") + \" and more\"").size() == 1);
    CHECK(unsaid("widgets.button(\"a label\", \"some words\", box)") == std::vector<std::string>{"some words"});
    CHECK(unsaid("{true, \"a label\", phrase(\"some words\")}").empty());
    CHECK(unsaid("foot.button(\"never mind\")").size() == 1);
    CHECK(unsaid("assert(held && \"a hand holds it\"); // a \"quoted comment here\"\nconst char c = '\"';").empty());
    CHECK(unsaid("\"word\" \"12 34\" \"scenes/x.json\"").empty());
}

}  // namespace
}  // namespace boughwork
