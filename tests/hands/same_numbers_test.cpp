// SPDX-License-Identifier: MIT
// The same hands err alike, in whatever order one builds; hands that do not err build the plan itself.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "engine/storage/plan_file.h"
#include "rules/rebuilding.h"
#include "tests/book/drawn_plan.h"
#include "tests/hands/chances.h"

namespace boughwork::testing {
namespace {

Scene scene_in(const std::filesystem::path& file) {
    std::ifstream stream(file);
    const Result<Scene> scene = read_plan({std::istreambuf_iterator<char>(stream), {}});
    INFO(file);
    REQUIRE(scene);
    return *scene;
}

Scene fair_example() {
    return scene_in(std::filesystem::path(BOUGHWORK_SOURCE_FOLDER) / "scenes/fair_example.bough.json");
}

HandsReport hands_report(const Scene& scene, int builds) {
    ShakyHands hands(scene, current_plan(scene));
    hands.build(builds);
    return hands.report();
}

void check_steady_hands_build_the_plan(Scene scene) {
    scene.hands = {.cut_mm = 0, .place_mm = 0, .turn_deg = 0, .seed = 5, .unknown_fields = ""};
    for (const Plan& plan : scene.plans) {
        const Report flat = check(scene, plan);
        Rebuilding rebuilding(scene, plan);
        for (const int build : {0, 1, 77}) {
            rebuilding.build(build);
            CHECK(check(rebuilding.scene(), rebuilding.plan()) == flat);
        }
        ShakyHands hands(scene, plan);
        hands.build(2);
        const HandsReport report = hands.report();
        for (const ShakyPiece& piece : report.pieces)
            CHECK(piece.holds.times == 2 * (find_piece(flat, piece.number)->state == PieceState::counts));
        CHECK(report.mean_score == Approx(flat.score));
        CHECK(report.all_well.times == 2 * all_well(flat));
    }
}

}  // namespace

TEST_CASE("Hands that do not err build the plan itself: every scene") {
    int scenes = 0;
    const std::filesystem::path folder = std::filesystem::path(BOUGHWORK_SOURCE_FOLDER) / "scenes";
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        if (name.find(".bough.json") == std::string::npos) continue;
        INFO(name);
        check_steady_hands_build_the_plan(scene_in(entry.path()));
        ++scenes;
    }
    CHECK(scenes > 20);
}

TEST_CASE("Hands that do not err build the plan itself: a hundred drawn plans") {
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        INFO("drawn plan " << seed);
        check_steady_hands_build_the_plan(book::drawn_scene(seed));
    }
}

TEST_CASE("Drawn plans are built by hands of every kind") {
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        Scene scene = book::drawn_scene(seed);
        const double much = seed % 3 == 0 ? 100 : seed % 3 == 1 ? 5 : 0.5;
        scene.hands = {.cut_mm = much, .place_mm = much, .turn_deg = much, .seed = 1, .unknown_fields = ""};
        const HandsReport report = hands_report(scene, 10);
        CHECK(report.pieces.size() == current_plan(scene).hung.size());
        CHECK(report == hands_report(scene, 10));
    }
}

TEST_CASE("A build is the same whatever was built before it") {
    const Scene scene = fair_example();
    Rebuilding upward(scene, current_plan(scene));
    Rebuilding downward(scene, current_plan(scene));
    std::vector<std::pair<std::vector<Piece>, Plan>> builds;
    for (int build = 0; build < 50; ++build) {
        upward.build(build);
        builds.emplace_back(upward.scene().pieces, upward.plan());
    }
    CHECK(builds[0] != builds[1]);
    for (int build = 49; build >= 0; --build) {
        downward.build(build);
        CHECK(builds[static_cast<std::size_t>(build)] == std::pair(downward.scene().pieces, downward.plan()));
    }
}

TEST_CASE("Builds asked for a few at a time come to the same; another seed comes to others") {
    Scene scene = fair_example();
    const HandsReport at_once = hands_report(scene, 300);
    ShakyHands hands(scene, current_plan(scene));
    for (const int more : {1, 2, 7, 0, 290}) hands.build(more);
    CHECK(hands.builds() == 300);
    CHECK(hands.report() == at_once);
    scene.hands.seed = 2;
    CHECK_FALSE(hands_report(scene, 300) == at_once);
}

TEST_CASE("The order of pieces in the file changes nothing, and a piece that moves leaves the others' errors alone") {
    const Scene scene = fair_example();
    Scene reversed = scene;
    std::reverse(reversed.pieces.begin(), reversed.pieces.end());
    for (Plan& plan : reversed.plans) std::reverse(plan.hung.begin(), plan.hung.end());
    const HandsReport here = hands_report(scene, 200);
    const HandsReport there = hands_report(reversed, 200);
    CHECK(here.pieces == there.pieces);
    CHECK(here.challenge == there.challenge);
    CHECK(here.all_hold == there.all_hold);

    SceneBuilder plan = with_level_branch();
    plan.hang(triangle(1, 60, 50, 50), under(50)).hang(triangle(2, 60, 50, 50), under(200));
    Rebuilding before(plan.scene, plan.plan());
    plan.pose_of(1).at_mm.x += 10;
    Rebuilding after(plan.scene, plan.plan());
    for (int build = 0; build < 100; ++build) {
        before.build(build);
        after.build(build);
        CHECK(before.plan().hung[1] == after.plan().hung[1]);
        CHECK(before.plan().hung[0].pose.at_mm.x + 10 == Approx(after.plan().hung[0].pose.at_mm.x));
    }
}

}  // namespace boughwork::testing
