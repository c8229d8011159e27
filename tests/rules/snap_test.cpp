// SPDX-License-Identifier: MIT
#include "rules/snap.h"

#include <set>

#include "tests/rules/random_scene.h"

namespace boughwork::testing {
namespace {

const Piece pennant = triangle(1, 80, 60, 50);

std::vector<Snap> snaps_of(const SceneBuilder& scene, int number, const Pose& in_hand, double reach_mm,
                           std::optional<int> by_side = {}) {
    return snaps(scene.scene, scene.scene.plans[0], scene.check(), {number}, in_hand, reach_mm, by_side);
}

TEST_CASE("A piece held near a branch would hang from it exactly, by the side that is nearest") {
    const SceneBuilder scene = with_level_branch().keep(pennant);
    const std::vector<Snap> places = snaps_of(scene, 1, {.at_mm = {100, 393}, .turn_ccw_deg = 4}, 30);
    REQUIRE_FALSE(places.empty());
    CHECK(places[0].side == 1);
    CHECK(places[0].support.branch == 0);
    SceneBuilder let_go = with_level_branch().hang(pennant, places[0].pose);
    CHECK(counts(let_go.check(), 1));
    const Segment side = let_go.side_of(1, 1);
    CHECK(side.from.y == Approx(400).margin(1e-9));
    CHECK(side.to.y == Approx(400).margin(1e-9));
}

TEST_CASE("A piece held past the end of a branch would hang with its whole side on it") {
    const SceneBuilder scene = with_level_branch().keep(pennant);
    const std::vector<Snap> places = snaps_of(scene, 1, under(335, 3), 30);
    REQUIRE_FALSE(places.empty());
    CHECK(counts(with_level_branch().hang(pennant, places[0].pose).check(), 1));
}

TEST_CASE("A piece can be kept to the side that the hand chose") {
    const SceneBuilder scene = with_level_branch().keep(pennant);
    for (const int by_side : {1, 2, 3}) {
        const std::vector<Snap> places = snaps_of(scene, 1, under(150, 3), 1000, by_side);
        REQUIRE_FALSE(places.empty());
        for (const Snap& place : places) CHECK(place.side == by_side);
        const Report report = with_level_branch().hang(pennant, places[0].pose).check();
        CHECK(piece(report, 1).side == by_side);
    }
}

TEST_CASE("No place is offered out of reach, nor on a branch that is not there") {
    const SceneBuilder scene = with_level_branch().keep(pennant);
    CHECK(snaps_of(scene, 1, under(100, 50), 30).empty());
    CHECK_FALSE(snaps_of(scene, 1, under(100, 50), 60).empty());
    CHECK(snaps_of(SceneBuilder().keep(pennant), 1, under(100), 1000).empty());
}

TEST_CASE("A piece would hang from a piece where chains may grow, and not where they may not") {
    SceneBuilder scene = with_level_branch().hang(rectangle(2, 100, 60), under(100)).keep(pennant);
    const Pose in_hand{.at_mm = {110, 337}};
    scene.challenge().depth_limit = 2;
    const std::vector<Snap> places = snaps_of(scene, 1, in_hand, 20);
    REQUIRE_FALSE(places.empty());
    CHECK(places[0].support.piece == PieceNumber{2});
    scene.challenge().depth_limit = 1;
    CHECK(snaps_of(scene, 1, in_hand, 20).empty());
}

TEST_CASE("A piece is not offered a place on what hangs from itself") {
    SceneBuilder scene = with_level_branch().hang(rectangle(1, 60, 40), under(100));
    scene.challenge().depth_limit.reset();
    scene.hang_from(1, 3, rectangle(2, 60, 30), {}).hang_from(2, 3, rectangle(3, 60, 30), {});
    for (const Snap& place : snaps_of(scene, 1, {.at_mm = {100, 330}}, 1000)) CHECK_FALSE(place.support.piece);
}

TEST_CASE(
    "Places come nearest first, each support and side once, and the piece hangs where there is room for its side") {
    int places_seen = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        SceneBuilder scene = RandomScene(seed).build();
        const Piece newcomer = triangle(99, 45, 40, 35);
        scene.keep(newcomer);
        const std::vector<Snap> places = snaps_of(scene, 99, {.at_mm = {60, 300}, .turn_ccw_deg = 10}, 400);
        double before_mm = 0;
        std::set<std::vector<int>> seen;
        for (const Snap& place : places) {
            CAPTURE(seed, place.side, place.support.branch, place.support.span);
            ++places_seen;
            REQUIRE(place.moved_mm >= before_mm);
            REQUIRE(place.moved_mm <= 400);
            before_mm = place.moved_mm;
            const int piece_number = place.support.piece ? place.support.piece->value : 0;
            REQUIRE(seen.insert({static_cast<int>(place.support.branch), place.support.span, piece_number,
                                 place.support.side, place.side})
                        .second);
            SceneBuilder let_go = scene;
            let_go.plan().hung.push_back({.piece = {99}, .pose = place.pose});
            const Segment support =
                place.support.piece ? let_go.side_of(piece_number, place.support.side)
                                    : let_go.span(place.support.branch, static_cast<std::size_t>(place.support.span));
            if (length(let_go.side_of(99, place.side)) <= length(support)) REQUIRE(hangs(let_go.check(), 99));
        }
    }
    CHECK(places_seen > 200);
}

}  // namespace
}  // namespace boughwork::testing
