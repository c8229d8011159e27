// SPDX-License-Identifier: MIT
#include "gui/picture/outline.h"

#include <catch2/catch.hpp>

using namespace boughwork;

namespace {

const Polygon square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
const Polygon three_four_five{{0, 0}, {40, 0}, {0, 30}};

}  // namespace

TEST_CASE("A square cut by a line leaves the part on the inner side") {
    const Polygon left = cut(square, half_plane({4, 0}, {1, 0}));
    CHECK(signed_area(left) == Approx(60));
    CHECK(bounds(left).low.x == Approx(4));
    CHECK(cut(square, half_plane({10, 0}, {1, 0})).empty());  // an edge alone has no inside
    CHECK(signed_area(cut(square, half_plane({-1, 0}, {1, 0}))) == Approx(100));
    CHECK(signed_area(cut(square, three_four_five)) == Approx(100));
    CHECK(signed_area(cut(three_four_five, square)) == Approx(100));
}

TEST_CASE("Two outlines overlap when they share more than an edge") {
    CHECK(overlapping(square, three_four_five));
    CHECK(overlapping(square, shrunk(square, 3)));
    CHECK(overlapping(shrunk(square, 3), square));
    CHECK_FALSE(overlapping(square, {{10, 0}, {20, 0}, {20, 10}}));             // along an edge
    CHECK_FALSE(overlapping({{21, 16}, {40, 16}, {40, 30}}, three_four_five));  // their boxes overlap
    CHECK(overlapping({{19, 14}, {40, 14}, {40, 30}}, three_four_five));
}

TEST_CASE("An outline made narrower keeps the same distance everywhere, and vanishes in the end") {
    CHECK(signed_area(shrunk(square, 2)) == Approx(36));
    CHECK(shrunk(square, 5.1).empty());
    // A 3-4-5 triangle of ten times the size has an inner circle of radius 10 (area / half perimeter).
    CHECK(!shrunk(three_four_five, 9.9).empty());
    CHECK(shrunk(three_four_five, 10.1).empty());
}

TEST_CASE("An outline made wider has its sides farther out and no spikes at sharp corners") {
    CHECK(signed_area(grown(square, 2)) == Approx(196));
    const Polygon needle{{0, 0}, {100, -2}, {100, 2}};
    for (const Vec2 corner : grown(needle, 5)) CHECK(corner.x >= -5 - 1e-9);
    for (const HalfPlane& plane : half_planes(grown(needle, 5)))
        for (const Vec2 corner : needle) CHECK(dot(plane.inward, corner) - plane.offset >= 5 - 1e-9);
}

TEST_CASE("A line through a window is seen only inside it") {
    const std::vector<Segment> seen = cut_line({{-5, 5}, {5, 5}, {5, 20}}, false, square);
    REQUIRE(seen.size() == 2);
    CHECK(distance(seen[0].from, {0, 5}) < 1e-9);
    CHECK(distance(seen[1].to, {5, 10}) < 1e-9);
    CHECK(cut_line({{-5, -5}, {15, -5}}, false, square).empty());
    CHECK(cut_line({{2, 2}, {8, 2}, {8, 8}}, true, square).size() == 3);
}

TEST_CASE("The roomiest place in a triangle is the middle of its inner circle") {
    const Room room = roomiest(half_planes(three_four_five), {});
    CHECK(room.to_spare == Approx(10));
    CHECK(distance(room.at, {10, 10}) < 1e-9);
}

TEST_CASE("The roomiest place in a strip is half-way along it") {
    const Polygon strip{{0, 0}, {100, 0}, {100, 10}, {0, 10}};
    const Room room = roomiest(half_planes(strip), {3, 1});
    CHECK(room.to_spare == Approx(4));
    CHECK(distance(room.at, {50, 5}) < 1e-9);
}

TEST_CASE("A rectangle too large for its place has less than nothing to spare") {
    CHECK(roomiest(half_planes(square), {6, 1}).to_spare == Approx(-1));
}
