// SPDX-License-Identifier: MIT
// boughwork hands: how often a plan holds that is built by hands that err.
#include <nlohmann/json.hpp>

#include "rules/shaky_hands.h"
#include "tests/console/run.h"

namespace boughwork::testing {
namespace {

/// One piece in the middle of its branch, and two a little too near to each other.
Scene shaky_scene() {
    SceneBuilder plan = with_level_branch();
    plan.challenge().neighbours = Neighbours::apart;
    plan.hang(rectangle(1, 40, 40), under(20));
    plan.hang(rectangle(2, 30, 40), under(200)).hang(rectangle(3, 30, 40), under(231.5));
    plan.scene.plans.push_back(plan.scene.plans.front());
    plan.scene.plans.back().name = "roomy";
    plan.scene.plans.back().hung.back().pose.at_mm.x += 20;
    return plan.scene;
}

}  // namespace

TEST_CASE("hands ends with 0 when every hung piece holds in nine of ten builds, with 1 when one does not") {
    const Folder folder;
    const std::string file = folder.with("a.bough.json", shaky_scene());
    CHECK(run({"hands", file, "--builds", "200"}).exit_code == 1);
    CHECK(run({"hands", file, "--builds", "200", "--plan", "roomy"}).exit_code == 0);
    CHECK(run({"hands", file, "--builds", "0"}).exit_code == 2);
    CHECK(run({"hands", file, "--builds", "many"}).exit_code == 2);
    CHECK(run({"hands", folder.file("none.bough.json")}).exit_code == 2);
}

TEST_CASE("hands says of every hung piece how often it fails, of what, and which move was seen to help") {
    const Folder folder;
    const Scene scene = shaky_scene();
    const std::string said = run({"hands", folder.with("a.bough.json", scene), "--builds", "500"}).out;
    ShakyHands hands(scene, scene.plans.front());
    hands.build(500);
    CHECK(
        contains(said, "500 builds by hands that err by 0.5 mm in a cut, 1 mm in a place and 0.5 degrees in a turn."));
    CHECK(contains(said, "Piece 1 holds in all 500 builds. (100 per cent hold, give or take 0.2)"));
    CHECK(contains(said, "Piece 2 fails in " + in_words(hands.fails({2})) + ". Most often: touches a neighbour. ("));
    CHECK(contains(said, "Moved "));
    CHECK(contains(said, " left, it fails in "));
    CHECK(contains(said, "All pieces hold in "));
}

TEST_CASE("hands gives other programs the report's own numbers") {
    const Folder folder;
    const Scene scene = shaky_scene();
    const Ran ran = run({"hands", folder.with("a.bough.json", scene), "--builds", "300", "--json"});
    REQUIRE(ran.exit_code == 1);
    const auto j = nlohmann::json::parse(ran.out);
    ShakyHands hands(scene, scene.plans.front());
    hands.build(300);
    const HandsReport report = hands.report();
    CHECK(j["plan"] == scene.current);
    CHECK(j["builds"] == 300);
    CHECK(j["holds"] == false);
    CHECK(j["hands"]["place_mm"] == 1);
    CHECK(j["all_hold"]["times"] == report.all_hold.times);
    CHECK(j["mean_score"].get<double>() == Approx(report.mean_score));
    REQUIRE(j["pieces"].size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK(j["pieces"][i]["holds"]["times"] == report.pieces[i].holds.times);
        CHECK(j["pieces"][i]["holds"]["share"].get<double>() == Approx(report.pieces[i].holds.share()).margin(1e-6));
        CHECK(j["pieces"][i]["holds"]["error"].get<double>() ==
              Approx(report.pieces[i].holds.standard_error()).margin(1e-6));
        CHECK(j["pieces"][i]["says"] == report.pieces[i].says);
    }
    CHECK(j["pieces"][0]["fails_by"].is_null());
    CHECK(j["pieces"][0]["room"].is_null());
    CHECK(j["pieces"][1]["fails_by"] == "touching");
    CHECK(j["pieces"][1]["room"]["move_mm"][0].get<double>() < 0);
}

}  // namespace boughwork::testing
