// SPDX-License-Identifier: MIT
// The plan file: what it means, what is left out, what is kept. Refusals: plan_refusal_test.cpp.
#include <catch2/catch.hpp>

#include "engine/storage/files.h"
#include "tests/engine/generated_scene.h"
#include "tests/engine/plan_file_example.h"

namespace boughwork {
namespace {

const std::string format_alone = R"({"format": "boughwork"})";

Step step_of(const std::string& value, const std::string& unit) {
    return scene_of(example_with("/challenge/step", R"({"value": )" + value + R"(, "unit": ")" + unit + "\"}"))
        .challenge.step;
}

}  // namespace

TEST_CASE("a plan file says what the contract says it says") {
    const Scene scene = scene_of(example_text);
    CHECK(scene.title == "Fair tree, table 4");
    CHECK(scene.current == "Plan 2");

    const Challenge expected{
        .name = "Grand fair",
        .units = Unit::in,
        .step = {1, 4, Unit::in},
        .tolerance_mm = 1.5,
        .right_within_deg = 2,
        .depth_limit = 3,
        .holds = Holds::counting,
        .neighbours = Neighbours::corner_to_corner,
        .at_fault = AtFault::fewest_points,
        .over_limit = OverLimit::noted,
        .equilateral_is_isosceles = true,
        .limits = {.pieces = {1, std::nullopt},
                   .pieces_per_branch = {0, 7},
                   .branches = {2, 4},
                   .sheets = 4,
                   .side = {Length{40'000}, std::nullopt},
                   .least_height = Length{30'000}},
        .criteria = {{NoTwoAlike{4}},
                     {KindAppears{Kind::right, 1}},
                     {KindShare{Kind::isosceles, 25, false, ShareOf::points}},
                     {KindShare{Kind::obtuse, 12.5, true, ShareOf::pieces}}},
        .score = {
            .by = ScoreBy::area,
            .unit = Unit::cm,
            .bonuses = {
                {PerPiece{Kind::equilateral}, 5}, {PerDepth{2}, 3}, {IfMet{0}, 10}, {InWords{"Neatest labels"}, 2}}}};
    CHECK(scene.challenge == expected);

    const std::vector<Piece> pieces{
        {.number = {1}, .shape = Triangle{{Length{160'000}, Length{120'000}, Length{101'000}}}, .note = "Wren"},
        {.number = {2},
         .shape = Outline{{{Length{0}, Length{0}},
                           {Length{80'000}, Length{0}},
                           {Length{80'000}, Length{-60'000}},
                           {Length{0}, Length{-60'000}}}}},
        {.number = {7}, .shape = Cone{.radius = Length{40'000}, .slant = Length{120'000}}}};
    CHECK(scene.pieces == pieces);

    const std::vector<Plan> plans{
        {.name = "Plan 1",
         .tree = {.trunk = {.x_mm = 5, .height_mm = 510, .base_width_mm = 61, .top_width_mm = 41},
                  .branches = {{.name = "b1", .path_mm = {{20, 420}, {260, 400}}, .thickness_mm = 9},
                               {.name = "b2", .path_mm = {{-20, 420}, {-260, 400}}, .thickness_mm = 9}}},
         .hung = {{.piece = {1}, .pose = {.at_mm = {60, 412.7}, .turn_ccw_deg = -4.76, .flipped = true}},
                  {.piece = {7}, .pose = {.at_mm = {-60, 400}}}}},
        {.name = "Plan 2"}};
    CHECK(scene.plans == plans);
}

TEST_CASE("a field that is left out takes the default of the contract") {
    const Scene scene = scene_of(format_alone);
    CHECK(scene.challenge == Challenge{});
    CHECK(scene.challenge.units == Unit::cm);
    CHECK(scene.challenge.step == Step{1, 1, Unit::mm});
    CHECK(scene.challenge.tolerance_mm == 1.0);
    CHECK(scene.challenge.right_within_deg == 1.0);
    CHECK(scene.challenge.depth_limit == 1);
    CHECK(scene.challenge.neighbours == Neighbours::corners);
    CHECK(scene.challenge.limits == Limits{});
    CHECK(scene.challenge.score.by == ScoreBy::perimeter);
    CHECK(score_unit(scene.challenge) == Unit::cm);

    // Every single one may be left out of a whole file, too, but for what names or shapes a thing.
    const nlohmann::json needed = {"/format",
                                   "/pieces/0/number",
                                   "/pieces/0/sides_mm",
                                   "/pieces/2/cone/radius_mm",
                                   "/plans/0/tree/branches/0/path_mm",
                                   "/plans/0/hung/0/piece"};
    for (const char* pointer : {"/format",
                                "/version",
                                "/title",
                                "/challenge",
                                "/challenge/name",
                                "/challenge/units",
                                "/challenge/step",
                                "/challenge/step/value",
                                "/challenge/step/unit",
                                "/challenge/tolerance_mm",
                                "/challenge/right_within_deg",
                                "/challenge/depth_limit",
                                "/challenge/holds",
                                "/challenge/neighbours",
                                "/challenge/at_fault",
                                "/challenge/over_limit",
                                "/challenge/equilateral_is_isosceles",
                                "/challenge/limits",
                                "/challenge/limits/pieces",
                                "/challenge/limits/sheets",
                                "/challenge/limits/side_mm",
                                "/challenge/limits/least_height_mm",
                                "/challenge/criteria/2/of",
                                "/challenge/score",
                                "/challenge/score/by",
                                "/challenge/score/unit",
                                "/challenge/score/bonuses",
                                "/challenge/score/bonuses/0/points",
                                "/pieces/0/number",
                                "/pieces/0/sides_mm",
                                "/pieces/0/note",
                                "/pieces/2/cone/radius_mm",
                                "/plans/0/name",
                                "/plans/0/tree",
                                "/plans/0/tree/trunk",
                                "/plans/0/tree/trunk/x",
                                "/plans/0/tree/trunk/top_width",
                                "/plans/0/tree/branches",
                                "/plans/0/tree/branches/0/name",
                                "/plans/0/tree/branches/0/path_mm",
                                "/plans/0/tree/branches/0/thickness_mm",
                                "/plans/0/hung",
                                "/plans/0/hung/0/piece",
                                "/plans/0/hung/0/at_mm",
                                "/plans/0/hung/0/turn_deg",
                                "/plans/0/hung/0/flipped",
                                "/current"}) {
        INFO(pointer);
        const bool is_needed = std::find(needed.begin(), needed.end(), pointer) != needed.end();
        CHECK(static_cast<bool>(read_plan(example_without(pointer))) == !is_needed);
    }
}

TEST_CASE("a file without plans gets an empty one, of the name that is current") {
    CHECK(scene_of(format_alone).plans == std::vector<Plan>{{.name = "Plan 1"}});
    CHECK(scene_of(format_alone).current == "Plan 1");
    const Scene named = scene_of(R"({"format": "boughwork", "plans": [], "current": "Wrens"})");
    CHECK(named.plans == std::vector<Plan>{{.name = "Wrens"}});
    CHECK(named.current == "Wrens");
}

TEST_CASE("without a current plan the first one is current") {
    CHECK(scene_of(example_without("/current")).current == "Plan 1");
}

TEST_CASE("a branch or a plan without a name gets the first that is free") {
    const std::string path = R"("path_mm": [[0, 0], [9, 0]])";
    const Scene scene =
        scene_of(R"({"format": "boughwork", "plans": [{}, {"name": "Plan 1"}, {"tree": {"branches": [{)" + path +
                 R"(}, {"name": "b1", )" + path + "}, {" + path + "}]}}]}");
    CHECK(scene.plans[0].name == "Plan 2");
    CHECK(scene.plans[1].name == "Plan 1");
    CHECK(scene.plans[2].name == "Plan 3");
    const std::vector<Branch>& branches = scene.plans[2].tree.branches;
    CHECK(branches[0].name == "b2");
    CHECK(branches[1].name == "b1");
    CHECK(branches[2].name == "b3");
    CHECK(scene.current == "Plan 2");
}

TEST_CASE("a step is exact, whether it is a number, a fraction or both") {
    CHECK(step_of("1", "cm") == Step{1, 1, Unit::cm});
    CHECK(step_of("0.5", "cm") == Step{1, 2, Unit::cm});
    CHECK(step_of("0.1", "in") == Step{1, 10, Unit::in});
    CHECK(step_of("2.5", "mm") == Step{5, 2, Unit::mm});
    CHECK(step_of("\"1/4\"", "in") == Step{1, 4, Unit::in});
    CHECK(step_of("\"2 1/2\"", "in") == Step{5, 2, Unit::in});
    CHECK(step_of("\"2/4\"", "in") == Step{1, 2, Unit::in});
    CHECK(step_of("\"3\"", "mm") == Step{3, 1, Unit::mm});
}

TEST_CASE("an inch is 25.4 mm, so that sixteenths are exact in a file of millimetres") {
    // 25.4 mm exactly: NBS, Addendum to Circular 572 (1959).
    const Scene scene = scene_of(example_with("/pieces/0/sides_mm", "[63.5, 50.8, 26.9875]"));
    const Length inch = length_of(Unit::in);
    const auto& sides = std::get<Triangle>(scene.pieces[0].shape).sides;
    CHECK(2 * sides[0].half_um == 5 * inch.half_um);
    CHECK(sides[1].half_um == 2 * inch.half_um);
    CHECK(16 * sides[2].half_um == 17 * inch.half_um);
}

TEST_CASE("an unknown field is kept at every level, and written back") {
    const std::vector<std::string> objects{"",
                                           "/challenge",
                                           "/challenge/step",
                                           "/challenge/limits",
                                           "/challenge/criteria/0",
                                           "/challenge/criteria/1",
                                           "/challenge/criteria/3",
                                           "/challenge/score",
                                           "/challenge/score/bonuses/0",
                                           "/challenge/score/bonuses/3",
                                           "/pieces/0",
                                           "/pieces/1",
                                           "/pieces/2",
                                           "/pieces/2/cone",
                                           "/plans/0",
                                           "/plans/0/tree",
                                           "/plans/0/tree/trunk",
                                           "/plans/0/tree/branches/1",
                                           "/plans/0/hung/0"};
    const auto value = nlohmann::json::parse(R"({"list": [1, 2.5, null, {"deep": [true, "\u00e4"]}], "a/b~c": -1e-7})");
    auto everywhere = nlohmann::json::parse(example_text);
    for (const std::string& object : objects) {
        INFO(object);
        const nlohmann::json::json_pointer place(object + "/from_elsewhere");
        const std::string written = write_plan(scene_of(example_with(object + "/from_elsewhere", value.dump())));
        CHECK(nlohmann::json::parse(written).value(place, nlohmann::json()) == value);
        everywhere[place] = value;
    }
    const std::string written = write_plan(scene_of(everywhere.dump()));
    for (const std::string& object : objects) {
        INFO(object);
        CHECK(nlohmann::json::parse(written).value(nlohmann::json::json_pointer(object + "/from_elsewhere"),
                                                   nlohmann::json()) == value);
    }
}

TEST_CASE("a byte order mark before the text is skipped") {
    CHECK(scene_of("\xEF\xBB\xBF" + example_text) == scene_of(example_text));
}

TEST_CASE("writing and reading again gives the same file and the same scene") {
    const std::string written = write_plan(scene_of(example_text));
    CHECK(scene_of(written) == scene_of(example_text));
    CHECK(write_plan(scene_of(written)) == written);
    CHECK(nlohmann::json::parse(written).value("current", "") == "Plan 2");
}

TEST_CASE("every scene is the same after it was saved and opened again") {
    for (std::uint64_t seed = 0; seed < 500; ++seed) {
        INFO("seed " << seed);
        const Scene scene = SceneGenerator(seed).scene();
        const std::string written = write_plan(scene);
        const Scene again = scene_of(written);
        REQUIRE(again == scene);
        REQUIRE(write_plan(again) == written);
    }
}

TEST_CASE("every length is written as the shortest decimal of its millimetres") {
    SceneGenerator random(1);
    Scene scene = new_scene();
    for (int i = 0; i < 20'000; ++i) {
        const Length side{random.whole(1, 2'000'000'000)};
        scene.pieces = {{.number = {1}, .shape = Triangle{{side, side, side}}}};
        const std::string written = write_plan(scene);
        // At most four decimals: a half-micrometre is 0.0005 mm.
        std::string expected = std::to_string(side.half_um / 2000);
        std::string decimals = std::to_string(10'000 + side.half_um % 2000 * 5).substr(1);
        while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
        if (!decimals.empty()) expected += "." + decimals;
        REQUIRE(written.find("[" + expected + ", " + expected + ", " + expected + "]") != std::string::npos);
    }
}

TEST_CASE("a file is laid out for people, its fields in the order of the contract") {
    Scene scene = new_scene();
    scene.pieces = {{.number = {1}, .shape = Triangle{{Length{160'000}, Length{120'000}, Length{101'000}}}}};
    scene.plans[0].tree.branches = {{.name = "b1", .path_mm = {{20, 420}, {260, 400.5}}}};
    scene.plans[0].hung = {{.piece = {1}, .pose = {.at_mm = {60, 412.7}, .turn_ccw_deg = -4.76}}};
    CHECK(write_plan(scene) == R"({
  "format": "boughwork",
  "version": 1,
  "title": "New tree",
  "challenge": {
    "name": "",
    "units": "cm",
    "step": {"value": 1, "unit": "mm"},
    "tolerance_mm": 1,
    "right_within_deg": 1,
    "depth_limit": 1,
    "holds": "hanging",
    "neighbours": "corners",
    "at_fault": "both",
    "over_limit": "extras do not count",
    "equilateral_is_isosceles": false,
    "limits": {},
    "criteria": [],
    "score": {"by": "perimeter", "bonuses": []}
  },
  "pieces": [
    {"number": 1, "sides_mm": [80, 60, 50.5], "note": ""}
  ],
  "plans": [
    {
      "name": "Plan 1",
      "tree": {
        "trunk": {"x": 0, "height": 500, "base_width": 60, "top_width": 40},
        "branches": [
          {"name": "b1", "path_mm": [[20, 420], [260, 400.5]], "thickness_mm": 8}
        ]
      },
      "hung": [
        {"piece": 1, "at_mm": [60, 412.7], "turn_deg": -4.76, "flipped": false}
      ]
    }
  ],
  "current": "Plan 1"
}
)");
}

TEST_CASE("a title that is not UTF-8 does not keep a scene from being saved") {
    Scene scene = new_scene();
    scene.title = "W\xFFren";
    CHECK(scene_of(write_plan(scene)).title == "W\xEF\xBF\xBDren");
}

TEST_CASE("blanks never make a file too large to be opened again") {
    std::string numbers = "1";
    while (numbers.size() < 800'000) numbers += ",1";
    const std::string text = R"({"format":"boughwork","from_elsewhere":)" + std::string(20, '[') + numbers +
                             std::string(20, ']') + "}";  // some 40 blanks for each number
    const std::string written = write_plan(scene_of(text));
    CHECK(written.size() <= largest_file_bytes);
    CHECK(scene_of(written) == scene_of(text));
}

}  // namespace boughwork
