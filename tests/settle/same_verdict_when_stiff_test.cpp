// SPDX-License-Identifier: MIT
// Of branches that do not bend gravity takes nothing: the referee says of the plan that is stood up what it said on the
// flat.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "engine/storage/plan_file.h"
#include "rules/check.h"
#include "rules/settled.h"
#include "tests/book/drawn_plan.h"

namespace boughwork {
namespace {

Plan made_stiff(Plan plan) {
    for (Branch& branch : plan.tree.branches) branch.material.modulus_gpa.reset();
    return plan;
}

std::vector<Scene> all_scenes() {
    std::vector<Scene> scenes;
    for (const char* folder : {"/scenes", "/scenes/rules"})
        for (const auto& entry : std::filesystem::directory_iterator(BOUGHWORK_SOURCE_FOLDER + std::string(folder))) {
            const std::string name = entry.path().filename().string();
            if (name.find(".bough.json") == std::string::npos) continue;
            std::ifstream file(entry.path());
            const Result<Scene> scene = read_plan({std::istreambuf_iterator<char>(file), {}});
            INFO(name);
            REQUIRE(scene);
            scenes.push_back(*scene);
        }
    return scenes;
}

/// Only what counts is left hanging.
Plan legal(const Scene& scene, Plan plan) {
    for (bool more = true; more;) {
        const Report report = check(scene, plan);
        const auto before = plan.hung.size();
        plan.hung.erase(std::remove_if(plan.hung.begin(), plan.hung.end(),
                                       [&](const Hung& hung) {
                                           return find_piece(report, hung.piece)->state != PieceState::counts;
                                       }),
                        plan.hung.end());
        more = plan.hung.size() != before;
    }
    return plan;
}

}  // namespace

TEST_CASE("On every scene, stood up with stiff branches, each piece counts or not as on the flat") {
    std::size_t plans = 0;
    for (const Scene& scene : all_scenes())
        for (const Plan& given : scene.plans) {
            const Plan plan = made_stiff(given);
            const Report flat = check(scene, plan);
            const Settled settled = settle(scene, plan);
            INFO(scene.title << ", " << plan.name);
            REQUIRE(settled.report);
            CHECK(settled.state == Settling::State::at_rest);
            CHECK(settled.report->score == flat.score);
            for (std::size_t i = 0; i < flat.pieces.size(); ++i) {
                INFO("piece " << flat.pieces[i].number.value);
                CHECK(settled.report->pieces[i].state == flat.pieces[i].state);
                CHECK(settled.report->pieces[i].points == flat.pieces[i].points);
            }
            ++plans;
        }
    CHECK(plans > 20);
}

TEST_CASE("Of 500 legal plans that were drawn, stood up with stiff branches, the whole report is as on the flat") {
    int legal_plans = 0;
    for (std::uint64_t seed = 1; legal_plans < 500; ++seed) {
        const Scene scene = book::drawn_scene(seed);
        const Plan plan = made_stiff(legal(scene, current_plan(scene)));
        if (plan.hung.empty()) continue;
        ++legal_plans;
        INFO("seed " << seed);
        const Settled settled = settle(scene, plan);
        REQUIRE(settled.report);
        CHECK(*settled.report == check(scene, plan));
        CHECK(settled.wrong.empty());
        CHECK(settled.plan == plan);
    }
}

}  // namespace boughwork
