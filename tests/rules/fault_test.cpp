// SPDX-License-Identifier: MIT
// Who loses when hanging pieces come too near to each other.
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// Rectangles 40 mm high, flush beside each other from x = 20 on: each touches the next along a side.
SceneBuilder row(AtFault setting, const std::vector<std::pair<int, double>>& numbers_and_widths) {
    SceneBuilder plan = with_level_branch();
    plan.challenge().at_fault = setting;
    double x = 20;
    for (const auto& [number, width_mm] : numbers_and_widths) {
        plan.hang(rectangle(number, width_mm, 40), under(x));
        x += width_mm;
    }
    return plan;
}

std::vector<int> sorted(const std::vector<PieceNumber>& numbers) {
    std::vector<int> plain = values(numbers);
    std::sort(plain.begin(), plain.end());
    return plain;
}

TEST_CASE("Unless the challenge says otherwise both of a pair are at fault") {
    CHECK(Challenge{}.at_fault == AtFault::both);
    const Report report = row(AtFault::both, {{1, 30}, {2, 40}, {3, 50}}).keep(rectangle(4, 9, 9)).check();
    CHECK(counting(report).empty());
    for (const int number : {1, 2, 3}) CHECK(broken(report, number) == std::vector{Rule::touching});
    CHECK(values(finding(report, Rule::touching, {1, 2}).at_fault) == std::vector{1, 2});
    CHECK(values(finding(report, Rule::touching, {2, 3}).at_fault) == std::vector{2, 3});
    CHECK(report.findings.size() == 2);
    CHECK(report.score == 0);
}

TEST_CASE("The higher number of each pair can be at fault alone") {
    const Report report = row(AtFault::higher_number, {{3, 30}, {1, 40}, {2, 50}}).check();
    CHECK(counting(report) == std::vector{1});
    CHECK(values(finding(report, Rule::touching, {1, 3}).at_fault) == std::vector{3});
    CHECK(values(finding(report, Rule::touching, {1, 2}).at_fault) == std::vector{2});
    // A piece that loses to one may win against another; pairs are judged each by itself.
    const Report chain = row(AtFault::higher_number, {{1, 30}, {2, 40}, {3, 50}}).check();
    CHECK(counting(chain) == std::vector{1});
}

TEST_CASE("The pieces with the fewest points together can be at fault") {
    // Perimeters 140, 300, 140: the outer two cost less than the middle one.
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {2, 110}, {3, 30}}).check()) == std::vector{2});
    // Perimeters 140, 260, 140: the middle one costs less.
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {2, 90}, {3, 30}}).check()) == std::vector{1, 3});
    const Report report = row(AtFault::fewest_points, {{1, 30}, {2, 90}, {3, 30}}).check();
    CHECK(values(finding(report, Rule::touching, {1, 2}).at_fault) == std::vector{2});
    CHECK(values(finding(report, Rule::touching, {2, 3}).at_fault) == std::vector{2});
    CHECK(report.score == 280);
}

TEST_CASE("Points are those of the challenge's way of scoring") {
    SceneBuilder plan = row(AtFault::fewest_points, {{1, 30}, {2, 90}, {3, 30}});
    CHECK(counting(plan.check()) == std::vector{1, 3});  // Perimeters: 280 for the outer two, 260 for the middle one.
    plan.challenge().score.by = ScoreBy::longest_side;
    CHECK(counting(plan.check()) == std::vector{2});  // 80 to 90.
    plan.challenge().score.by = ScoreBy::area;
    CHECK(counting(plan.check()) == std::vector{2});  // 2400 to 3600 square mm.
}

TEST_CASE("Of two that cost the same the fewer pieces are at fault") {
    // Perimeters 140, 280, 140.
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {2, 100}, {3, 30}}).check()) == std::vector{1, 3});
    CHECK(counting(row(AtFault::fewest_points, {{3, 30}, {1, 100}, {2, 30}}).check()) == std::vector{2, 3});
}

TEST_CASE("Of as many that cost the same the higher numbers are at fault, the highest compared first") {
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {2, 30}}).check()) == std::vector{1});
    CHECK(counting(row(AtFault::fewest_points, {{2, 30}, {1, 30}}).check()) == std::vector{1});
    // Four in a row: {1, 3}, {2, 3} and {2, 4} would do.
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {2, 30}, {3, 30}, {4, 30}}).check()) == std::vector{1, 3});
    // 4-1-2-3: {1, 2}, {1, 3} and {2, 4} would do.
    CHECK(counting(row(AtFault::fewest_points, {{4, 30}, {1, 30}, {2, 30}, {3, 30}}).check()) == std::vector{1, 3});
    // 1-4-3-2: {1, 3}, {3, 4} and {2, 4} would do; 4 and 3 are higher than 4 and 2.
    CHECK(counting(row(AtFault::fewest_points, {{1, 30}, {4, 30}, {3, 30}, {2, 30}}).check()) == std::vector{1, 2});
}

TEST_CASE("A piece that breaks another rule costs nothing") {
    SceneBuilder plan = row(AtFault::fewest_points, {{1, 30}, {2, 110}, {3, 30}});
    CHECK(counting(plan.check()) == std::vector{2});
    plan.challenge().limits.side.most = length_from_mm(100);
    const Report report = plan.check();
    CHECK(counting(report) == std::vector{1, 3});
    CHECK(broken(report, 2) == std::vector{Rule::touching, Rule::wrong_size});
    // The pair stays a pair: of two that cost nothing, the higher number is at fault.
    plan = row(AtFault::fewest_points, {{1, 110}, {2, 110}});
    plan.challenge().limits.side.most = length_from_mm(100);
    CHECK(broken(plan.check(), 1) == std::vector{Rule::wrong_size});
    CHECK(broken(plan.check(), 2) == std::vector{Rule::touching, Rule::wrong_size});
}

TEST_CASE("What hangs from a piece is not reckoned among its points") {
    SceneBuilder plan = row(AtFault::fewest_points, {{1, 30}, {2, 35}});
    plan.challenge().depth_limit.reset();
    plan.challenge().holds = Holds::counting;
    plan.hang_from(1, 3, rectangle(3, 25, 200), {.from_mm = 0});
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::touching});
    CHECK(broken(report, 3) == std::vector{Rule::cut_off});
    CHECK(counting(report) == std::vector{2});
}

TEST_CASE("Rows that are apart from each other are judged apart") {
    SceneBuilder plan = row(AtFault::fewest_points, {{1, 30}, {2, 90}, {3, 30}});
    plan.hang(rectangle(4, 50, 40), under(250)).hang(rectangle(5, 20, 40), under(300));
    CHECK(counting(plan.check()) == std::vector{1, 3, 4});
}

TEST_CASE("Under every setting the referee tells the least costly way out") {
    for (const AtFault setting : {AtFault::both, AtFault::higher_number, AtFault::fewest_points}) {
        const Report report = row(setting, {{4, 30}, {9, 90}, {6, 30}}).check();
        REQUIRE(report.ways_out.size() == 1);
        CHECK(sorted(report.ways_out[0].take_down) == std::vector{9});
        CHECK(sorted(report.ways_out[0].then_count) == std::vector{4, 6});
        CHECK(contains(report.ways_out[0].says, "9"));
    }
}

TEST_CASE("A way out promises to count only what breaks no other rule") {
    SceneBuilder plan = row(AtFault::both, {{4, 30}, {9, 90}, {6, 30}});
    plan.challenge().limits.least_height = length_from_mm(30);
    plan.scene.pieces[2] = rectangle(6, 29, 40);
    const Report report = plan.check();
    REQUIRE(report.ways_out.size() == 1);
    // Piece 6 costs nothing now: taking down 4 and 6 costs 140, taking down 9 costs 260.
    CHECK(sorted(report.ways_out[0].take_down) == std::vector{4, 6});
    CHECK(sorted(report.ways_out[0].then_count) == std::vector{9});
}

TEST_CASE("A way out names a piece that will count though it is measured at nothing") {
    SceneBuilder plan = row(AtFault::both, {{4, 30}, {9, 90}, {6, 30}});
    plan.challenge().step = {.numerator = 1000};  // Every side is less than half a step.
    const Report report = plan.check();
    REQUIRE(report.ways_out.size() == 1);
    CHECK(sorted(report.ways_out[0].take_down) == std::vector{9});
    CHECK(sorted(report.ways_out[0].then_count) == std::vector{4, 6});
}

TEST_CASE("Following the way out does what it promises") {
    for (const AtFault setting : {AtFault::both, AtFault::higher_number, AtFault::fewest_points}) {
        SceneBuilder plan = row(setting, {{5, 30}, {3, 45}, {8, 60}, {1, 35}, {2, 80}});
        const WayOut way = plan.check().ways_out.at(0);
        std::vector<Hung>& hung = plan.plan().hung;
        for (const PieceNumber number : way.take_down)
            hung.erase(std::find_if(hung.begin(), hung.end(), [&](const Hung& h) { return h.piece == number; }));
        CHECK(counting(plan.check()) == sorted(way.then_count));
        CHECK(plan.check().ways_out.empty());
    }
}

TEST_CASE("Where only one of a pair hangs there is no way out to choose") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 50, 60), under(100));
    plan.hang(rectangle(2, 50, 60), under(150.5, 20));
    CHECK(plan.check().ways_out.empty());
}

}  // namespace
}  // namespace boughwork::testing
