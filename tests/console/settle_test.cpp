// SPDX-License-Identifier: MIT
// `settle`: what gravity does, for a person and for other programs; and the picture of it.
#include <nlohmann/json.hpp>

#include "tests/console/run.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

const std::string example = std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/fair_example.bough.json";

}  // namespace

TEST_CASE("settle tells how far each branch sags, whether the tree stands, and what has become wrong") {
    const Ran ran = run({"settle", example});
    INFO(ran.out);
    CHECK(ran.exit_code == 0);
    CHECK(ran.err.empty());
    for (const char* words : {"Branch b1 sags", "Branch b2 sags", "Branch b3 sags", "give or take", "The tree stands",
                              "Nothing that was right on the flat has become wrong."})
        CHECK(contains(ran.out, words));
}

TEST_CASE("settle --json gives every number, and ends with 1 where the plan does not hold") {
    const auto told = nlohmann::json::parse(run({"settle", example, "--json"}).out);
    CHECK(told.at("state") == "at rest");
    CHECK(told.at("holds") == true);
    CHECK(told.at("branches").size() == 3);
    for (const auto& branch : told.at("branches")) {
        CHECK(branch.at("sag_mm").get<double>() > 1);
        CHECK(branch.at("error_mm").get<double>() < 0.2);
    }
    CHECK(told.at("wrong").empty());

    const Folder folder;
    Scene scene = fair_scene();
    scene.plans.front().tree.base = {.width_mm = 10, .weight_g = 0};
    scene.paper.grams_per_m2 = 2000;
    const std::string file = folder.with("tips.bough.json", scene);
    const Ran tips = run({"settle", file, "--json"});
    CHECK(tips.exit_code == 1);
    CHECK(nlohmann::json::parse(tips.out).at("tipping").at("tips") == true);
}

TEST_CASE("picture --settled shows the plan as gravity leaves it") {
    const Folder folder;
    CHECK(run({"picture", example, "--settled", "--out", folder.file("s.svg")}).exit_code == 0);
    CHECK(run({"picture", example, "--out", folder.file("f.svg")}).exit_code == 0);
    const std::string settled = content_of(folder.file("s.svg"));
    CHECK(settled.find("<svg") != std::string::npos);
    CHECK(settled != content_of(folder.file("f.svg")));
}

TEST_CASE("check looks at gravity too where the challenge asks for it") {
    const Folder folder;
    Scene scene = fair_scene();
    scene.challenge.holds_after_settling = true;
    const auto line_of = [&](const char* name) {
        const auto told = nlohmann::json::parse(run({"check", folder.with(name, scene), "--json"}).out);
        return told.at("challenge").back();
    };
    const auto holds = line_of("holds.bough.json");
    CHECK(holds.at("about") == "after_settling");
    CHECK(holds.at("met") == true);
    CHECK(holds.at("have") == holds.at("need"));

    scene.plans.front().tree.base = {.width_mm = 10, .weight_g = 0};
    scene.paper.grams_per_m2 = 2000;
    CHECK(line_of("tips.bough.json").at("met") == false);
    const Ran ran = run({"check", folder.file("tips.bough.json")});
    CHECK(ran.exit_code == 1);
    CHECK(contains(ran.out, "after settling"));
}
