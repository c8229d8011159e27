// SPDX-License-Identifier: MIT
// What a finding says: true to its number, in the challenge's unit, rounded to the safe side.
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// The first number before " mm".
double mm_said(const std::string& says) {
    CAPTURE(says);
    const std::size_t end = says.find(" mm");
    REQUIRE(end != std::string::npos);
    return std::stod(says.substr(says.rfind(' ', end - 1)));
}

/// Pieces 7 and 9 beside each other, flush but for that gap (below 0: over each other).
Finding between(double gap_mm, Neighbours neighbours = Neighbours::apart, Unit unit = Unit::mm) {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(7, 50, 60), under(100)).hang(rectangle(9, 50, 60), under(150 + gap_mm));
    plan.challenge().neighbours = neighbours;
    plan.challenge().units = unit;
    const Report report = plan.check();
    REQUIRE(report.findings.size() == 1);
    return report.findings[0];
}

Finding past_the_end(double by_mm, Unit unit = Unit::mm) {
    SceneBuilder plan = with_level_branch().hang(triangle(3, 80, 60, 50), under(320 + by_mm));
    plan.challenge().units = unit;
    return finding(plan.check(), Rule::runs_past_the_end, {3});
}

TEST_CASE("A gap that is too small is told as a gap, not as a touch") {
    const std::string says = between(0.8).says;
    CHECK(contains(says, "0.8 mm from piece 9"));
    CHECK(contains(says, "iece 7"));
    CHECK(contains(says, "more than 1 mm"));
    CHECK(contains(says, "away"));
    CHECK_FALSE(contains(says, "touch"));
}

TEST_CASE("A gap is never told larger than it is") {
    for (int hundredths = 1; hundredths < 100; ++hundredths) {
        const double gap_mm = hundredths / 100.0;
        const std::string says = between(gap_mm).says;
        CAPTURE(gap_mm, says);
        REQUIRE_FALSE(contains(says, "touch"));
        if (contains(says, "less than")) {
            REQUIRE(mm_said(says) > gap_mm);
            REQUIRE(mm_said(says) <= 0.1);
        } else {
            REQUIRE(mm_said(says) <= gap_mm + 1e-6);
            REQUIRE(mm_said(says) > gap_mm - 0.1);
        }
    }
}

TEST_CASE("The gap that is needed is the challenge's own") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(7, 50, 60), under(100)).hang(rectangle(9, 50, 60), under(151.7));
    plan.challenge().neighbours = Neighbours::apart;
    plan.challenge().tolerance_mm = 2.5;
    const std::string says = finding(plan.check(), Rule::touching, {7, 9}).says;
    CHECK(contains(says, "1.7 mm from piece 9"));
    CHECK(contains(says, "more than 2.5 mm"));
}

TEST_CASE("Pieces without a gap touch, and that is said") {
    CHECK(contains(between(0).says, "touch"));
    CHECK(contains(between(-0.5).says, "touch"));
}

TEST_CASE("Where any touch but along a side is allowed, the sentence does not ask for a gap that is not needed") {
    // Under `corners` a corner may touch: "it must be more than 1 mm away" would not be the whole truth.
    const std::string says = between(0.5, Neighbours::corners).says;
    CHECK(contains(says, "side"));
}

TEST_CASE("An overlap is never told smaller than it is") {
    for (const double deep_mm : {1.01, 1.96, 3.0, 3.24, 17.349}) {
        const Finding found = between(-deep_mm);
        CHECK(found.rule == Rule::overlap);
        CHECK(found.amount == Approx(-deep_mm));
        CAPTURE(found.says);
        CHECK(mm_said(found.says) >= deep_mm - 1e-6);
        CHECK(mm_said(found.says) < deep_mm + 1);
        CHECK(contains(found.says, "9"));
        CHECK(contains(found.says, "7"));
    }
}

TEST_CASE("How far a piece sticks out is never told smaller than it is, and at which end") {
    for (const double by_mm : {1.01, 2.0, 21.0, 21.4, 33.96}) {
        const std::string says = past_the_end(by_mm).says;
        CAPTURE(says);
        CHECK(mm_said(says) >= by_mm - 1e-6);
        CHECK(mm_said(says) < by_mm + 1);
        CHECK(contains(says, "right end"));
    }
    const Report left = with_level_branch().hang(triangle(3, 80, 60, 50), under(-12)).check();
    CHECK(contains(finding(left, Rule::runs_past_the_end, {3}).says, "12 mm past the left end"));
}

TEST_CASE("Sentences are in the unit of the challenge") {
    CHECK(contains(past_the_end(21).says, "21 mm"));
    CHECK(contains(past_the_end(21, Unit::cm).says, "2.1 cm"));
    CHECK(contains(past_the_end(12.7, Unit::in).says, "1/2 inch"));
    CHECK(contains(past_the_end(63.5, Unit::in).says, "2 1/2 inches"));
    CHECK_FALSE(contains(past_the_end(63.5, Unit::in).says, "mm"));
    CHECK_FALSE(contains(between(0.8, Neighbours::apart, Unit::in).says, "mm"));
}

TEST_CASE("Ground, trunk and branches are told with their distance") {
    SceneBuilder low =
        SceneBuilder().branch("b1", {{0, 104}, {400, 104}}).hang(rectangle(1, 40, 99.2), {.at_mm = {100, 100}});
    CHECK(contains(finding(low.check(), Rule::ground, {1}).says, "0.8 mm"));
    CHECK(contains(finding(low.check(), Rule::ground, {1}).says, "ground"));
    low.scene.pieces[0] = rectangle(1, 40, 103.2);
    CHECK(mm_said(finding(low.check(), Rule::ground, {1}).says) >= 3.2 - 1e-6);

    SceneBuilder beside = with_level_branch().hang(rectangle(1, 40, 30), under(20.8));
    beside.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    CHECK(contains(finding(beside.check(), Rule::trunk, {1}).says, "0.8 mm"));
    CHECK(contains(finding(beside.check(), Rule::trunk, {1}).says, "trunk"));

    SceneBuilder above =
        with_level_branch().branch("oak", {{0, 304}, {400, 304}}).hang(rectangle(1, 40, 91.2), under(100));
    CHECK(contains(finding(above.check(), Rule::other_branch, {1}).says, "0.8 mm"));
    CHECK(contains(finding(above.check(), Rule::other_branch, {1}).says, "oak"));
}

TEST_CASE("The way of touching is said of a piece that does not hang by a whole side") {
    const auto says = [](const SceneBuilder& plan, int number) {
        return finding(plan.check(), Rule::not_by_a_whole_side, {number}).says;
    };
    const Piece tip = outline(1, {{0, 0}, {40, -60}, {-40, -60}});
    CHECK(contains(says(with_level_branch().hang(tip, {.at_mm = {200, 400}}), 1), "corner"));
    CHECK(contains(says(with_level_branch().hang(rectangle(1, 40, 20), {.at_mm = {100, 428}}), 1), "above"));
    // Turned by 6 degrees, a side of 100 mm is near the branch for 9.6 mm.
    const Pose part = {.at_mm = {100, 400}, .turn_ccw_deg = -4};
    CHECK(contains(says(with_level_branch().hang(rectangle(1, 100, 20), part), 1), "part"));
}

TEST_CASE("Every finding names its pieces in number order, shows a place and is one sentence") {
    SceneBuilder plan = with_level_branch().branch("b2", {{0, 104}, {200, 104}});
    plan.challenge().limits.side.least = length_from_mm(25);
    plan.challenge().limits.pieces.most = 1;
    plan.challenge().holds = Holds::counting;
    plan.hang(rectangle(12, 60, 40), under(361)).hang_from(12, 3, rectangle(4, 20, 30), {});
    plan.hang(rectangle(2, 50, 60), under(20)).hang(rectangle(1, 50, 60), under(70));
    plan.hang(rectangle(3, 30, 40), under(200)).hang(rectangle(5, 30, 40), under(240));
    plan.hang_from(5, 3, rectangle(6, 30, 30), {}).hang(rectangle(7, 50, 30), {.at_mm = {250, 200}});
    plan.hang(rectangle(8, 50, 99.5), {.at_mm = {20, 100}}).hang(rectangle(9, 50, 30), {.at_mm = {100, 120}});
    plan.hang(rectangle(10, 50, 30), {.at_mm = {140, 138}}).hang(rectangle(11, 40, 100), under(300));
    const Report report = plan.check();
    CHECK(report.findings.size() >= 10);
    for (const Finding& found : report.findings) {
        CAPTURE(name_of(found.rule), found.says);
        CHECK_FALSE(found.pieces.empty());
        CHECK(std::is_sorted(found.pieces.begin(), found.pieces.end()));
        CHECK_FALSE(found.at_fault.empty());
        CHECK((found.where_mm.size() == 1 || found.where_mm.size() == 2));
        CHECK(found.says.back() == '.');
        CHECK(std::count(found.says.begin(), found.says.end(), '\n') == 0);
        CHECK_FALSE(contains(found.says, ". "));
        for (const PieceNumber number : found.pieces) CHECK(contains(found.says, std::to_string(number.value)));
        for (const PieceNumber number : found.at_fault) CHECK(breaks(report, number.value, found.rule));
    }
    // What a piece broke is what findings hold against it, no more and no less.
    for (const PieceReport& one : report.pieces)
        for (const Rule rule : one.broken) {
            bool told = false;
            for (const Finding& found : report.findings)
                told = told ||
                       (found.rule == rule && std::count(found.at_fault.begin(), found.at_fault.end(), one.number));
            CAPTURE(one.number.value, name_of(rule));
            CHECK(told);
        }
}

TEST_CASE("Rules are named as in the rulebook") {
    const std::pair<Rule, std::string> names[] = {{Rule::runs_past_the_end, "runs past the end"},
                                                  {Rule::over_a_branch, "over a branch"},
                                                  {Rule::not_by_a_whole_side, "not by a whole side"},
                                                  {Rule::cut_off, "cut off"},
                                                  {Rule::held_by_nothing, "held by nothing"},
                                                  {Rule::too_deep, "too deep"},
                                                  {Rule::ground, "ground"},
                                                  {Rule::trunk, "trunk"},
                                                  {Rule::other_branch, "other branch"},
                                                  {Rule::overlap, "overlap"},
                                                  {Rule::touching, "touching"},
                                                  {Rule::wrong_size, "wrong size"},
                                                  {Rule::over_the_limit, "over the limit"}};
    for (const auto& [rule, words] : names) CHECK(name_of(rule) == words);
}

}  // namespace
}  // namespace boughwork::testing
