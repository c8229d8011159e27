// SPDX-License-Identifier: MIT
#include "rules/remedy.h"

#include "tests/rules/random_scene.h"

namespace boughwork::testing {
namespace {

constexpr double t = 1;  // The default tolerance, in mm.

struct Mended {
    Remedy remedy;
    SceneBuilder after;
    Report report;
};

/// Asks for the remedy of that finding, which must exist, and makes the move.
Mended mend(SceneBuilder plan, Rule rule, const std::vector<int>& pieces) {
    const Report before = plan.check();
    const Finding found = finding(before, rule, pieces);
    const std::optional<Remedy> move = remedy(plan.scene, plan.plan(), before, found);
    REQUIRE(move);
    plan.plan() = with_remedy(plan.plan(), *move);
    Mended mended{*move, plan, plan.check()};
    CHECK_FALSE(find_finding(mended.report, rule, pieces));
    for (const Finding& after : mended.report.findings) {
        CAPTURE(after.says);
        CHECK(find_finding(before, after.rule, values(after.pieces)));  // None is new.
    }
    return mended;
}

bool can_mend(SceneBuilder plan, Rule rule, const std::vector<int>& pieces) {
    const Report before = plan.check();
    return remedy(plan.scene, plan.plan(), before, finding(before, rule, pieces)).has_value();
}

/// Whether the piece still counts when it is pushed by that much after the remedy.
bool counts_when_pushed(const Mended& mended, int number, Vec2 push) {
    SceneBuilder pushed = mended.after;
    pushed.pose_of(number).at_mm = pushed.pose_of(number).at_mm + push;
    return counts(pushed.check(), number);
}

TEST_CASE("A piece past the end is moved back along its branch, no farther than needed") {
    const Mended right =
        mend(with_level_branch().hang(triangle(3, 80, 60, 50), under(341)), Rule::runs_past_the_end, {3});
    CHECK(counts(right.report, 3));
    CHECK(right.remedy.piece.value == 3);
    // 21 mm out, of which the tolerance may stay, and a tenth of it to spare.
    CHECK(right.remedy.move_mm.x == Approx(-20.1).epsilon(1e-3));
    CHECK(right.remedy.move_mm.y == Approx(0).margin(0.01));
    CHECK(right.remedy.turn_ccw_deg == Approx(0).margin(0.01));
    CHECK(contains(right.remedy.says, "left"));
    const Mended left =
        mend(with_level_branch().hang(triangle(3, 80, 60, 50), under(-21)), Rule::runs_past_the_end, {3});
    CHECK(left.remedy.move_mm.x == Approx(20.1).epsilon(1e-3));
    CHECK(contains(left.remedy.says, "right"));
}

TEST_CASE("After a remedy there is a tenth of the tolerance to spare") {
    const Mended past =
        mend(with_level_branch().hang(triangle(3, 80, 60, 50), under(341)), Rule::runs_past_the_end, {3});
    CHECK(counts_when_pushed(past, 3, {0.09 * t, 0}));

    SceneBuilder apart =
        with_level_branch().hang(rectangle(1, 50, 60), under(100)).hang(rectangle(2, 50, 60), under(150.8));
    apart.challenge().neighbours = Neighbours::apart;
    const Mended gap = mend(apart, Rule::touching, {1, 2});
    const int moved = gap.remedy.piece.value;
    CHECK(std::abs(gap.remedy.move_mm.x) == Approx(0.3).epsilon(1e-3));
    CHECK(counts(gap.report, 1));
    CHECK(counts(gap.report, 2));
    CHECK(counts_when_pushed(gap, moved, {moved == 2 ? -0.09 * t : 0.09 * t, 0}));
    CHECK_FALSE(counts_when_pushed(gap, moved, {moved == 2 ? -0.11 * t : 0.11 * t, 0}));
}

TEST_CASE("Of two that overlap one is moved as far as the neighbours' setting asks") {
    SceneBuilder plan =
        with_level_branch().hang(rectangle(1, 50, 60), under(100)).hang(rectangle(2, 50, 60), under(147));
    // Apart by 1.1 mm, where sides may not touch; where they may, over each other by 0.9 at most.
    CHECK(std::abs(mend(plan, Rule::overlap, {1, 2}).remedy.move_mm.x) == Approx(4.1).epsilon(1e-3));
    plan.challenge().neighbours = Neighbours::sides;
    CHECK(std::abs(mend(plan, Rule::overlap, {1, 2}).remedy.move_mm.x) == Approx(2.1).epsilon(1e-3));
}

TEST_CASE("A loose piece that overlaps a hanging one is hung where there is room") {
    // Pushed out of piece 1 alone it would be held by nothing, which would be new.
    SceneBuilder plan =
        with_level_branch().hang(rectangle(1, 50, 60), under(100)).hang(rectangle(2, 40, 60), {.at_mm = {105, 360}});
    const Mended mended = mend(plan, Rule::overlap, {1, 2});
    CHECK(mended.remedy.piece.value == 2);
    CHECK(counts(mended.report, 1));
    CHECK(counts(mended.report, 2));
}

TEST_CASE("A remedy is about its own finding: what else is wrong with the piece may stay") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().neighbours = Neighbours::apart;
    const std::vector<Vec2> pointed{{0, 0}, {80, 0}, {40, -60}};
    plan.hang(outline(1, pointed), under(0)).hang(outline(2, pointed), under(74)).hang(outline(3, pointed), under(140));
    const Mended mended = mend(plan, Rule::overlap, {1, 2});
    // Piece 1 is at the end of the branch; piece 2 goes along it until the upper corners are 1.1 mm apart.
    CHECK(mended.remedy.piece.value == 2);
    CHECK(mended.remedy.move_mm.x == Approx(7.1).epsilon(1e-3));
    CHECK(mended.remedy.move_mm.y == Approx(0).margin(0.01));
    CHECK(find_finding(mended.report, Rule::overlap, {2, 3}));
}

TEST_CASE("A piece too near to the trunk is moved along its branch") {
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 40, 30), under(20.8));
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    const Mended mended = mend(plan, Rule::trunk, {1});
    CHECK(counts(mended.report, 1));
    CHECK(mended.remedy.move_mm.x == Approx(0.3).epsilon(1e-3));
    CHECK(mended.remedy.move_mm.y == Approx(0).margin(0.01));
}

TEST_CASE("A piece that nothing holds is moved straight off the ground and the trunk") {
    SceneBuilder plan = SceneBuilder().hang(rectangle(1, 40, 30), {.at_mm = {100, 26.8}});
    plan.hang(rectangle(2, 40, 30), {.at_mm = {20.8, 300}}).hang(rectangle(3, 40, 30), {.at_mm = {-58.5, 300}});
    plan.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    const auto move = [&](Rule rule, int number) { return mend(plan, rule, {number}).remedy.move_mm; };
    CHECK(distance(move(Rule::ground, 1), {0, 4.3}) < 1e-3);  // It was 3.2 mm below, and 1.1 is needed.
    CHECK(distance(move(Rule::trunk, 2), {0.3, 0}) < 1e-3);
    CHECK(distance(move(Rule::trunk, 3), {-2.6, 0}) < 1e-3);  // It was 1.5 mm inside.
}

TEST_CASE("A loose piece is hung at the nearest free place along the branch") {
    // Above it hangs piece 1, from 100 to 160; to the right of that it is nearer than to the left.
    SceneBuilder plan = with_level_branch().hang(rectangle(1, 60, 30), under(100));
    const Piece loose = rectangle(2, 40, 30);
    const Mended mended = mend(plan.hang(loose, {.at_mm = {125, 360}}), Rule::held_by_nothing, {2});
    CHECK(counts(mended.report, 1));
    CHECK(counts(mended.report, 2));
    CHECK(mended.after.side_of(2, 1).from.x == Approx(161.1).epsilon(1e-3));
}

TEST_CASE("A piece just below its branch is lifted to it") {
    const Mended mended =
        mend(with_level_branch().hang(rectangle(1, 40, 30), under(100, 4)), Rule::held_by_nothing, {1});
    CHECK(counts(mended.report, 1));
    CHECK(mended.remedy.move_mm.y ==
          Approx(3.1).epsilon(0.3));  // On the branch, or its tolerance less a tenth below it.
    CHECK(mended.remedy.move_mm.x == Approx(0).margin(0.01));
}

TEST_CASE("A piece that hangs crooked is turned") {
    const Pose crooked{.at_mm = {100, 400}, .turn_ccw_deg = -10};
    const Mended mended = mend(with_level_branch().hang(rectangle(1, 40, 30), crooked), Rule::not_by_a_whole_side, {1});
    CHECK(counts(mended.report, 1));
    CHECK(mended.remedy.turn_ccw_deg > 5);
    CHECK(mended.remedy.turn_ccw_deg < 12);
}

TEST_CASE("What hangs from a piece moves along with it where it would fall otherwise") {
    SceneBuilder plan = with_level_branch();
    plan.challenge().depth_limit.reset();
    plan.hang(rectangle(1, 50, 60), under(100));
    plan.hang_from(1, 3, rectangle(3, 30, 30), {.from_mm = 20});  // As far to the right as piece 1 reaches.
    plan.hang_from(3, 3, rectangle(4, 30, 30), {});
    plan.hang(rectangle(2, 50, 30), under(147));    // 3 mm over piece 1, and
    plan.hang(rectangle(5, 50, 30), under(198.5));  // with no room on its right.
    const Mended mended = mend(plan, Rule::overlap, {1, 2});
    CHECK(mended.remedy.piece.value == 1);
    std::vector<int> chain = values(mended.remedy.chain);
    std::sort(chain.begin(), chain.end());
    CHECK(chain == std::vector{3, 4});
    for (const std::size_t place : {0u, 1u, 2u}) {
        const Vec2 moved = mended.after.scene.plans[0].hung[place].pose.at_mm - plan.plan().hung[place].pose.at_mm;
        CHECK(distance(moved, mended.remedy.move_mm) < 1e-9);
    }
    CHECK(mended.remedy.move_mm.x == Approx(-4.1).epsilon(1e-3));
    CHECK(mended.report.findings.empty());
    CHECK(piece(mended.report, 4).depth == 3);
}

TEST_CASE("A remedy that would bring a new finding is not offered") {
    // Between two others there is no room for the piece in the middle.
    SceneBuilder plan = SceneBuilder().branch("b1", {{0, 404}, {150, 404}});
    plan.challenge().neighbours = Neighbours::apart;
    plan.hang(rectangle(1, 49, 60), under(0))
        .hang(rectangle(2, 50, 60), under(49.5))
        .hang(rectangle(3, 49, 60), under(101.5));
    const Report before = plan.check();
    const std::optional<Remedy> move = remedy(plan.scene, plan.plan(), before, finding(before, Rule::touching, {1, 2}));
    if (move) {
        // 0.6 mm of room in all, and 1.5 to the right of piece 2, of which 1 is needed: a move must respect that.
        plan.plan() = with_remedy(plan.plan(), *move);
        for (const Finding& after : plan.check().findings)
            CHECK(find_finding(before, after.rule, values(after.pieces)));
        CHECK_FALSE(find_finding(plan.check(), Rule::touching, {1, 2}));
    }
    // Piece 1 may go 0.9 mm past the left end with a tenth to spare: 0.6 mm would do.
    REQUIRE(move);
}

TEST_CASE("No remedy is offered where no move helps") {
    SceneBuilder wrong = with_level_branch();
    wrong.challenge().limits.side.least = length_from_mm(50);
    CHECK_FALSE(can_mend(wrong.hang(rectangle(1, 60, 30), under(100)), Rule::wrong_size, {1}));
    // Longer than its branch, and no other branch to go to.
    CHECK_FALSE(can_mend(SceneBuilder().branch("b1", {{100, 404}, {160, 404}}).hang(rectangle(1, 100, 80), under(90)),
                         Rule::runs_past_the_end, {1}));
    // A level branch so low that the piece reaches the ground by any side.
    CHECK_FALSE(
        can_mend(SceneBuilder().branch("b1", {{0, 34}, {400, 34}}).hang(rectangle(1, 60, 50), {.at_mm = {100, 30}}),
                 Rule::ground, {1}));
}

TEST_CASE("A remedy leaves the pieces that it does not name where they are") {
    SceneBuilder plan =
        with_level_branch().hang(triangle(3, 80, 60, 50), under(341)).hang(rectangle(1, 50, 60), under(100));
    const Mended mended = mend(plan, Rule::runs_past_the_end, {3});
    CHECK(mended.after.scene.plans[0].hung[1] == plan.plan().hung[1]);
    CHECK(mended.after.scene.plans[0].tree == plan.plan().tree);
}

TEST_CASE("Whatever is wrong in whatever plan, a remedy that is offered removes it and brings nothing new") {
    int offered = 0;
    int with_chain = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const SceneBuilder scene = RandomScene(seed).build();
        const Plan& plan = scene.scene.plans[0];
        const Report before = scene.check();
        for (const Finding& found : before.findings) {
            const std::optional<Remedy> move = remedy(scene.scene, plan, before, found);
            if (!move) continue;
            CAPTURE(seed, found.says, move->says);
            ++offered;
            with_chain += !move->chain.empty();
            REQUIRE(std::count(found.pieces.begin(), found.pieces.end(), move->piece) == 1);
            REQUIRE_FALSE(move->says.empty());
            const Plan mended = with_remedy(plan, *move);
            const Report after = check(scene.scene, mended);
            REQUIRE_FALSE(find_finding(after, found.rule, values(found.pieces)));
            for (const Finding& left : after.findings) {
                CAPTURE(left.says);
                REQUIRE(find_finding(before, left.rule, values(left.pieces)));
            }
            REQUIRE(mended.tree == plan.tree);
            for (std::size_t i = 0; i < plan.hung.size(); ++i) {
                const PieceNumber number = plan.hung[i].piece;
                const bool moves = number == move->piece || std::count(move->chain.begin(), move->chain.end(), number);
                if (!moves) REQUIRE(mended.hung[i] == plan.hung[i]);
            }
        }
    }
    CHECK(offered > 50);
    CHECK(with_chain > 0);
}

}  // namespace
}  // namespace boughwork::testing
