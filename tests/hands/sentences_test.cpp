// SPDX-License-Identifier: MIT
// What is said of shaky hands is what was counted.
#include <catch2/catch.hpp>
#include <cstdio>

#include "rules/chain.h"
#include "rules/more_room.h"
#include "tests/hands/chances.h"

namespace boughwork::testing {
namespace {

/// Two neighbours, a little too near to each other for hands that err by a millimetre.
SceneBuilder crowded() {
    SceneBuilder plan = with_level_branch();
    plan.challenge().neighbours = Neighbours::apart;
    plan.scene.hands = placing_within(1);
    return plan.hang(rectangle(1, 30, 40), under(100)).hang(rectangle(2, 30, 40), under(131.5));
}

}  // namespace

TEST_CASE("A share in words is neither none nor all unless it is so, and never far from what was counted") {
    CHECK(in_words(Chance{0, 2000}) == "none of 2000 builds");
    CHECK(in_words(Chance{2000, 2000}) == "all 2000 builds");
    CHECK(in_words(Chance{1100, 2000}) == "6 of 10 builds");
    CHECK(in_words(Chance{1099, 2000}) == "5 of 10 builds");
    CHECK(in_words(Chance{60, 2000}) == "3 of 100 builds");
    CHECK(in_words(Chance{1940, 2000}) == "97 of 100 builds");
    CHECK(in_words(Chance{2, 2000}) == "1 of 1000 builds");
    CHECK(in_words(Chance{1, 2000}) == "1 of 2000 builds");
    CHECK(in_words(Chance{1, 3}) == "1 of 3 builds");
    for (int of = 1; of <= 3000; of = of * 3 + 1)
        for (int times = 1; times < of; ++times) {
            int told = 0;
            int told_of = 0;
            REQUIRE(std::sscanf(in_words(Chance{times, of}).c_str(), "%d of %d builds", &told, &told_of) == 2);
            CHECK(told > 0);
            CHECK(told < told_of);
            CHECK(std::abs(Chance{times, of}.share() - double(told) / told_of) <= 0.5 / told_of + 1e-12);
        }
}

TEST_CASE("Each piece's sentence tells the report's own numbers, and the rule that it breaks most often") {
    const HandsReport report = built(crowded(), 1000);
    for (const ShakyPiece& piece : report.pieces) {
        const Chance fails{1000 - piece.holds.times, 1000};
        CHECK(fails.times > 100);
        REQUIRE(piece.fails_by == Rule::touching);
        CHECK(piece.breaks_it.times <= fails.times);
        CHECK(piece.says == "Piece " + std::to_string(piece.number.value) + " fails in " + in_words(fails) +
                                ". Most often: touches a neighbour.");
    }
    CHECK(report.says == "All pieces hold in " + in_words(report.all_hold) + ".");
    CHECK_FALSE(report.holds());
}

TEST_CASE("A standard error is never nothing, and shrinks as builds are added") {
    CHECK(Chance{0, 0}.share() == 0);
    CHECK(Chance{100, 100}.standard_error() > 0);
    CHECK(Chance{500, 1000}.standard_error() == Approx(std::sqrt(0.25 / 1002)));
    CHECK(Chance{5000, 10000}.standard_error() < Chance{500, 1000}.standard_error());
    const SceneBuilder plan = crowded();
    CHECK(built(plan, 1600).score_error == Approx(built(plan, 400).score_error / 2).epsilon(0.2));
}

TEST_CASE("More room is told as it was tried: the same errors, the piece moved") {
    const SceneBuilder plan = crowded();
    const auto room = more_room(plan.scene, plan.scene.plans.front(), {1}, 500);
    REQUIRE(room);
    // By closed form: 2.5 mm apart fails in 14 of 100, 3.5 mm in 4.
    CHECK(room->move_mm.x == Approx(-2));
    CHECK(room->move_mm.y == Approx(0).margin(1e-9));
    CHECK(room->says == "Moved 2 mm left, it fails in " + in_words(room->fails_then) + ".");
    SceneBuilder moved = plan;
    moved.pose_of(1).at_mm = moved.pose_of(1).at_mm + room->move_mm;
    CHECK(piece(built(moved, 500), 1).holds.times == 500 - room->fails_then.times);
    CHECK(piece(built(plan, 500), 1).holds.times == 500 - room->fails_now.times);
}

TEST_CASE("No room is told where none helps, where it would cost a neighbour, or where nothing fails often") {
    SceneBuilder between = crowded();
    between.hang(rectangle(3, 30, 40), under(68.5));
    CHECK_FALSE(more_room(between.scene, between.plan(), {1}, 300));
    SceneBuilder low;
    low.branch("b1", {{0, 404}, {400, 404}}).hang(rectangle(1, 60, 399), under(100));
    low.scene.hands = placing_within(3);
    low.scene.hands.cut_mm = 3;
    CHECK_FALSE(more_room(low.scene, low.plan(), {1}, 300));
    SceneBuilder alone = with_level_branch();
    alone.hang(rectangle(1, 60, 40), under(100));
    CHECK_FALSE(more_room(alone.scene, alone.plan(), {1}, 300));
    CHECK_FALSE(more_room(alone.scene, alone.plan(), {9}, 300));
}

TEST_CASE("A line of the challenge is met as often as its pieces hold") {
    SceneBuilder plan = crowded();
    plan.challenge().limits.pieces = {2, std::nullopt};
    const HandsReport report = built(plan, 400);
    REQUIRE(report.challenge.size() == 1);
    CHECK(report.challenge[0].about == "pieces");
    CHECK(report.challenge[0].met == report.all_hold);
    CHECK(report.all_well == report.all_hold);
}

TEST_CASE("Without pieces, and before the first build, nothing is claimed") {
    SceneBuilder plan = with_level_branch();
    CHECK(built(plan, 10).says.empty());
    CHECK(built(plan, 10).holds());
    const HandsReport report = built(crowded(), 0);
    CHECK(report.builds == 0);
    CHECK(report.says.empty());
    CHECK(piece(report, 1).says.empty());
}

}  // namespace boughwork::testing
