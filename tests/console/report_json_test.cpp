// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "gui/console/report_json.h"
#include "tests/console/run.h"

using namespace boughwork;
using namespace boughwork::testing;
using Json = nlohmann::ordered_json;

namespace {

Json json_of(const Scene& scene) {
    const Folder folder;
    const Ran ran = run({"check", folder.with("a.bough.json", scene), "--json"});
    REQUIRE(ran.exit_code != 2);
    REQUIRE(ran.err.empty());
    return Json::parse(ran.out);
}

/// The names that must be there, in that order; others may stand between.
void check_fields(const Json& object, const std::vector<std::string>& names) {
    std::vector<std::string> there;
    for (const auto& item : object.items()) there.push_back(item.key());
    std::size_t at = 0;
    for (const std::string& name : names) {
        const auto found = std::find(there.begin() + static_cast<long>(at), there.end(), name);
        INFO(name);
        REQUIRE(found != there.end());
        at = static_cast<std::size_t>(found - there.begin()) + 1;
    }
}

}  // namespace

TEST_CASE("check --json prints every field of the contract under its name, in its order") {
    Scene scene = fair_scene();
    scene.challenge.criteria.push_back({.asks = KindAppears{.kind = Kind::right, .at_least = 1}, .unknown_fields = ""});
    scene.challenge.limits.sheets = 4;
    scene.challenge.score.bonuses.push_back({.for_what = InWords{"Neatest labels"}, .points = 2, .unknown_fields = ""});
    const Json j = json_of(scene);
    check_fields(j, {"plan", "score", "pieces", "findings", "challenge", "bonuses"});
    CHECK(j["plan"] == "Plan 1");
    CHECK(j["score"] == 26);

    REQUIRE(j["pieces"].size() == 3);
    const Json& first = j["pieces"][0];
    check_fields(first, {"number", "state", "hangs_from", "side", "depth", "sides_mm", "measured", "unit", "angles_deg",
                         "by_sides", "by_angles", "close_call", "perimeter", "area", "points", "broken"});
    CHECK(first["state"] == "counts");
    CHECK(first["hangs_from"] == Json({{"branch", "b1"}, {"span", 0}}));
    CHECK(first["side"] == 1);
    CHECK(first["depth"] == 1);
    CHECK(first["sides_mm"] == Json({100, 80, 60}));
    CHECK(first["measured"] == Json({10, 8, 6}));
    CHECK(first["unit"] == "cm");
    CHECK(first["by_sides"] == "scalene");
    CHECK(first["by_angles"] == "right");
    CHECK(first["close_call"] == false);
    CHECK(first["perimeter"] == 24);
    CHECK(first["area"] == 24);
    CHECK(first["points"] == 24);
    CHECK(first["broken"] == Json::array());
    // Corner 3 lies between the sides of 80 and 60.
    CHECK(first["angles_deg"][2] == 90);

    const Json& second = j["pieces"][1];
    CHECK(second["state"] == "does not count");
    CHECK(second["hangs_from"].is_null());
    CHECK(second["points"] == 0);
    CHECK(second["broken"] == Json({"runs past the end"}));
    CHECK(j["pieces"][2]["state"] == "in the envelope");

    REQUIRE(j["findings"].size() == 1);
    const Json& finding = j["findings"][0];
    check_fields(finding, {"rule", "pieces", "amount", "unit", "where_mm", "says", "remedy"});
    CHECK(finding["rule"] == "runs past the end");
    CHECK(finding["pieces"] == Json({2}));
    CHECK(finding["amount"] == 20);
    CHECK(finding["unit"] == "mm");
    CHECK(finding["where_mm"][0].size() == 2);
    check_fields(finding["remedy"], {"piece", "move_mm"});
    CHECK(finding["remedy"]["piece"] == 2);
    CHECK(finding["remedy"]["move_mm"].size() == 2);

    for (const Json& line : j["challenge"]) check_fields(line, {"about", "asks", "met", "have", "need"});
    const auto about = [&](const std::string& what) {
        const auto found = std::find_if(j["challenge"].begin(), j["challenge"].end(),
                                        [&](const Json& line) { return line["about"] == what; });
        REQUIRE(found != j["challenge"].end());
        return *found;
    };
    CHECK(about("criteria/0")["met"] == true);
    CHECK(about("criteria/0")["have"] == 1);
    CHECK(about("sheets")["met"].is_null());
    CHECK(j["bonuses"] == Json::array({{{"words", "Neatest labels"}, {"points", 2}}}));
}

TEST_CASE("A finding that no move puts right has no remedy, and is printed") {
    SceneBuilder builder = with_level_branch();
    builder.hang(triangle(1, 80, 80, 80), under(20));
    builder.challenge().limits.side.most = length_from_mm(50);
    const Json j = json_of(builder.scene);
    REQUIRE(j["findings"].size() == 1);
    CHECK(j["findings"][0]["rule"] == "wrong size");
    CHECK(j["findings"][0]["remedy"].is_null());
}

TEST_CASE("A piece that hangs from a piece names its number and side") {
    SceneBuilder builder = with_level_branch();
    builder.challenge().depth_limit.reset();
    builder.hang(rectangle(1, 100, 40), under(20)).hang_from(1, 3, triangle(2, 90, 90, 90), {.side = 2, .from_mm = 5});
    const Json j = json_of(builder.scene);
    CHECK(j["pieces"][1]["hangs_from"] == Json({{"piece", 1}, {"side", 3}}));
    CHECK(j["pieces"][1]["side"] == 2);
    CHECK(j["pieces"][1]["depth"] == 2);
    CHECK(j["pieces"][0]["by_sides"].is_null());
    CHECK(j["pieces"][0]["name"] == "quadrilateral");
}

TEST_CASE("Numbers come without the noise of adding, whole ones without a point") {
    const Scene scene = new_scene();
    const auto printed = [&](double score) {
        return report_json(scene, current_plan(scene), {.plan = "Plan 1", .score = score}, {});
    };
    REQUIRE(0.1 + 0.2 != 0.3);
    CHECK(contains(printed(0.1 + 0.2), "\"score\": 0.3,"));
    CHECK(contains(printed(87), "\"score\": 87,"));
    CHECK(contains(printed(1.0 / 16), "\"score\": 0.0625,"));
}

TEST_CASE("Sides of cones and outlines are told in millimetres as they are") {
    SceneBuilder builder;
    builder.keep(cone(1, 25, 70)).keep(outline(2, {{0, 0}, {40, 0}, {40, -30}}));
    const Json j = json_of(builder.scene);
    CHECK(j["pieces"][0]["sides_mm"] == Json({50, 70, 70}));
    CHECK(j["pieces"][1]["sides_mm"] == Json({40, 30, 50}));
}
