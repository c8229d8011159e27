// SPDX-License-Identifier: MIT
// Which pieces hold others, limits on how many, and the order in which it is decided.
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A chain of rectangles 1-2-3, each 60 mm wide and 30 high; `size` limits may make some of them wrong.
SceneBuilder chain_of_three(Holds setting) {
    SceneBuilder plan = with_level_branch();
    plan.challenge().holds = setting;
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 60, 30), under(100));
    plan.hang_from(1, 3, rectangle(2, 60, 30), {});
    plan.hang_from(2, 3, rectangle(3, 60, 30), {});
    return plan;
}

/// Rectangles 20 x 30 in the order of the numbers given, 10 mm apart, from that x on.
void hang_row(SceneBuilder& plan, std::initializer_list<int> numbers, double x, double y = 400) {
    for (const int number : numbers) {
        plan.hang(rectangle(number, 20, 30), {.at_mm = {x, y}});
        x += 30;
    }
}

std::vector<int> breaking(const Report& report, Rule rule) {
    std::vector<int> numbers;
    for (const PieceReport& one : report.pieces)
        if (breaks(report, one.number.value, rule)) numbers.push_back(one.number.value);
    return numbers;
}

TEST_CASE("A piece that hangs holds its chain even when it does not count, unless the challenge says otherwise") {
    CHECK(Challenge{}.holds == Holds::hanging);
    SceneBuilder plan = chain_of_three(Holds::hanging);
    plan.scene.pieces[0] = rectangle(1, 90, 30);
    plan.challenge().limits.side.most = length_from_mm(80);
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::wrong_size});
    CHECK(counting(report) == std::vector{2, 3});
    CHECK(report.score == 360);
}

TEST_CASE("Where only counting pieces hold, what hangs from one that does not count is cut off, down the chain") {
    SceneBuilder plan = chain_of_three(Holds::counting);
    CHECK(counting(plan.check()) == std::vector{1, 2, 3});
    plan.scene.pieces[0] = rectangle(1, 90, 30);
    plan.challenge().limits.side.most = length_from_mm(80);
    const Report report = plan.check();
    CHECK(broken(report, 1) == std::vector{Rule::wrong_size});
    CHECK(broken(report, 2) == std::vector{Rule::cut_off});
    CHECK(broken(report, 3) == std::vector{Rule::cut_off});
    CHECK(counting(report).empty());
    CHECK(report.score == 0);
    CHECK(values(finding(report, Rule::cut_off, {2}).at_fault) == std::vector{2});
}

TEST_CASE("A piece cut off because nothing that counts holds it is still judged and reported as hanging") {
    SceneBuilder plan = chain_of_three(Holds::counting);
    plan.scene.pieces[0] = rectangle(1, 90, 30);
    plan.challenge().limits.side.most = length_from_mm(80);
    plan.hang(rectangle(5, 30, 30), {.at_mm = {150, 355}});  // In the air, over pieces 2 and 3.
    const Report report = plan.check();
    CHECK(hangs(report, 2));
    CHECK(piece(report, 2).depth == 2);
    CHECK(values(piece(report, 2).parents) == std::vector{1});
    CHECK(piece(report, 3).depth == 3);
    CHECK(values(finding(report, Rule::overlap, {2, 5}).at_fault) == std::vector{5});
}

TEST_CASE("A piece that is cut off tells how many links it is from the one that does not count") {
    SceneBuilder first_is_wrong = chain_of_three(Holds::counting);
    first_is_wrong.scene.pieces[0] = rectangle(1, 90, 30);
    first_is_wrong.challenge().limits.side.most = length_from_mm(80);
    CHECK(finding(first_is_wrong.check(), Rule::cut_off, {2}).amount == 1);
    CHECK(finding(first_is_wrong.check(), Rule::cut_off, {3}).amount == 2);

    SceneBuilder second_is_wrong = chain_of_three(Holds::counting);
    second_is_wrong.branch("b2", {{160.5, 355}, {300, 355}});
    const Report report = second_is_wrong.check();
    CHECK(broken(report, 2) == std::vector{Rule::other_branch});
    CHECK(finding(report, Rule::cut_off, {3}).amount == 1);
}

TEST_CASE("A piece is held as long as one of its parents counts") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().depth_limit = 2;
    plan.challenge().holds = Holds::counting;
    plan.hang(outline(1, {{0, 0}, {80, 0}, {40, -80}}), under(100));
    plan.hang(outline(2, {{0, 0}, {100, 0}, {40, -80}}), under(180));
    plan.hang(outline(3, {{0, 0}, {40, -80}, {-40, -80}}), under(180));
    plan.challenge().limits.side.most = length_from_mm(99);
    Report report = plan.check();
    REQUIRE(values(piece(report, 3).parents) == std::vector{1, 2});
    CHECK(counting(report) == std::vector{1, 3});
    plan.challenge().limits.side.most = length_from_mm(85);  // Flanks of piece 1 are 89.4 mm.
    plan.scene.pieces[2] = outline(3, {{0, 0}, {35, -70}, {-35, -70}});
    report = plan.check();
    CHECK(broken(report, 3) == std::vector{Rule::cut_off});
}

TEST_CASE("Pieces past the most that may count are over the limit, in number order") {
    SceneBuilder plan = with_level_branch();
    hang_row(plan, {3, 1, 9, 2}, 50);
    plan.challenge().limits.pieces.most = 2;
    const Report report = plan.check();
    CHECK(counting(report) == std::vector{1, 2});
    CHECK(broken(report, 3) == std::vector{Rule::over_the_limit});
    CHECK(broken(report, 9) == std::vector{Rule::over_the_limit});
    CHECK(report.score == 200);
    CHECK(piece(report, 9).points == 0);
    CHECK(breaking(report, Rule::over_the_limit) == std::vector{3, 9});
}

TEST_CASE("Each branch has its own limit, and what hangs in chains belongs to it") {
    SceneBuilder plan = with_level_branch().branch("b2", {{0, 204}, {400, 204}});
    plan.challenge().depth_limit.reset();
    hang_row(plan, {1, 4}, 50);
    hang_row(plan, {2, 3}, 50, 200);
    plan.hang_from(1, 3, rectangle(5, 20, 30), {});
    plan.challenge().limits.pieces_per_branch.most = 2;
    CHECK(counting(plan.check()) == std::vector{1, 2, 3, 4});
    CHECK(broken(plan.check(), 5) == std::vector{Rule::over_the_limit});
}

TEST_CASE("The limit of a branch is reckoned before the limit on all") {
    SceneBuilder plan = with_level_branch().branch("b2", {{0, 204}, {400, 204}});
    hang_row(plan, {1, 2}, 50);
    hang_row(plan, {3, 4}, 50, 200);
    plan.challenge().limits.pieces_per_branch.most = 1;
    plan.challenge().limits.pieces.most = 2;
    CHECK(counting(plan.check()) == std::vector{1, 3});
}

TEST_CASE("A limit is reckoned among the pieces that would count") {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(1, 20, 30), under(50)).hang(rectangle(2, 20, 30), under(70));  // Flush: both at fault.
    plan.hang(rectangle(3, 20, 30), {.at_mm = {200, 200}});                            // Held by nothing.
    hang_row(plan, {4, 5}, 150);
    plan.challenge().limits.pieces.most = 1;
    const Report report = plan.check();
    CHECK(counting(report) == std::vector{4});
    CHECK(breaking(report, Rule::over_the_limit) == std::vector{5});
}

TEST_CASE("What hangs from a piece over the limit is cut off where only counting pieces hold") {
    for (const Holds setting : {Holds::counting, Holds::hanging}) {
        SceneBuilder plan = with_level_branch();
        plan.challenge().holds = setting;
        plan.challenge().depth_limit.reset();
        hang_row(plan, {2, 3, 4, 5}, 50);
        plan.hang_from(4, 3, rectangle(1, 20, 30), {});
        plan.challenge().limits.pieces.most = 3;
        const Report report = plan.check();
        CHECK(breaking(report, Rule::over_the_limit) == std::vector{4, 5});
        if (setting == Holds::counting) {
            // The place of piece 1 is not filled again, neither by 4 nor by 5.
            CHECK(broken(report, 1) == std::vector{Rule::cut_off});
            CHECK(counting(report) == std::vector{2, 3});
        } else {
            CHECK(counting(report) == std::vector{1, 2, 3});
        }
    }
}

TEST_CASE("A piece that was cut off takes no place within a limit") {
    SceneBuilder plan = chain_of_three(Holds::counting);
    plan.scene.pieces[0] = rectangle(1, 90, 30);
    plan.challenge().limits.side.most = length_from_mm(80);
    plan.challenge().limits.pieces.most = 1;
    plan.hang(rectangle(4, 20, 30), under(250));
    const Report report = plan.check();
    CHECK(counting(report) == std::vector{4});
    CHECK(breaking(report, Rule::over_the_limit).empty());
}

TEST_CASE("A place freed by a limit on a branch is not given to a piece over it") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().holds = Holds::counting;
    plan.challenge().depth_limit.reset();
    hang_row(plan, {2, 3}, 50);
    plan.hang_from(3, 3, rectangle(1, 20, 30), {});
    plan.challenge().limits.pieces_per_branch.most = 2;
    // 1 and 2 stay, 3 is over the limit, 1 falls with it; 3 does not come back.
    CHECK(counting(plan.check()) == std::vector{2});
    CHECK(broken(plan.check(), 3) == std::vector{Rule::over_the_limit});
}

TEST_CASE("The least costly choice is made before anything is cut off or over the limit") {
    // Piece 2 is over the limit once 1 counts; that does not make it free of cost beforehand.
    SceneBuilder plan = with_level_branch();
    plan.challenge().at_fault = AtFault::fewest_points;
    plan.challenge().limits.pieces.most = 1;
    plan.hang(rectangle(1, 20, 30), under(50));
    plan.hang(rectangle(2, 60, 30), under(100)).hang(rectangle(3, 50, 30), under(160));
    const Report report = plan.check();
    CHECK(broken(report, 2) == std::vector{Rule::over_the_limit});
    CHECK(broken(report, 3) == std::vector{Rule::touching});
}

TEST_CASE("A limit on how many can be noted alone") {
    SceneBuilder plan = with_level_branch();
    CHECK(Challenge{}.over_limit == OverLimit::extras_do_not_count);
    hang_row(plan, {1, 2, 3}, 50);
    plan.challenge().limits.pieces.most = 2;
    plan.challenge().limits.pieces_per_branch.most = 1;
    plan.challenge().over_limit = OverLimit::noted;
    const Report report = plan.check();
    CHECK(counting(report) == std::vector{1, 2, 3});
    CHECK(report.findings.empty());
    const ChallengeLine* line = find_line(report, "pieces");
    REQUIRE(line);
    CHECK(line->met == false);
    CHECK(line->have == 3);
    CHECK(line->need == 2);
    REQUIRE(find_line(report, "pieces_per_branch/b1"));
    CHECK(find_line(report, "pieces_per_branch/b1")->met == false);
}

TEST_CASE("A piece that does not count has every reason told") {
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 104}, {400, 104}});
    plan.challenge().limits.side.least = length_from_mm(50);
    plan.hang(rectangle(1, 40, 99.5), {.at_mm = {100, 100}}).hang(rectangle(2, 60, 60), {.at_mm = {140, 100}});
    CHECK(broken(plan.check(), 1) == std::vector{Rule::ground, Rule::touching, Rule::wrong_size});
    CHECK(piece(plan.check(), 1).points == 0);
}

}  // namespace
}  // namespace boughwork::testing
