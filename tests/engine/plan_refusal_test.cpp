// SPDX-License-Identifier: MIT
// What a plan file must not say. Every refusal tells the place, the reason and what to do, and that
// the open plan stays as it was.
#include <catch2/catch.hpp>

#include "engine/storage/files.h"
#include "tests/engine/plan_file_example.h"

namespace boughwork {
namespace {

void check_refused(const std::string& text, const std::string& place, const std::string& reason) {
    const Result<Scene> scene = read_plan(text);
    INFO("expected " << place << ": ... " << reason);
    if (scene) FAIL("it was read");
    const Problem& problem = scene.problem();
    INFO(in_words(problem));
    CHECK(problem.found.substr(0, place.size() + 2) == place + ": ");
    CHECK(problem.found.find(reason, place.size()) != std::string::npos);
    CHECK(problem.kept == "The open plan stays as it was.");
    CHECK(!problem.to_do.empty());
}

/// The example, but for the value at the pointer.
void check_refused_with(const std::string& pointer, const std::string& value, const std::string& reason) {
    check_refused(example_with(pointer, value), pointer, reason);
}

const std::string square_branch = R"([{"name": "b1", "path_mm": [[0, 0], [100, 0]]}])";

}  // namespace

TEST_CASE("refused: what is not JSON, with line and column") {
    // RFC 8259: section 6 has no leading noughts, no bare point, no NaN; 7 no control characters in
    // strings; 2 a single value; and nowhere a comment or a comma too many.
    check_refused("[NaN]", "line 1, column 2", "not JSON");
    check_refused("[Infinity]", "line 1, column 2", "not JSON");
    check_refused("[01]", "line 1, column 3", "not JSON");
    check_refused("[1.]", "line 1, column 4", "not JSON");
    check_refused("[.5]", "line 1, column 2", "not JSON");
    check_refused("[+1]", "line 1, column 2", "not JSON");
    check_refused("[0x10]", "line 1, column 3", "not JSON");
    check_refused("[True]", "line 1, column 2", "not JSON");
    check_refused("['a']", "line 1, column 2", "not JSON");
    check_refused("{\"format\":\n  \"bough\nwork\"}", "line 2, column 9", "not JSON");
    check_refused("[\"\\x\"]", "line 1, column 4", "not JSON");
    check_refused("[1,]", "line 1, column 4", "not JSON");
    check_refused("{\"a\": 1,}", "line 1, column 9", "not JSON");
    check_refused("[1 2]", "line 1, column 4", "not JSON");
    check_refused("// a plan\n{}", "line 1, column 1", "not JSON");
    check_refused("{\"format\": \"boughwork\"}\n{}", "line 2, column 1", "not JSON");
    check_refused("a plan", "line 1, column 1", "not JSON");
}

TEST_CASE("refused: a file that is empty or ends too early") {
    check_refused("", "line 1", "the file is empty");
    check_refused(" \n\n", "line 1", "the file is empty");
    check_refused("\xEF\xBB\xBF", "line 1, column 1", "ends before it is finished");
    check_refused("{\"format\": \"boughwork\",\n", "line 2, column 1", "ends before it is finished");
    check_refused("{\"format\": \"bough", "line 1, column 18", "ends before it is finished");
}

TEST_CASE("refused: a zero byte, which is no JSON even at the end") {
    check_refused(example_text + '\0', "line 37, column 1", "a zero byte");
    check_refused(example_text + std::string("\0 anything", 10), "line 37, column 1", "a zero byte");
}

TEST_CASE("refused: bytes that are not UTF-8") {
    // RFC 3629, section 3 and 10: a stray tail, an overlong slash, half a surrogate pair, past U+10FFFF.
    for (const char* bytes : {"\x80", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF", "\xC3"}) {
        INFO(+static_cast<unsigned char>(bytes[0]));
        check_refused(std::string("{\"format\": \"boughwork\",\n \"title\": \"\xC3\xA4") + bytes + "\"}",
                      "line 2, column 13", "UTF-8");
    }
    check_refused(R"({"title": "\ud800"})", "line 1, column 18", "not JSON");
}

TEST_CASE("refused: a key that stands twice in one object") {
    // RFC 8259, section 4: what it means is unpredictable.
    check_refused("{\"format\": \"boughwork\",\n \"title\": \"a\",\n  \"title\": \"b\"}", "line 3, column 9",
                  "the key \"title\" stands twice");
    check_refused("{\"a\": {\"b\": 1, \"\\u0062\": 2}}", "line 1, column 23", "the key \"b\" stands twice");
    CHECK(read_plan(R"({"format": "boughwork", "a": {"x": 1}, "b": {"x": 1}})"));
}

TEST_CASE("refused: lists and objects more than 64 deep, however deep") {
    const auto nested = [](std::size_t depth) {
        return R"({"format": "boughwork", "from_elsewhere": )" + std::string(depth, '[') + std::string(depth, ']') +
               "}";
    };
    CHECK(read_plan(nested(63)));
    CHECK(scene_of(write_plan(scene_of(nested(63)))) == scene_of(nested(63)));
    check_refused(nested(64), "line 1, column 106", "more than 64 deep");
    check_refused(nested(5'000'000), "line 1, column 106", "more than 64 deep");
    check_refused(std::string(5'000'000, '['), "line 1, column 65", "more than 64 deep");
}

TEST_CASE("refused: a file over 16 MiB") {
    const std::string fits = example_text + std::string(largest_file_bytes - example_text.size(), ' ');
    CHECK(read_plan(fits));
    check_refused(fits + " ", "line 1", "larger than 16 MiB");
}

TEST_CASE("refused: a list that could fill the memory") {
    std::string plans = "{}";
    for (int i = 0; i < 100'000; ++i) plans += ",{}";
    check_refused(R"({"format": "boughwork", "plans": [)" + plans + "]}", "/plans", "at most 100000 entries");

    // What is held against all the rest is listed less often.
    const auto list_of = [](std::size_t count, const std::string& entry) {
        std::string list = entry;
        for (std::size_t i = 1; i < count; ++i) list += "," + entry;
        return "[" + list + "]";
    };
    const std::string criterion = R"({"kind": "right", "at_least": 1})";
    const std::string bonus = R"({"words": "Neat", "points": 1})";
    const std::string branch = R"({"path_mm": [[20, 400], [300, 400]]})";
    CHECK(read_plan(example_with("/challenge/criteria", list_of(1000, criterion))));
    CHECK(read_plan(example_with("/challenge/score/bonuses", list_of(1000, bonus))));
    CHECK(read_plan(example_with("/plans/0/tree/branches", list_of(1000, branch))));
    check_refused_with("/challenge/criteria", list_of(1001, criterion), "at most 1000 entries");
    check_refused_with("/challenge/score/bonuses", list_of(1001, bonus), "at most 1000 entries");
    check_refused_with("/plans/0/tree/branches", list_of(1001, branch), "at most 1000 entries");
}

TEST_CASE("refused: what is no plan file, or a newer one") {
    check_refused("[]", "line 1", "here belongs an object, not a list");
    check_refused("{}", "/format", "missing");
    check_refused_with("/format", "\"treewood\"", "no plan file");
    check_refused_with("/version", "2", "newer than 1");
    check_refused_with("/version", "0", "must be from 1");
    check_refused_with("/version", "1.5", "whole number");
    check_refused_with("/version", "\"1\"", "here belongs a number, not a text");
}

TEST_CASE("refused: a wrong type, wherever it is") {
    const auto file = nlohmann::json::parse(example_text).flatten();
    int tried = 0;
    for (const auto& [pointer, value] : file.items()) {
        // An object is right nowhere among these, and null where it is not a limit or a depth.
        check_refused_with(pointer, "{\"a\": 1}", "here belongs");
        const bool may_be_null =
            pointer.find("/limits/") != std::string::npos || value.is_null() || pointer == "/challenge/depth_limit";
        if (!may_be_null) check_refused_with(pointer, "null", "here belongs");
        if (!value.is_boolean()) check_refused_with(pointer, "true", "here belongs");
        ++tried;
    }
    CHECK(tried > 90);
    for (const char* object :
         {"/challenge", "/challenge/step", "/challenge/limits", "/challenge/score", "/challenge/criteria/1",
          "/challenge/score/bonuses/0", "/pieces/0", "/pieces/2/cone", "/plans/0", "/plans/0/tree",
          "/plans/0/tree/trunk", "/plans/0/tree/branches/0", "/plans/0/hung/0"})
        for (const char* value : {"null", "[]", "\"text\"", "7"}) check_refused_with(object, value, "here belongs");
    for (const char* list : {"/challenge/criteria", "/challenge/score/bonuses", "/challenge/limits/pieces", "/pieces",
                             "/pieces/0/sides_mm", "/pieces/1/outline_mm", "/plans", "/plans/0/tree/branches",
                             "/plans/0/tree/branches/0/path_mm", "/plans/0/hung", "/plans/0/hung/0/at_mm"})
        for (const char* value : {"null", "{}", "\"text\"", "7"}) check_refused_with(list, value, "here belongs");
}

TEST_CASE("refused: a number past 1e6 mm") {
    for (const char* pointer :
         {"/challenge/tolerance_mm", "/challenge/limits/side_mm/0", "/challenge/limits/least_height_mm",
          "/pieces/0/sides_mm/1", "/pieces/1/outline_mm/2/0", "/pieces/1/outline_mm/2/1", "/pieces/2/cone/radius_mm",
          "/pieces/2/cone/slant_mm", "/plans/0/tree/trunk/x", "/plans/0/tree/trunk/height",
          "/plans/0/tree/trunk/base_width", "/plans/0/tree/trunk/top_width", "/plans/0/tree/branches/0/path_mm/0/0",
          "/plans/0/tree/branches/0/path_mm/1/1", "/plans/0/tree/branches/0/thickness_mm", "/plans/0/hung/0/at_mm/0",
          "/plans/0/hung/0/at_mm/1", "/plans/0/hung/0/turn_deg"}) {
        check_refused_with(pointer, "1000000.1", "and must be");
        check_refused_with(pointer, "-1000000.1", "and must be");
        check_refused_with(pointer, "1e300", "and must be");
    }
    check_refused("{\"format\": \"boughwork\",\n \"title\": 1e400}", "line 2, column 15", "too large");
    CHECK(read_plan(example_with("/plans/0/hung/0/at_mm/0", "1000000")));
}

TEST_CASE("refused: two pieces with one number, or a number that is none") {
    check_refused_with("/pieces/1/number", "1", "two pieces have the number 1");
    check_refused_with("/pieces/1/number", "-1", "must be from 0");
    check_refused_with("/pieces/1/number", "1.5", "whole number");
    check_refused_with("/pieces/1/number", "1e9", "must be from 0 to 1000000");
    check_refused(example_without("/pieces/1/number"), "/pieces/1/number", "missing");
}

TEST_CASE("refused: a hung number that does not exist") {
    check_refused_with("/plans/0/hung/0/piece", "5", "there is no piece 5");
    check_refused(example_without("/plans/0/hung/0/piece"), "/plans/0/hung/0/piece", "missing");
}

TEST_CASE("refused: a piece hung twice in one plan, but not in two") {
    check_refused_with("/plans/0/hung/1/piece", "1", "piece 1 hangs twice");
    CHECK(read_plan(example_with("/plans/1/hung", R"([{"piece": 1}])")));
}

TEST_CASE("refused: a current plan that does not exist") {
    check_refused_with("/current", "\"Plan 9\"", "no plan of the name \"Plan 9\"");
    check_refused(R"({"format": "boughwork", "current": ""})", "/current", "no plan");
}

TEST_CASE("refused: two plans, or two branches of one tree, with one name") {
    check_refused_with("/plans/1/name", "\"Plan 1\"", "the name \"Plan 1\" stands twice");
    check_refused_with("/plans/0/tree/branches/1/name", "\"b1\"", "the name \"b1\" stands twice");
    CHECK(read_plan(example_with("/plans/1/tree/branches", square_branch)));
}

TEST_CASE("refused: an impossible triangle") {
    // Euclid I.20: any two sides together are longer than the third; these are equal to it or less.
    check_refused_with("/pieces/0/sides_mm", "[30, 10, 20]", "no triangle");
    check_refused_with("/pieces/0/sides_mm", "[0.3, 0.1, 0.2]", "no triangle");
    check_refused_with("/pieces/0/sides_mm", "[10, 10, 50]", "no triangle");
    CHECK(read_plan(example_with("/pieces/0/sides_mm", "[29.9995, 10, 20]")));
    check_refused(example_with("/pieces/0/sides_mm", "[0, 10, 10]"), "/pieces/0/sides_mm/0", "more than 0 mm");
    check_refused(example_with("/pieces/0/sides_mm", "[10, 10, -5]"), "/pieces/0/sides_mm/2", "more than 0 mm");
    check_refused_with("/pieces/0/sides_mm", "[10, 10, 1e-9]", "longer than nothing");
    check_refused_with("/pieces/0/sides_mm", "[10, 10]", "a list of 3, not of 2");
    check_refused_with("/pieces/0/sides_mm", "[10, 10, 10, 10]", "a list of 3, not of 4");
}

TEST_CASE("refused: an outline that is not convex") {
    check_refused_with("/pieces/1/outline_mm", "[[0,0],[40,0],[10,-10],[0,-30]]", "not convex");
    check_refused_with("/pieces/1/outline_mm", "[[0,0],[0,-30],[40,-30],[40,0]]", "not convex");  // counter-clockwise
    check_refused_with("/pieces/1/outline_mm", "[[0,0],[20,0],[40,0],[0,-30]]", "straight");
    check_refused_with("/pieces/1/outline_mm", "[[0,0],[40,0]]", "at least three corners");
    check_refused(example_with("/pieces/1/outline_mm", "[[0,0],[40,0,1],[40,-30]]"), "/pieces/1/outline_mm/1",
                  "a list of 2, not of 3");
}

TEST_CASE("refused: a cone that cannot be rolled") {
    check_refused(example_with("/pieces/2/cone/slant_mm", "20"), "/pieces/2/cone", "slant must be longer");
    check_refused_with("/pieces/2/cone/radius_mm", "0", "more than 0 mm");
    check_refused(example_without("/pieces/2/cone/slant_mm"), "/pieces/2/cone/slant_mm", "missing");
}

TEST_CASE("refused: a piece with two shapes or none") {
    check_refused(example_with("/pieces/0/cone", R"({"radius_mm": 20, "slant_mm": 60})"), "/pieces/0", "only one of");
    check_refused(example_without("/pieces/0/sides_mm"), "/pieces/0", "none of");
}

TEST_CASE("refused: a path with fewer than two points or a repeated one") {
    check_refused_with("/plans/0/tree/branches/0/path_mm", "[]", "two points");
    check_refused_with("/plans/0/tree/branches/0/path_mm", "[[20,420]]", "two points");
    check_refused_with("/plans/0/tree/branches/0/path_mm", "[[20,420],[260,400],[260,400]]", "stands twice");
    check_refused(example_without("/plans/0/tree/branches/0/path_mm"), "/plans/0/tree/branches/0/path_mm", "missing");
}

TEST_CASE("refused: a turn past 120 degrees") {
    check_refused_with("/plans/0/tree/branches/0/path_mm", "[[0,400],[200,400],[20,420]]", "120 degrees");
}

TEST_CASE("refused: a thickness, tolerance or step that is not positive") {
    for (const char* value : {"0", "-1", "-0.0"}) {
        check_refused_with("/plans/0/tree/branches/0/thickness_mm", value, "more than 0 mm");
        check_refused_with("/challenge/tolerance_mm", value, "more than 0 mm");
        check_refused_with("/challenge/step/value", value, "more than 0 mm");
        check_refused_with("/plans/0/tree/trunk/height", value, "more than 0 mm");
        check_refused_with("/plans/0/tree/trunk/base_width", value, "more than 0 mm");
        check_refused_with("/plans/0/tree/trunk/top_width", value, "more than 0 mm");
    }
    for (const char* value : {"\"0\"", "\"-1/4\"", "\"1/0\"", "\"0/4\"", "\"\"", "\"1/\"", "\"1//4\"", "\"2 1\"",
                              "\"1/4 \"", "\"one\"", "\"99999999\"", "0.33333333333", "1e-9"})
        check_refused_with("/challenge/step/value", value, "no step");
    check_refused_with("/challenge/step/value", "0.00001", "from 0.001 mm");
    check_refused_with("/challenge/step/value", "100000", "from 0.001 mm to 1000000 mm");
}

TEST_CASE("refused: an if_met without its criterion") {
    check_refused_with("/challenge/score/bonuses/2/if_met", "4", "there is no criterion 4");
    check_refused_with("/challenge/score/bonuses/2/if_met", "-1", "must be from 0");
    CHECK(read_plan(example_with("/challenge/score/bonuses/2/if_met", "3")));
}

TEST_CASE("refused: a criterion or a bonus that nobody understands") {
    check_refused_with("/challenge/criteria/0", "{}", "none of \"no_two_alike\", \"at_least\"");
    check_refused_with("/challenge/criteria/0", R"({"kind": "right"})", "none of");
    check_refused_with("/challenge/criteria/0", R"({"no_two_alike": 3, "at_least": 1})", "only one of");
    check_refused_with("/challenge/criteria/1/kind", "\"blue\"", "this word is not known here");
    check_refused(example_without("/challenge/criteria/1/kind"), "/challenge/criteria/1/kind", "missing");
    check_refused_with("/challenge/criteria/0/kind", "\"right\"", "no meaning beside \"no_two_alike\"");
    check_refused_with("/challenge/criteria/1/of", "\"points\"", "no meaning beside \"at_least\"");
    check_refused_with("/challenge/criteria/2/share_percent", "100.5", "from 0 to 100");
    check_refused_with("/challenge/score/bonuses/0", R"({"points": 3})", "none of \"per_piece\"");
    check_refused_with("/challenge/score/bonuses/0", R"({"per_depth": 1, "words": "a"})", "only one of");
    check_refused_with("/challenge/score/bonuses/1/per_depth", "0", "from 1");
}

TEST_CASE("refused: a word that is none of those for a setting") {
    for (const char* pointer : {"/challenge/units", "/challenge/step/unit", "/challenge/holds", "/challenge/neighbours",
                                "/challenge/at_fault", "/challenge/over_limit", "/challenge/score/by",
                                "/challenge/score/unit", "/challenge/criteria/2/of"}) {
        check_refused_with(pointer, "\"nonesuch\"", "this word is not known here");
        check_refused_with(pointer, "\"\"", "this word is not known here");
    }
    const Problem problem = read_plan(example_with("/challenge/neighbours", "\"corner\"")).problem();
    CHECK(problem.to_do == R"(Write one of these: "apart", "corner to corner", "corners", "sides".)");
}

TEST_CASE("refused: limits that nothing can meet, and counts that are none") {
    check_refused_with("/challenge/limits/pieces", "[5, 4]", "the least is more than the most");
    check_refused_with("/challenge/limits/side_mm", "[50, 40.5]", "the least is more than the most");
    check_refused_with("/challenge/limits/pieces", "[1]", "a list of 2, not of 1");
    check_refused(example_with("/challenge/limits/pieces", "[-1, null]"), "/challenge/limits/pieces/0", "from 0");
    check_refused(example_with("/challenge/limits/pieces", "[0, 1.5]"), "/challenge/limits/pieces/1", "whole number");
    check_refused_with("/challenge/limits/sheets", "-1", "from 0");
    check_refused_with("/challenge/depth_limit", "0", "from 1");
    check_refused_with("/challenge/right_within_deg", "-0.1", "from 0 to 90");
}

}  // namespace boughwork
