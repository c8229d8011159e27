// SPDX-License-Identifier: MIT
// Builds are counted, and must come to what mathematics says of normal errors, within three standard errors.
#include <catch2/catch.hpp>

#include "rules/rebuilding.h"
#include "tests/hands/chances.h"

namespace boughwork::testing {
namespace {

constexpr int many = 4000;
constexpr double t = 1;  // the rulebook's default tolerance

/// A piece taped to the side of an upright branch, its lowest point that high: up and down nothing guides the hand.
SceneBuilder over_the_ground(double height_mm) {
    SceneBuilder plan;
    plan.branch("b1", {{0, 400}, {0, -30}});
    return plan.hang(rectangle(1, 60, 80), {.at_mm = {4, height_mm + 80}});
}

/// Two rectangles of 30 by 40 mm that far from each other on a level branch.
SceneBuilder two_neighbours(double gap_mm) {
    SceneBuilder plan = with_level_branch();
    plan.challenge().neighbours = Neighbours::apart;
    return plan.hang(rectangle(1, 30, 40), under(100)).hang(rectangle(2, 30, 40), under(130 + gap_mm));
}

}  // namespace

TEST_CASE("A piece over the ground stays clear of it as often as a normal error of its height says") {
    for (const double height_mm : {1.2, 2.0, 2.5, 4.0})
        for (const double sigma_mm : {0.7, 1.0, 2.0}) {
            SceneBuilder plan = over_the_ground(height_mm);
            plan.scene.hands = placing_within(sigma_mm);
            INFO(height_mm << " mm above the ground, errors of " << sigma_mm << " mm");
            const HandsReport report = built(plan, many);
            check_within_three_errors(piece(report, 1).holds, phi((height_mm - t) / sigma_mm));
            if (piece(report, 1).holds.times < many) CHECK(piece(report, 1).fails_by == Rule::ground);
        }
}

TEST_CASE("Two neighbours stay apart as often as the difference of two normal errors says") {
    for (const double gap_mm : {1.0, 2.0, 3.0, 5.0})
        for (const double sigma_mm : {0.5, 1.0, 1.5}) {
            SceneBuilder plan = two_neighbours(gap_mm);
            plan.scene.hands = placing_within(sigma_mm, 9);
            INFO(gap_mm << " mm apart, errors of " << sigma_mm << " mm");
            const HandsReport report = built(plan, many);
            const double expected = phi((gap_mm - t) / (sigma_mm * std::sqrt(2.0)));
            for (const int number : {1, 2}) check_within_three_errors(piece(report, number).holds, expected);
            check_within_three_errors(report.all_hold, expected);
        }
}

TEST_CASE("A piece near the end of its branch slips past it as often as a normal error says") {
    for (const double room_mm : {-0.5, 0.0, 1.0}) {
        SceneBuilder plan = with_level_branch();
        plan.hang(rectangle(1, 50, 40), under(400 - 50 - room_mm));
        plan.scene.hands = placing_within(1.5);
        INFO(room_mm << " mm of room");
        const HandsReport report = built(plan, many);
        check_within_three_errors(piece(report, 1).holds, phi((room_mm + t) / 1.5));
        CHECK(piece(report, 1).fails_by == Rule::runs_past_the_end);
    }
}

TEST_CASE("A piece planned to run past its end by a hair too much is taped there too: its chance does not jump") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 50, 40), under(400 - 50 + 1.5));
    REQUIRE_FALSE(counts(plan.check(), 1));
    plan.scene.hands = placing_within(1.5);
    check_within_three_errors(piece(built(plan, many), 1).holds, phi((t - 1.5) / 1.5));
}

TEST_CASE("A chain adds its errors: each piece errs against the one it hangs from") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 100, 40), under(100));
    plan.hang_from(1, 3, rectangle(2, 60, 40), {.side = 1, .from_mm = 20});
    plan.hang_from(2, 3, rectangle(3, 30, 40), {.side = 1, .from_mm = 15});
    plan.scene.hands = placing_within(2);
    Rebuilding rebuilding(plan.scene, plan.scene.plans.front());
    for (std::size_t i = 0; i < 3; ++i) {
        const double planned = plan.plan().hung[i].pose.at_mm.x;
        double squares = 0;
        for (int build = 0; build < many; ++build) {
            rebuilding.build(build);
            const double error = rebuilding.plan().hung[i].pose.at_mm.x - planned;
            squares += error * error / many;
        }
        // Variances add up; of n draws a variance is known within its share sqrt(2 / n).
        const double expected = 4.0 * static_cast<double>(i + 1);
        CHECK(std::abs(squares - expected) < 3 * expected * std::sqrt(2.0 / many));
    }
}

TEST_CASE("What hangs from nothing errs freely in x, in y and in its turn") {
    SceneBuilder plan = with_level_branch();
    plan.hang(triangle(1, 80, 60, 60), {.at_mm = {100, 250}});
    plan.scene.hands = {.cut_mm = 0, .place_mm = 2, .turn_deg = 3, .seed = 1, .unknown_fields = ""};
    Rebuilding rebuilding(plan.scene, plan.scene.plans.front());
    double x = 0;
    double y = 0;
    double turn = 0;
    for (int build = 0; build < many; ++build) {
        rebuilding.build(build);
        const Pose& pose = rebuilding.plan().hung[0].pose;
        const Vec2 middle = pose.at_mm + turned_ccw({40, 0}, pose.turn_ccw_deg / degrees_per_radian);
        x += (middle.x - 140) * (middle.x - 140) / many;
        y += (middle.y - 250) * (middle.y - 250) / many;
        turn += pose.turn_ccw_deg * pose.turn_ccw_deg / many;
    }
    CHECK(std::abs(x - 4) < 3 * 4 * std::sqrt(2.0 / many));
    CHECK(std::abs(y - 4) < 3 * 4 * std::sqrt(2.0 / many));
    CHECK(std::abs(turn - 9) < 3 * 9 * std::sqrt(2.0 / many));
}

TEST_CASE("A piece with room all around is taped well by every hand") {
    for (const bool by_a_short_side : {false, true}) {
        SceneBuilder plan = with_level_branch();
        plan.hang(by_a_short_side ? triangle(1, 20, 60, 60) : triangle(1, 200, 150, 150), under(100));
        plan.scene.hands = {.cut_mm = 1, .place_mm = 3, .turn_deg = 5, .seed = 4, .unknown_fields = ""};
        const HandsReport report = built(plan, 1000);
        CHECK(piece(report, 1).holds.times == 1000);
        CHECK(report.holds());
        CHECK(piece(report, 1).says == "Piece 1 holds in all 1000 builds.");
    }
}

TEST_CASE("Sides are cut with a normal error each, and never so that they make no triangle") {
    SceneBuilder plan = with_level_branch();
    plan.hang(triangle(1, 100, 80, 60), under(100)).hang(triangle(2, 30, 15.5, 15), under(250));
    plan.hang(cone(3, 20, 21), under(300)).hang(rectangle(4, 3, 3), under(350));
    plan.scene.hands = {.cut_mm = 2, .place_mm = 0, .turn_deg = 0, .seed = 1, .unknown_fields = ""};
    Rebuilding rebuilding(plan.scene, plan.scene.plans.front());
    double sum = 0;
    double squares = 0;
    for (int build = 0; build < many; ++build) {
        rebuilding.build(build);
        for (const Piece& piece : rebuilding.scene().pieces) REQUIRE(possible(piece.shape));
        const double error = to_mm(std::get<Triangle>(rebuilding.scene().pieces[0].shape).sides[1]) - 80;
        sum += error / many;
        squares += error * error / many;
        // The side it hangs by keeps its middle.
        const Segment held = side_of(rebuilding.scene().pieces[0], rebuilding.plan().hung[0].pose, 1);
        REQUIRE(0.5 * (held.from.x + held.to.x) == Approx(150));
    }
    CHECK(std::abs(sum) < 3 * 2 / std::sqrt(many));
    CHECK(std::abs(squares - 4) < 3 * 4 * std::sqrt(2.0 / many));
}

}  // namespace boughwork::testing
