// SPDX-License-Identifier: MIT
// Room beside a hanging piece, and how far pieces slide. Places are worked out by hand on the level branch of the scene
// builder, from x = 0 to x = 400.
#include "rules/room_beside.h"

#include <cmath>

#include "rules/slide.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

std::optional<RoomBeside> room(const SceneBuilder& it, int piece) {
    return room_beside(it.scene, current_plan(it.scene), it.check(), {piece});
}

double mm(const Segment& stretch) { return distance(stretch.from, stretch.to); }

/// A rectangle that slides along the under-edge of the level branch, alone.
Sliding sliding(const Arrangement& a, std::size_t i) { return {i, a.outline(i), 0, {i}}; }

}  // namespace

TEST_CASE("room: alone on its span a piece has all that its side leaves, on both sides") {
    SceneBuilder it = with_level_branch();
    it.hang(triangle(1, 80, 60, 50), under(30));
    const auto beside = room(it, 1);
    REQUIRE(beside);
    CHECK(mm(beside->before) == Approx(30));
    CHECK(mm(beside->behind) == Approx(400 - 110));
    CHECK(beside->before.from == under_edge.from);
    CHECK(beside->behind.to == under_edge.to);
}

TEST_CASE("room: it ends at the neighbours' sides, whichever hangs where in the file") {
    SceneBuilder it = with_level_branch();
    it.hang(triangle(3, 80, 60, 50), under(300));
    it.hang(triangle(1, 80, 60, 50), under(150));
    it.hang(triangle(2, 40, 40, 40), under(20));
    it.hang(triangle(4, 40, 40, 40), under(104));
    CHECK(mm(room(it, 1)->before) == Approx(150 - 144));
    CHECK(mm(room(it, 1)->behind) == Approx(300 - 230));
    CHECK(mm(room(it, 2)->before) == Approx(20));
    CHECK(mm(room(it, 2)->behind) == Approx(104 - 60));
}

TEST_CASE("room: over a neighbour's side there is none, never less than none") {
    SceneBuilder it = with_level_branch();
    it.hang(triangle(1, 80, 60, 50), under(100));
    it.hang(triangle(2, 80, 60, 50), under(170));
    CHECK(mm(room(it, 1)->behind) == 0);
    CHECK(mm(room(it, 2)->before) == 0);
    CHECK(mm(room(it, 2)->behind) == Approx(150));
}

TEST_CASE("room: pieces on other supports take none, and a chain's piece has that of its parent's side") {
    SceneBuilder it = with_level_branch();
    it.branch("b2", {{0, 204}, {400, 204}});
    it.challenge().depth_limit.reset();
    it.hang(rectangle(1, 100, 40), under(200));
    it.hang(triangle(2, 30, 30, 30), {.at_mm = {150, 200}});
    it.hang_from(1, 3, triangle(3, 30, 30, 30), {.from_mm = 12});
    REQUIRE(hangs(it.check(), 3));
    CHECK(mm(room(it, 1)->before) == Approx(200));
    const auto beside = room(it, 3);
    REQUIRE(beside);
    CHECK(mm(beside->before) + mm(beside->behind) == Approx(100 - 30));
    CHECK(std::min(mm(beside->before), mm(beside->behind)) == Approx(12));
}

TEST_CASE("room: what does not hang has none") {
    SceneBuilder it = with_level_branch();
    it.hang(triangle(1, 80, 60, 50), under(100, 60));
    it.keep(triangle(2, 80, 60, 50));
    CHECK_FALSE(room(it, 1));
    CHECK_FALSE(room(it, 2));
}

TEST_CASE("sliding: on to the neighbour, and no farther") {
    SceneBuilder it = with_level_branch();
    it.hang(rectangle(1, 50, 30), under(20));
    it.hang(rectangle(2, 50, 30), under(200));
    const Arrangement a = arrange(it.scene, current_plan(it.scene));
    CHECK(slide_while_clear(a, {sliding(a, 0)}, {1, 0}, 330, 1.1) == Approx(200 - 70 - 1.1).margin(1e-6));
    CHECK(slide_while_clear(a, {sliding(a, 0)}, {-1, 0}, 20, 1.1) == 20);
    CHECK(slide_while_clear(a, {sliding(a, 0)}, {1, 0}, 100, 1.1) == 100);
}

TEST_CASE("sliding: away from a neighbour at the least distance, past nothing") {
    SceneBuilder it = with_level_branch();
    it.hang(rectangle(1, 50, 30), under(20));
    it.hang(rectangle(2, 50, 30), under(71.1));
    it.hang(rectangle(3, 50, 30), under(300));
    const Arrangement a = arrange(it.scene, current_plan(it.scene));
    CHECK(slide_while_clear(a, {sliding(a, 1)}, {1, 0}, 278.9, 1.1) == Approx(300 - 121.1 - 1.1).margin(1e-6));
    CHECK(slide_while_clear(a, {sliding(a, 1)}, {-1, 0}, 71.1, 1.1) == Approx(0).margin(1e-6));
}

TEST_CASE("sliding: two as one stop when either meets something, and do not meet each other") {
    SceneBuilder it = with_level_branch();
    it.hang(rectangle(1, 50, 30), under(20));
    it.hang(rectangle(2, 50, 90), under(75));
    it.branch("post", {{300, 340}, {300, 300}});  // in the way of the long one alone
    const Arrangement a = arrange(it.scene, current_plan(it.scene));
    const std::vector<Sliding> both{{0, a.outline(0), 0, {0, 1}}, {1, a.outline(1), 0, {0, 1}}};
    CHECK(slide_while_clear(a, both, {1, 0}, 275, 1.1) == Approx(296 - 125 - 1.1).margin(1e-6));
    // Alone, the first would come free of the second only behind it.
    const auto past = slide_until_clear(a, {sliding(a, 0)}, {1, 0}, 330, 6);
    REQUIRE(past);
    CHECK(*past == Approx(125 + 6 - 20).margin(1e-6));
}

TEST_CASE("sliding: slanting sides stop at their true distance") {
    SceneBuilder it = with_level_branch();
    // Two parallelograms, their facing sides parallel at 45 degrees.
    const std::vector<Vec2> leaning{{0, 0}, {50, 0}, {100, -50}, {50, -50}};
    it.hang(outline(1, leaning), under(20));
    it.hang(outline(2, leaning), under(200));
    const Arrangement a = arrange(it.scene, current_plan(it.scene));
    const double by = slide_while_clear(a, {sliding(a, 0)}, {1, 0}, 330, 1.1);
    CHECK(by == Approx(200 - 70 - 1.1 * std::sqrt(2)).margin(1e-6));
}
