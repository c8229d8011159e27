// SPDX-License-Identifier: MIT
// The challenge as a whole: what each of its lines asks, whether it is met, and in which counts.
#include <array>

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

const std::array<double, 3> equilateral{30, 30, 30};
const std::array<double, 3> isosceles{30, 40, 40};  // Acute.
const std::array<double, 3> right{50, 40, 30};      // Scalene.
const std::array<double, 3> obtuse{40, 30, 20};     // Scalene.

/// Triangles numbered from 1, side by side on a branch that is long enough.
SceneBuilder hanging(const std::vector<std::array<double, 3>>& triangles) {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {4000, 404}});
    int number = 0;
    for (const auto& [a, b, c] : triangles) {
        ++number;
        plan.hang(triangle(number, a, b, c), under(60 * number));
    }
    return plan;
}

/// `of_these` triangles of one kind, then `others`.
SceneBuilder mixed(int of_these, const std::array<double, 3>& kind, int others, const std::array<double, 3>& rest) {
    std::vector<std::array<double, 3>> all(static_cast<std::size_t>(of_these), kind);
    all.insert(all.end(), static_cast<std::size_t>(others), rest);
    return hanging(all);
}

ChallengeLine asked(SceneBuilder plan, decltype(Criterion::asks) asks) {
    plan.challenge().criteria = {{std::move(asks), ""}};
    const Report report = plan.check();
    const ChallengeLine* line = find_line(report, "criteria/0");
    REQUIRE(line);
    CHECK(report.challenge.size() == 1);
    return *line;
}

void check_line(const ChallengeLine& line, bool met, double have, double need) {
    CAPTURE(line.about, line.asks, line.says);
    CHECK(line.met == met);
    CHECK(line.have == have);
    CHECK(line.need == need);
}

KindShare share(Kind kind, double percent, bool at_most = false, ShareOf of = ShareOf::pieces) {
    return {.kind = kind, .percent = percent, .at_most = at_most, .of = of};
}

TEST_CASE("A challenge that asks nothing has no lines") { CHECK(hanging({right}).check().challenge.empty()); }

TEST_CASE("Lines come in the order pieces, branches, pieces per branch, sheets, criteria") {
    SceneBuilder plan = hanging({right}).branch("b2", {{0, 204}, {100, 204}});
    plan.challenge().limits.pieces.least = 1;
    plan.challenge().limits.branches.least = 1;
    plan.challenge().limits.pieces_per_branch.most = 3;
    plan.challenge().limits.sheets = 4;
    plan.challenge().criteria = {{NoTwoAlike{1}, ""}, {KindAppears{Kind::right, 1}, ""}};
    std::vector<std::string> about;
    for (const ChallengeLine& line : plan.check().challenge) {
        about.push_back(line.about);
        CHECK_FALSE(line.asks.empty());
        CHECK_FALSE(line.says.empty());
    }
    CHECK(about == std::vector<std::string>{"pieces", "branches", "pieces_per_branch/b1", "pieces_per_branch/b2",
                                            "sheets", "criteria/0", "criteria/1"});
}

TEST_CASE("Lines appear only where they ask something") {
    SceneBuilder plan = hanging({right});
    plan.challenge().limits.branches.most = 2;
    const Report report = plan.check();
    REQUIRE(report.challenge.size() == 1);
    CHECK(report.challenge[0].about == "branches");
}

TEST_CASE("The number of pieces that count has a least and a most") {
    SceneBuilder plan = hanging({right, right, obtuse});
    plan.keep(triangle(9, 30, 30, 30)).hang(triangle(8, 30, 30, 30), {.at_mm = {100, 200}});
    plan.challenge().limits.pieces.least = 3;
    check_line(*find_line(plan.check(), "pieces"), true, 3, 3);
    plan.challenge().limits.pieces.least = 4;
    check_line(*find_line(plan.check(), "pieces"), false, 3, 4);
    plan.challenge().limits.pieces = {.least = {}, .most = 3};
    check_line(*find_line(plan.check(), "pieces"), true, 3, 3);
    plan.challenge().limits.pieces = {.least = {}, .most = 2};
    check_line(*find_line(plan.check(), "pieces"), true, 2, 2);  // The third is over the limit.
    plan.challenge().limits.pieces = {.least = 1, .most = 3};
    CHECK(find_line(plan.check(), "pieces")->met == true);
    plan.challenge().limits.pieces = {.least = 4, .most = 5};
    check_line(*find_line(plan.check(), "pieces"), false, 3, 4);
}

TEST_CASE("A line asks in words for at least, at most, or both") {
    SceneBuilder plan = hanging({right});
    const auto asks = [&](Range<int> range) {
        plan.challenge().limits.pieces = range;
        return find_line(plan.check(), "pieces")->asks;
    };
    CHECK(contains(asks({.least = 3, .most = {}}), "at least 3"));
    CHECK(contains(asks({.least = {}, .most = 7}), "at most 7"));
    CHECK(contains(asks({.least = 3, .most = 7}), "3"));
    CHECK(contains(asks({.least = 3, .most = 7}), "7"));
}

TEST_CASE("Each branch is asked for the counting pieces that it carries, chains included") {
    SceneBuilder plan = with_level_branch().branch("b2", {{0, 204}, {400, 204}}).hang(rectangle(1, 60, 30), under(100));
    plan.challenge().depth_limit.reset();
    plan.hang_from(1, 3, rectangle(2, 60, 30), {});
    plan.hang(rectangle(3, 60, 30), {.at_mm = {100, 200}}).hang(rectangle(4, 60, 30), {.at_mm = {100, 100}});
    plan.challenge().limits.pieces_per_branch.least = 2;
    const Report report = plan.check();
    check_line(*find_line(report, "pieces_per_branch/b1"), true, 2, 2);
    check_line(*find_line(report, "pieces_per_branch/b2"), false, 1, 2);
}

TEST_CASE("The number of branches in the tree has a least and a most") {
    SceneBuilder plan = hanging({right}).branch("b2", {{0, 204}, {100, 204}});
    plan.challenge().limits.branches = {.least = 3, .most = {}};
    check_line(*find_line(plan.check(), "branches"), false, 2, 3);
    plan.challenge().limits.branches = {.least = 2, .most = {}};
    check_line(*find_line(plan.check(), "branches"), true, 2, 2);
    plan.challenge().limits.branches = {.least = {}, .most = 1};
    check_line(*find_line(plan.check(), "branches"), false, 2, 1);
    plan.challenge().limits.branches = {.least = {}, .most = 2};
    check_line(*find_line(plan.check(), "branches"), true, 2, 2);
}

TEST_CASE("Sheets of paper are asked for, and not judged yet") {
    SceneBuilder plan = hanging({right});
    plan.challenge().limits.sheets = 4;
    REQUIRE(find_line(plan.check(), "sheets"));
    CHECK_FALSE(find_line(plan.check(), "sheets")->met);
    CHECK(all_well(plan.check()));
}

TEST_CASE("Of pieces that are alike one is told among those of which no two are alike") {
    SceneBuilder plan = hanging({right, {30, 50, 40}, obtuse, {40.3, 30, 20}, equilateral});
    plan.keep(triangle(9, 33, 33, 33)).hang(triangle(8, 35, 35, 35), {.at_mm = {100, 200}});
    check_line(asked(plan, NoTwoAlike{3}), true, 3, 3);
    check_line(asked(plan, NoTwoAlike{4}), false, 3, 4);
    plan.challenge().step = {1, 10, Unit::mm};  // Now 40.3 is not 40.
    check_line(asked(plan, NoTwoAlike{4}), true, 4, 4);
}

TEST_CASE("A kind must appear among the counting pieces, by sides or by angles") {
    SceneBuilder plan = hanging({right, obtuse, equilateral});
    plan.hang(triangle(9, 50, 40, 30), {.at_mm = {100, 200}});  // Held by nothing.
    check_line(asked(plan, KindAppears{Kind::right, 1}), true, 1, 1);
    check_line(asked(plan, KindAppears{Kind::right, 2}), false, 1, 2);
    check_line(asked(plan, KindAppears{Kind::scalene, 2}), true, 2, 2);
    check_line(asked(plan, KindAppears{Kind::obtuse, 1}), true, 1, 1);
    check_line(asked(plan, KindAppears{Kind::acute, 1}), true, 1, 1);
    check_line(asked(plan, KindAppears{Kind::equilateral, 1}), true, 1, 1);
    check_line(asked(plan, KindAppears{Kind::isosceles, 1}), false, 0, 1);
    plan.challenge().equilateral_is_isosceles = true;
    check_line(asked(plan, KindAppears{Kind::isosceles, 1}), true, 1, 1);
}

TEST_CASE("A least share is met by enough of the counting triangles, and the line says how many would do") {
    check_line(asked(mixed(1, isosceles, 3, right), share(Kind::isosceles, 25)), true, 1, 1);
    check_line(asked(mixed(1, isosceles, 4, right), share(Kind::isosceles, 25)), false, 1, 2);
    check_line(asked(mixed(2, isosceles, 3, right), share(Kind::isosceles, 25)), true, 2, 2);
    check_line(asked(mixed(0, isosceles, 3, right), share(Kind::isosceles, 25)), false, 0, 1);
}

TEST_CASE("A least share of nothing is met by any triangles, and still asks for one where there is none") {
    check_line(asked(mixed(0, isosceles, 3, right), share(Kind::isosceles, 0)), true, 0, 0);
    check_line(asked(hanging({}), share(Kind::isosceles, 0)), false, 0, 1);
}

TEST_CASE("A greatest share is met by few enough of the counting triangles") {
    check_line(asked(mixed(1, isosceles, 3, right), share(Kind::isosceles, 25, true)), true, 1, 1);
    check_line(asked(mixed(2, isosceles, 3, right), share(Kind::isosceles, 25, true)), false, 2, 1);
    check_line(asked(mixed(0, isosceles, 3, right), share(Kind::isosceles, 25, true)), true, 0, 0);
}

TEST_CASE("A share is never decided on rounded per cents") {
    check_line(asked(mixed(2, isosceles, 1, right), share(Kind::isosceles, 67)), false, 2, 3);  // 66.67 %
    check_line(asked(mixed(1, isosceles, 2, right), share(Kind::isosceles, 33)), true, 1, 1);   // 33.33 %
    check_line(asked(mixed(1, isosceles, 2, right), share(Kind::isosceles, 33, true)), false, 1, 0);
    check_line(asked(mixed(1, isosceles, 2, right), share(Kind::isosceles, 33.4)), false, 1, 2);
}

TEST_CASE("A share is decided by multiplying out") {
    // In doubles 7 / 25 x 100 is 28.000000000000004, and 28 / 100 x 25 is more than 7 as well.
    REQUIRE(7.0 / 25 * 100 > 28);
    REQUIRE(28.0 / 100 * 25 > 7);
    check_line(asked(mixed(7, isosceles, 18, right), share(Kind::isosceles, 28)), true, 7, 7);
    check_line(asked(mixed(7, isosceles, 18, right), share(Kind::isosceles, 28, true)), true, 7, 7);
    check_line(asked(mixed(6, isosceles, 19, right), share(Kind::isosceles, 28)), false, 6, 7);
    check_line(asked(mixed(8, isosceles, 17, right), share(Kind::isosceles, 28, true)), false, 8, 7);
}

TEST_CASE("A share line says how many there are, of how many, and how many are needed") {
    const ChallengeLine line = asked(mixed(2, isosceles, 7, right), share(Kind::isosceles, 33));
    check_line(line, false, 2, 3);
    CHECK(contains(line.says, "isosceles"));
    CHECK(contains(line.says, "2 of 9"));
    CHECK(contains(line.says, "3 needed"));
}

TEST_CASE("A share is one of the counting triangles alone") {
    SceneBuilder plan = mixed(1, isosceles, 3, right);
    plan.hang(rectangle(20, 30, 30), under(1000)).hang(cone(21, 15, 40), under(1100));
    plan.hang(triangle(22, 50, 40, 30), {.at_mm = {100, 200}}).keep(triangle(23, 50, 40, 30));
    check_line(asked(plan, share(Kind::isosceles, 25)), true, 1, 1);
}

TEST_CASE("Of no triangles a least share is not met, and a greatest is") {
    for (const SceneBuilder& plan : {hanging({}), hanging({}).hang(rectangle(1, 30, 30), under(100))}) {
        CHECK(asked(plan, share(Kind::isosceles, 25)).met == false);
        CHECK(asked(plan, share(Kind::isosceles, 0)).met == false);
        CHECK(asked(plan, share(Kind::isosceles, 25, true)).met == true);
        CHECK(asked(plan, share(Kind::isosceles, 25, false, ShareOf::points)).met == false);
        CHECK(asked(plan, share(Kind::isosceles, 25, true, ShareOf::points)).met == true);
    }
}

TEST_CASE("A share can be one of the points") {
    // Perimeters: equilateral 90, right 120 each. 90 of 330 points is 27.3 %, of the pieces 33.3 %.
    const SceneBuilder plan = mixed(1, equilateral, 2, right);
    CHECK(asked(plan, share(Kind::equilateral, 30)).met == true);
    CHECK(asked(plan, share(Kind::equilateral, 30, false, ShareOf::points)).met == false);
    CHECK(asked(plan, share(Kind::equilateral, 27, false, ShareOf::points)).met == true);
    CHECK(asked(plan, share(Kind::equilateral, 27, true, ShareOf::points)).met == false);
    CHECK(asked(plan, share(Kind::equilateral, 28, true, ShareOf::points)).met == true);
    // 90 of 90 + 120 + 150 is a quarter exactly.
    const SceneBuilder quarter = hanging({equilateral, {50, 40, 30}, {60, 50, 40}});
    CHECK(asked(quarter, share(Kind::equilateral, 25, false, ShareOf::points)).met == true);
    CHECK(asked(quarter, share(Kind::equilateral, 25, true, ShareOf::points)).met == true);
}

TEST_CASE("Bonuses are no part of a share of the points") {
    SceneBuilder plan = mixed(1, equilateral, 2, right);
    plan.challenge().score.bonuses = {{.for_what = PerPiece{Kind::equilateral}, .points = 1000}};
    CHECK(asked(plan, share(Kind::equilateral, 28, true, ShareOf::points)).met == true);
}

TEST_CASE("An unmet line disqualifies no piece") {
    SceneBuilder plan = hanging({right, obtuse});
    plan.challenge().limits.pieces.least = 5;
    plan.challenge().criteria = {{KindAppears{Kind::equilateral, 1}, ""}};
    const Report report = plan.check();
    CHECK(report.score == 210);
    CHECK(counts(report, 1));
    CHECK(counts(report, 2));
    CHECK_FALSE(all_well(report));
}

TEST_CASE("All is well when every hung piece counts and every judged line is met") {
    SceneBuilder plan = hanging({right, obtuse}).keep(triangle(9, 30, 30, 30));
    plan.challenge().limits.pieces.least = 2;
    CHECK(all_well(plan.check()));
    plan.hang(triangle(10, 30, 30, 30), {.at_mm = {100, 200}});
    CHECK_FALSE(all_well(plan.check()));
}

}  // namespace
}  // namespace boughwork::testing
