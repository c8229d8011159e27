// SPDX-License-Identifier: MIT
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// Piece 1, a banner 100 mm wide and 60 high, from x = 100 to 200; chains may grow.
SceneBuilder with_banner() {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 100, 60), under(100));
    plan.challenge().depth_limit.reset();
    return plan;
}

/// Two pieces 20 mm apart, each from a branch of its own, whose flanks open downward, and piece 3 that hangs
/// from both of these flanks; the right one reaches `right_mm` to the right at its tip, the left one 40 mm.
SceneBuilder with_two_parents(double right_mm, int left_number, int right_number, bool left_branch_first) {
    SceneBuilder plan;
    plan.challenge().depth_limit = 2;
    if (left_branch_first) plan.branch("west", {{50, 404}, {175, 404}});
    plan.branch("east", {{185, 404}, {400, 404}});
    if (!left_branch_first) plan.branch("west", {{50, 404}, {175, 404}});
    plan.hang(outline(left_number, {{0, 0}, {80, 0}, {40, -80}}), under(90));
    plan.hang(outline(right_number, {{0, 0}, {120, 0}, {right_mm, -80}}), under(190));
    // A quarter of the way down its upper side reaches from flank to flank, at the tips its lower side.
    plan.hang(outline(3, {{0, 0}, {30 + right_mm / 4, 0}, {30 + right_mm, -60}, {-30, -60}}), {.at_mm = {160, 380}});
    return plan;
}

TEST_CASE("A piece hung from a hanging piece hangs one deeper, carried by the same branch") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 3, triangle(2, 80, 60, 50), {.side = 2, .from_mm = 10});
    plan.hang_from(2, 1, triangle(3, 40, 30, 35), {.from_mm = 10});
    const Report report = plan.check();
    CHECK(report.findings.empty());
    CHECK(piece(report, 2).depth == 2);
    CHECK(piece(report, 2).side == 2);
    REQUIRE(hangs(report, 2));
    CHECK(piece(report, 2).hangs_from->piece == PieceNumber{1});
    CHECK(piece(report, 2).hangs_from->side == 3);
    CHECK(values(piece(report, 2).parents) == std::vector{1});
    CHECK(piece(report, 3).depth == 3);
    REQUIRE(hangs(report, 3));
    CHECK(piece(report, 3).hangs_from->piece == PieceNumber{2});
    CHECK(piece(report, 3).hangs_from->branch == 0);
    CHECK(counts(report, 3));
}

TEST_CASE("Only branches hold pieces where the depth limit is 1, as it is unless the challenge says otherwise") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 3, rectangle(2, 80, 30), {.from_mm = 10});
    plan.hang_from(2, 3, rectangle(3, 60, 30), {.from_mm = 10});
    plan.challenge().depth_limit = Challenge{}.depth_limit;
    Report report = plan.check();
    CHECK(counts(report, 1));
    CHECK(broken(report, 2) == std::vector{Rule::too_deep});
    CHECK(broken(report, 3) == std::vector{Rule::too_deep});
    CHECK(hangs(report, 2));
    CHECK(values(finding(report, Rule::too_deep, {2}).at_fault) == std::vector{2});

    plan.challenge().depth_limit = 2;
    report = plan.check();
    CHECK(counts(report, 2));
    CHECK(broken(report, 3) == std::vector{Rule::too_deep});

    plan.challenge().depth_limit.reset();
    CHECK(counts(plan.check(), 3));
}

TEST_CASE("A piece that is too deep is told how deep it is, and what is allowed") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 3, rectangle(2, 80, 30), {.from_mm = 10});
    plan.hang_from(2, 3, rectangle(3, 60, 30), {.from_mm = 10});
    plan.challenge().depth_limit = 1;
    CHECK(contains(finding(plan.check(), Rule::too_deep, {2}).says, "branches only"));
    CHECK(finding(plan.check(), Rule::too_deep, {3}).amount == 3);
    CHECK(finding(plan.check(), Rule::too_deep, {3}).unit == AmountIn::count);
    plan.challenge().depth_limit = 2;
    const std::string says = finding(plan.check(), Rule::too_deep, {3}).says;
    CHECK_FALSE(contains(says, "branches only"));
    CHECK(contains(says, "2"));
}

TEST_CASE("A piece hangs from a side that looks sideways") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 2, triangle(2, 40, 30, 30), {.from_mm = 5});
    plan.hang_from(1, 4, triangle(3, 40, 30, 30), {.from_mm = 15});
    const Report report = plan.check();
    CHECK(counts(report, 2));
    CHECK(counts(report, 3));
}

TEST_CASE("A side that looks up by more than five degrees holds nothing") {
    const auto flared = [](double deg) {
        SceneBuilder plan = with_level_branch();
        plan.challenge().depth_limit.reset();
        const Vec2 flank = turned_ccw({0, -60}, deg / degrees_per_radian);
        plan.hang(outline(1, {{0, 0}, {80, 0}, {80 + flank.x, flank.y}, {0, flank.y}}), under(100));
        plan.hang_from(1, 2, rectangle(2, 30, 20), {.from_mm = 10});
        return plan.check();
    };
    CHECK(counts(flared(4.9), 2));
    CHECK_FALSE(hangs(flared(5.1), 2));
    CHECK(breaks(flared(5.1), 2, Rule::not_by_a_whole_side));
}

TEST_CASE("A piece on the shoulder of a hanging piece does not hang") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {200, 404}});
    plan.challenge().depth_limit.reset();
    plan.hang(outline(1, {{0, 0}, {80, 0}, {120, -40}}), under(120));
    plan.hang_from(1, 2, rectangle(2, 30, 10), {.from_mm = 5});
    CHECK(counts(plan.check(), 1));
    CHECK(breaks(plan.check(), 2, Rule::not_by_a_whole_side));
}

TEST_CASE("A piece that lies on a branch and on a piece hangs from the branch") {
    SceneBuilder plan = with_banner();
    plan.hang(rectangle(2, 60, 40), under(200));  // Flush with the banner.
    plan.challenge().neighbours = Neighbours::sides;
    const Report report = plan.check();
    CHECK(piece(report, 2).depth == 1);
    CHECK_FALSE(piece(report, 2).hangs_from->piece);
    CHECK(piece(report, 2).parents.empty());
    CHECK(piece(report, 1).parents.empty());
}

TEST_CASE("A piece's parents are the pieces one depth up alone") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 3, rectangle(2, 40, 30), {.from_mm = 0});
    plan.hang_from(1, 3, rectangle(3, 40, 40), {.from_mm = 40});  // Flush with piece 2, which is as deep.
    const Report report = plan.check();
    CHECK(values(piece(report, 3).parents) == std::vector{1});
    CHECK(values(piece(report, 2).parents) == std::vector{1});
    CHECK(broken(report, 2) == std::vector{Rule::touching});
    CHECK(broken(report, 3) == std::vector{Rule::touching});
}

TEST_CASE("Of two parents the one with the longer side is told") {
    const Report report = with_two_parents(60, 1, 2, true).check();
    CHECK(report.findings.empty());
    CHECK(values(piece(report, 3).parents) == std::vector{1, 2});
    REQUIRE(hangs(report, 3));
    CHECK(piece(report, 3).hangs_from->piece == PieceNumber{2});
    CHECK(piece(report, 3).hangs_from->branch == 1);
    CHECK(piece(report, 3).side == 2);
    // The left flank is the longer one when the right one is steeper.
    CHECK(piece(with_two_parents(20, 1, 2, true).check(), 3).hangs_from->piece == PieceNumber{1});
    CHECK(piece(with_two_parents(20, 1, 2, false).check(), 3).hangs_from->piece == PieceNumber{1});
}

TEST_CASE("Of two parents with equal sides the one on the branch first in the file is told") {
    const Report west_first = with_two_parents(40, 2, 1, true).check();
    CHECK(values(piece(west_first, 3).parents) == std::vector{1, 2});
    REQUIRE(hangs(west_first, 3));
    CHECK(piece(west_first, 3).hangs_from->piece == PieceNumber{2});
    CHECK(piece(west_first, 3).hangs_from->branch == 0);
    const Report east_first = with_two_parents(40, 2, 1, false).check();
    REQUIRE(hangs(east_first, 3));
    CHECK(piece(east_first, 3).hangs_from->piece == PieceNumber{1});
    CHECK(piece(east_first, 3).hangs_from->branch == 0);
}

TEST_CASE("Of two equal parents on one branch the lower number is told") {
    for (const bool left_is_lower : {true, false}) {
        SceneBuilder plan = with_level_branch();
        plan.challenge().depth_limit = 2;
        plan.hang(outline(left_is_lower ? 1 : 5, {{0, 0}, {80, 0}, {40, -80}}), under(100));
        plan.hang(outline(left_is_lower ? 5 : 1, {{0, 0}, {80, 0}, {40, -80}}), under(180));
        plan.hang(outline(3, {{0, 0}, {40, -80}, {-40, -80}}), under(180));
        const Report report = plan.check();
        CHECK(report.findings.empty());  // The two meet corner to corner, and piece 3 fills the V.
        CHECK(values(piece(report, 3).parents) == std::vector{1, 5});
        REQUIRE(hangs(report, 3));
        CHECK(piece(report, 3).hangs_from->piece == PieceNumber{1});
        CHECK(piece(report, 3).side == (left_is_lower ? 3 : 1));
    }
}

TEST_CASE("The pieces of a chain may come in any order in the file") {
    SceneBuilder plan = with_banner();
    plan.hang_from(1, 3, rectangle(2, 80, 30), {.from_mm = 10});
    plan.hang_from(2, 3, rectangle(3, 60, 30), {.from_mm = 10});
    const Report report = plan.check();
    std::reverse(plan.plan().hung.begin(), plan.plan().hung.end());
    std::reverse(plan.scene.pieces.begin(), plan.scene.pieces.end());
    CHECK(plan.check() == report);
    CHECK(piece(report, 3).depth == 3);
}

TEST_CASE("A long chain keeps its depths") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 2004}, {400, 2004}});
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 60, 20), {.at_mm = {100, 2000}});
    for (int number = 2; number <= 60; ++number) plan.hang_from(number - 1, 3, rectangle(number, 60, 20), {});
    const Report report = plan.check();
    for (int number = 1; number <= 60; ++number) REQUIRE(piece(report, number).depth == number);
    CHECK(report.score == 60 * 160);
}

}  // namespace
}  // namespace boughwork::testing
