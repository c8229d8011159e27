// SPDX-License-Identifier: MIT
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// The level branch, with the challenge's limits on sides and height.
SceneBuilder limited(std::optional<double> least_side, std::optional<double> most_side,
                     std::optional<double> least_height) {
    SceneBuilder plan = with_level_branch();
    Limits& limits = plan.challenge().limits;
    if (least_side) limits.side.least = length_from_mm(*least_side);
    if (most_side) limits.side.most = length_from_mm(*most_side);
    if (least_height) limits.least_height = length_from_mm(*least_height);
    return plan;
}

bool right_size(SceneBuilder plan, const Piece& piece) {
    const Report report = plan.hang(piece, under(100)).check();
    CHECK(hangs(report, 1));
    CHECK(breaks(report, 1, Rule::wrong_size) != counts(report, 1));
    return !breaks(report, 1, Rule::wrong_size);
}

TEST_CASE("A side may be as short as the limit itself, and no shorter") {
    CHECK(right_size(limited(20, {}, {}), triangle(1, 80, 80, 20)));
    CHECK_FALSE(right_size(limited(20, {}, {}), triangle(1, 80, 80, 19.9995)));
    CHECK_FALSE(right_size(limited(20, {}, {}), triangle(1, 80, 19.9995, 80)));
}

TEST_CASE("A side may be as long as the limit itself, and no longer") {
    CHECK(right_size(limited({}, 80, {}), triangle(1, 80, 80, 20)));
    CHECK_FALSE(right_size(limited({}, 80, {}), triangle(1, 60, 80.0005, 40)));
}

TEST_CASE("Size is judged by true length, not by what the ruler of the challenge says") {
    SceneBuilder plan = limited(20, 80, {});
    plan.challenge().step = {1, 1, Unit::cm};
    CHECK_FALSE(right_size(plan, triangle(1, 60, 60, 19.6)));  // Measures 2 cm.
    CHECK_FALSE(right_size(plan, triangle(1, 80.4, 60, 60)));  // Measures 8 cm.
}

TEST_CASE("The sides of an outline are limited as exactly as a triangle's") {
    CHECK(right_size(limited(50, {}, {}), outline(1, {{0, 0}, {80, 0}, {80, -60}, {40, -90}, {0, -60}})));  // 30-40-50
    CHECK_FALSE(right_size(limited(50.0005, {}, {}), outline(1, {{0, 0}, {80, 0}, {80, -60}, {40, -90}, {0, -60}})));
}

TEST_CASE("The least height may be the limit itself") {
    CHECK(right_size(limited({}, {}, 24), triangle(1, 30, 40, 50)));
    CHECK_FALSE(right_size(limited({}, {}, 24.0005), triangle(1, 30, 40, 50)));
    CHECK(right_size(limited({}, {}, 40), rectangle(1, 90, 40)));
    CHECK_FALSE(right_size(limited({}, {}, 40.0005), rectangle(1, 90, 40)));
}

TEST_CASE("A piece no higher than the tolerance is the wrong size even where there are no limits") {
    CHECK(right_size(with_level_branch(), outline(1, {{0, 0}, {100, 0}, {50, -1.01}})));
    CHECK_FALSE(right_size(with_level_branch(), outline(1, {{0, 0}, {100, 0}, {50, -1}})));
    CHECK_FALSE(right_size(with_level_branch(), outline(1, {{0, 0}, {100, 0}, {50, -0.99}})));
}

TEST_CASE("A piece of the wrong size is told so whether it hangs or not, but not in the envelope") {
    SceneBuilder plan = limited(20, {}, {});
    plan.hang(triangle(1, 80, 80, 10), {.at_mm = {100, 200}});
    plan.hang(triangle(2, 80, 80, 10), under(200));
    plan.keep(triangle(3, 80, 80, 10));
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing, Rule::wrong_size});
    CHECK(broken(report, 2) == std::vector{Rule::wrong_size});
    CHECK(broken(report, 3).empty());
    CHECK(piece(report, 3).state == PieceState::in_the_envelope);
    CHECK(values(finding(report, Rule::wrong_size, {2}).at_fault) == std::vector{2});
}

TEST_CASE("A piece with several wrong sides breaks the rule once") {
    SceneBuilder plan = limited(70, {}, 60);
    plan.hang(triangle(1, 50, 40, 30), under(100));
    CHECK(plan.check().pieces[0].broken == std::vector{Rule::wrong_size});
}

/// The `nth` number before " mm" in a sentence.
double mm_said(const std::string& says, int nth) {
    std::size_t at = 0;
    for (int i = 0; i <= nth; ++i) {
        at = says.find(" mm", at + 1);
        REQUIRE(at != std::string::npos);
    }
    return std::stod(says.substr(says.rfind(' ', at - 1)));
}

TEST_CASE("The finding tells the wrong side or height and the limit, rounded to the safe side") {
    const auto found = [](SceneBuilder plan, const Piece& piece) {
        const Finding wrong = finding(plan.hang(piece, under(100)).check(), Rule::wrong_size, {1});
        CHECK(wrong.unit == AmountIn::mm);
        CHECK(contains(wrong.says, "iece 1"));
        return wrong;
    };
    const auto said_below = [](const Finding& wrong, double is, double must_be) {
        CAPTURE(wrong.says);
        CHECK(mm_said(wrong.says, 0) <= is + 1e-9);
        CHECK(mm_said(wrong.says, 0) > is - 1);
        CHECK(mm_said(wrong.says, 1) >= must_be - 1e-9);
        CHECK(mm_said(wrong.says, 1) < must_be + 1);
        CHECK(wrong.amount == Approx(must_be - is));
    };
    said_below(found(limited(20, {}, {}), triangle(1, 80, 80, 12)), 12, 20);
    said_below(found(limited(20, {}, {}), triangle(1, 80, 80, 19.9995)), 19.9995, 20);
    said_below(found(limited(20.4, {}, {}), triangle(1, 80, 80, 20.3)), 20.3, 20.4);
    said_below(found(limited({}, {}, 30), triangle(1, 30, 40, 50)), 24, 30);
    const Finding too_long = found(limited({}, 80, {}), triangle(1, 80.3, 60, 50));
    CHECK(mm_said(too_long.says, 0) >= 80.3);
    CHECK(mm_said(too_long.says, 0) < 81.3);
    CHECK(mm_said(too_long.says, 1) == 80);
    CHECK(too_long.amount == Approx(0.3));
}

}  // namespace
}  // namespace boughwork::testing
