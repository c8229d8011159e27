// SPDX-License-Identifier: MIT
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A flag with an upright right side at x = 100, and beside it piece 2; both hang from the level branch.
SceneBuilder beside_a_flag(const Piece& second, double x) {
    return with_level_branch().hang(outline(1, {{0, 0}, {80, 0}, {80, -100}}), under(20)).hang(second, under(x));
}

SceneBuilder apart() { return beside_a_flag(rectangle(2, 50, 60), 101.01); }
/// The flag's upper right corner against the upper left one of a triangle.
SceneBuilder corner_to_corner() { return beside_a_flag(outline(2, {{0, 0}, {80, 0}, {40, -60}}), 100.5); }
/// The lower tip of a triangle that leans to the left against the flag's upright side.
SceneBuilder corner_to_side() { return beside_a_flag(outline(2, {{0, 0}, {50, 0}, {-29.5, -40}}), 130); }
SceneBuilder along_a_side() { return beside_a_flag(rectangle(2, 50, 60), 100.5); }
SceneBuilder overlapping() { return beside_a_flag(rectangle(2, 50, 60), 97); }

Report judged(SceneBuilder plan, Neighbours setting) {
    plan.challenge().neighbours = setting;
    return plan.check();
}

void check_pair(const Report& report, std::optional<Rule> rule) {
    const std::vector<Rule> expected = rule ? std::vector{*rule} : std::vector<Rule>{};
    CHECK(hangs(report, 1));
    CHECK(hangs(report, 2));
    CHECK(broken(report, 1) == expected);
    CHECK(broken(report, 2) == expected);
    CHECK(report.findings.size() == expected.size());
}

TEST_CASE("Two neighbours that are apart never break a rule") {
    for (const Neighbours setting :
         {Neighbours::apart, Neighbours::corner_to_corner, Neighbours::corners, Neighbours::sides})
        check_pair(judged(apart(), setting), {});
}

TEST_CASE("Where neighbours must be apart they may not touch in any way") {
    check_pair(judged(corner_to_corner(), Neighbours::apart), Rule::touching);
    check_pair(judged(corner_to_side(), Neighbours::apart), Rule::touching);
    check_pair(judged(along_a_side(), Neighbours::apart), Rule::touching);
}

TEST_CASE("Where corners may meet corners a corner may not touch a side") {
    check_pair(judged(corner_to_corner(), Neighbours::corner_to_corner), {});
    check_pair(judged(corner_to_side(), Neighbours::corner_to_corner), Rule::touching);
    check_pair(judged(along_a_side(), Neighbours::corner_to_corner), Rule::touching);
}

TEST_CASE("Unless the challenge says otherwise corners may touch corners and sides, and sides may not touch sides") {
    CHECK(Challenge{}.neighbours == Neighbours::corners);
    check_pair(judged(corner_to_corner(), Neighbours::corners), {});
    check_pair(judged(corner_to_side(), Neighbours::corners), {});
    check_pair(judged(along_a_side(), Neighbours::corners), Rule::touching);
}

TEST_CASE("Where sides may touch any touch is allowed, and overlapping is not") {
    check_pair(judged(corner_to_corner(), Neighbours::sides), {});
    check_pair(judged(corner_to_side(), Neighbours::sides), {});
    check_pair(judged(along_a_side(), Neighbours::sides), {});
    check_pair(judged(overlapping(), Neighbours::sides), Rule::overlap);
}

TEST_CASE("Two that overlap break that rule alone, under every setting") {
    for (const Neighbours setting :
         {Neighbours::apart, Neighbours::corner_to_corner, Neighbours::corners, Neighbours::sides}) {
        const Report report = judged(overlapping(), setting);
        check_pair(report, Rule::overlap);
        const Finding& found = finding(report, Rule::overlap, {1, 2});
        CHECK(found.amount == Approx(-3));
        CHECK(found.unit == AmountIn::mm);
        CHECK(values(found.at_fault) == std::vector{1, 2});
    }
}

TEST_CASE("The tolerance decides between apart and touching, and between touching and overlapping") {
    const auto at_gap = [](double mm) {
        return judged(beside_a_flag(rectangle(2, 50, 60), 100 + mm), Neighbours::apart);
    };
    check_pair(at_gap(1.01), {});
    check_pair(at_gap(1.0), Rule::touching);
    check_pair(at_gap(0.99), Rule::touching);
    check_pair(at_gap(-0.99), Rule::touching);
    check_pair(at_gap(-1.0), Rule::touching);
    check_pair(at_gap(-1.01), Rule::overlap);
    CHECK(finding(at_gap(0.8), Rule::touching, {1, 2}).amount == Approx(0.8));
    CHECK(finding(at_gap(-0.8), Rule::touching, {1, 2}).amount == Approx(-0.8));
}

TEST_CASE("A finding about two pieces shows where they are too near") {
    const Finding found = finding(judged(along_a_side(), Neighbours::corners), Rule::touching, {1, 2});
    REQUIRE_FALSE(found.where_mm.empty());
    for (const Vec2 place : found.where_mm) {
        CHECK(place.x >= 100 - 1e-6);
        CHECK(place.x <= 100.5 + 1e-6);
        CHECK(place.y >= 340 - 1e-6);
        CHECK(place.y <= 400 + 1e-6);
    }
}

TEST_CASE("A piece and the piece it hangs from may touch under every setting") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 100, 60), under(100));
    plan.challenge().depth_limit.reset();
    plan.hang_from(1, 3, rectangle(2, 50, 30), {.from_mm = 10});
    CHECK(judged(plan, Neighbours::apart).findings.empty());
}

TEST_CASE("A piece may not touch the piece that holds its parent") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 100, 20), under(100));
    plan.challenge().depth_limit.reset();
    plan.hang_from(1, 3, rectangle(2, 50, 20), {});
    // On the right side of piece 2, with a corner that rises to piece 1.
    plan.hang(outline(3, {{0, 0}, {15, 4}, {15, -14}, {0, -14}}), {.at_mm = {150, 376}});
    const Report strict = judged(plan, Neighbours::apart);
    CHECK(piece(strict, 3).depth == 3);
    CHECK(broken(strict, 1) == std::vector{Rule::touching});
    CHECK(broken(strict, 2).empty());
    CHECK(broken(strict, 3) == std::vector{Rule::touching});
    CHECK(judged(plan, Neighbours::corners).findings.empty());
}

TEST_CASE("A piece and the piece it hangs from may not overlap") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 300, 40), under(50));
    plan.challenge().depth_limit.reset();
    // Hung by a side of 20 mm with wide, nearly level shoulders, and turned by 4.9 degrees about that side's middle.
    const Piece wide = outline(2, {{0, 0}, {20, 0}, {80, -1}, {80, -30}, {-60, -30}, {-60, -1}});
    const double turn_rad = 4.9 / degrees_per_radian;
    plan.hang(wide, {.at_mm = Vec2{200, 360} - turned_ccw({10, 0}, turn_rad), .turn_ccw_deg = 4.9});
    const Report report = plan.check();
    CHECK(values(piece(report, 2).parents) == std::vector{1});
    check_pair(report, Rule::overlap);
    // The right shoulder is 70 mm from that middle and 1 mm below it.
    CHECK(finding(report, Rule::overlap, {1, 2}).amount == Approx(-(70 * std::sin(turn_rad) - std::cos(turn_rad))));
}

TEST_CASE("If only one of two hangs, the other alone is at fault") {
    for (const AtFault setting : {AtFault::both, AtFault::higher_number, AtFault::fewest_points}) {
        for (const int hanging : {1, 2}) {
            const int loose = 3 - hanging;
            SceneBuilder plan = with_level_branch().hang(rectangle(hanging, 50, 60), under(100));
            plan.hang(rectangle(loose, 50, 60), {.at_mm = {140, 370}});  // In the air, 10 mm over it.
            plan.challenge().at_fault = setting;
            const Report report = plan.check();
            CHECK(counts(report, hanging));
            CHECK(broken(report, loose) == std::vector{Rule::not_by_a_whole_side, Rule::overlap});
            CHECK(values(finding(report, Rule::overlap, {1, 2}).at_fault) == std::vector{loose});
        }
    }
}

TEST_CASE("Two pieces of which none hangs are not asked for their distance") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 60, 40), {.at_mm = {100, 300}}).hang(rectangle(2, 60, 40), {.at_mm = {130, 290}});
    const Report report = plan.check();
    CHECK_FALSE(find_finding(report, Rule::overlap, {1, 2}));
    CHECK(broken(report, 1) == std::vector{Rule::held_by_nothing});
    CHECK(broken(report, 2) == std::vector{Rule::held_by_nothing});
}

TEST_CASE("A piece that hangs too deep, or breaks another rule, is still a neighbour") {
    SceneBuilder plan =
        with_level_branch().hang(rectangle(1, 50, 60), under(100)).hang(rectangle(2, 50, 60), under(150.5));
    plan.challenge().limits.side.most = length_from_mm(55);
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::touching, Rule::wrong_size});
    CHECK(broken(report, 2) == std::vector{Rule::touching, Rule::wrong_size});
}

TEST_CASE("Pieces in the envelope are nobody's neighbours") {
    const Report report = with_level_branch().hang(rectangle(1, 50, 60), under(100)).keep(rectangle(2, 50, 60)).check();
    CHECK(report.findings.empty());
    CHECK(counts(report, 1));
}

}  // namespace
}  // namespace boughwork::testing
