// SPDX-License-Identifier: MIT
#include "engine/geometry/contact.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "tests/engine/all_differences.h"

namespace boughwork {
namespace {

using testing::hull;
using testing::signed_distance_by_differences;

constexpr double t = 1;  // The tolerance of these tests, in mm.

Polygon rectangle(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

Polygon shifted(Polygon polygon, Vec2 by) {
    for (Vec2& corner : polygon) corner = corner + by;
    return polygon;
}

Polygon turned_about(Polygon polygon, Vec2 about, double deg) {
    for (Vec2& corner : polygon) corner = about + turned_ccw(corner - about, deg / degrees_per_radian);
    return polygon;
}

/// A square of side 10 on its corner; the left-most corner is at `left`.
Polygon diamond(Vec2 left) { return turned_about(rectangle(left.x, left.y, left.x + 10, left.y + 10), left, -45); }

Polygon random_convex(std::mt19937& dice) {
    std::uniform_real_distribution<double> place(0, 60);
    std::vector<Vec2> points(std::uniform_int_distribution<std::size_t>(3, 9)(dice));
    for (Vec2& p : points) p = {place(dice), place(dice)};
    return hull(points);
}

TEST_CASE("Apart, touching and overlapping change at the tolerance, the limit itself is a touch") {
    CHECK(contact(1.01, t) == Contact::apart);
    CHECK(contact(1, t) == Contact::touching);
    CHECK(contact(0.99, t) == Contact::touching);
    CHECK(contact(0, t) == Contact::touching);
    CHECK(contact(-0.99, t) == Contact::touching);
    CHECK(contact(-1, t) == Contact::touching);
    CHECK(contact(-1.01, t) == Contact::overlapping);
    CHECK(contact(0.99, 0.5) == Contact::apart);
    CHECK(contact(-0.99, 0.5) == Contact::overlapping);
}

TEST_CASE("The gap between two squares is the shortest way from one to the other") {
    const Polygon a = rectangle(0, 0, 10, 10);
    CHECK(gap(a, rectangle(12, 0, 22, 10)).distance_mm == Approx(2));
    CHECK(gap(a, rectangle(13, 14, 23, 24)).distance_mm == Approx(5));  // Corner to corner: 3-4-5.
    CHECK(gap(a, diamond({12, 5})).distance_mm == Approx(2));
    CHECK(gap(a, rectangle(10, 0, 20, 10)).distance_mm == Approx(0).margin(1e-12));
    CHECK(gap(a, rectangle(10, 10, 20, 20)).distance_mm == Approx(0).margin(1e-12));
}

TEST_CASE("Of two that overlap the shortest push apart is told, below zero") {
    const Polygon a = rectangle(0, 0, 10, 10);
    CHECK(gap(a, rectangle(7, -5, 17, 15)).distance_mm == Approx(-3));
    CHECK(gap(a, rectangle(8, 7, 18, 17)).distance_mm == Approx(-2));
    CHECK(gap(a, diamond({8, 5})).distance_mm == Approx(-2));
    // One inside the other: the push goes through the nearest side.
    CHECK(gap(a, rectangle(5, 2, 6, 3)).distance_mm == Approx(-3));
    CHECK(gap(a, a).distance_mm == Approx(-10));
}

TEST_CASE("The gap is shown between a point of the first shape and a point of the second") {
    const Gap found = gap(rectangle(0, 0, 10, 10), diamond({12, 5}));
    CHECK(found.between.from.x == Approx(10));
    CHECK(found.between.from.y == Approx(5));
    CHECK(found.between.to.x == Approx(12));
    CHECK(found.between.to.y == Approx(5));
    CHECK(found.way_out.x == Approx(1));
    CHECK(found.way_out.y == Approx(0).margin(1e-12));
}

TEST_CASE("An overlap is shown as deep as it is, between a point of each shape inside the other") {
    const Gap found = gap(rectangle(0, 0, 10, 10), rectangle(7, -5, 17, 15));
    CHECK(found.between.from.x == Approx(10));
    CHECK(found.between.to.x == Approx(7));
    CHECK(found.between.from.y == Approx(found.between.to.y));
    CHECK(found.between.from.y >= 0);
    CHECK(found.between.from.y <= 10);
}

TEST_CASE("The gap agrees with the set of all differences, for thousands of pairs") {
    std::mt19937 dice(1959);
    std::uniform_real_distribution<double> shift(-50, 50);
    int apart = 0;
    int overlapping = 0;
    for (int round = 0; round < 4000; ++round) {
        const Polygon a = random_convex(dice);
        const Polygon b = shifted(random_convex(dice), {shift(dice), shift(dice)});
        const double expected = signed_distance_by_differences(a, b);
        const Gap found = gap(a, b);
        REQUIRE(found.distance_mm == Approx(expected).margin(1e-9));
        REQUIRE(gap(b, a).distance_mm == Approx(expected).margin(1e-9));
        REQUIRE(length(found.way_out) == Approx(1));
        apart += expected > 0;
        overlapping += expected < 0;
        if (expected > 0) {
            REQUIRE(length(found.between) == Approx(expected));
            REQUIRE(signed_distance_by_differences(a, shifted(b, found.way_out)) > expected);
        } else {
            REQUIRE(length(found.between) == Approx(-expected));
            // Pushed out by the depth the shapes just touch.
            const Polygon pushed = shifted(b, -expected * found.way_out);
            REQUIRE(signed_distance_by_differences(a, pushed) == Approx(0).margin(1e-9));
        }
    }
    CHECK(apart > 500);
    CHECK(overlapping > 500);
}

TEST_CASE("Two flush sides touch along a side, with a gap or overlapping a little") {
    const Polygon a = rectangle(0, 0, 10, 10);
    for (const double d : {-0.99, -0.5, 0.0, 0.5, 0.99}) {
        CAPTURE(d);
        CHECK(touch(a, rectangle(10 + d, 0, 20 + d, 10), t) == Touch::along_a_side);
        CHECK(touch(a, rectangle(10 + d, 4, 20 + d, 14), t) == Touch::along_a_side);
        CHECK(touch(rectangle(10 + d, 4, 20 + d, 14), a, t) == Touch::along_a_side);
    }
}

TEST_CASE("Two squares that meet by a corner each touch corner to corner") {
    const Polygon a = rectangle(0, 0, 10, 10);
    CHECK(touch(a, rectangle(10, 10, 20, 20), t) == Touch::corner_to_corner);
    CHECK(touch(a, rectangle(10.5, 10.5, 20, 20), t) == Touch::corner_to_corner);
    CHECK(touch(a, rectangle(9.5, 9.5, 20, 20), t) == Touch::corner_to_corner);
    CHECK(touch(a, diamond({10.5, 10}), t) == Touch::corner_to_corner);
}

TEST_CASE("A corner against the middle of a side touches corner to side") {
    const Polygon a = rectangle(0, 0, 10, 10);
    CHECK(touch(a, diamond({10, 5}), t) == Touch::corner_to_side);
    CHECK(touch(diamond({10.9, 5}), a, t) == Touch::corner_to_side);
    CHECK(touch(diamond({9.1, 5}), a, t) == Touch::corner_to_side);
}

TEST_CASE("Two corners are one touch up to twice the tolerance apart") {
    const Polygon a = rectangle(0, 0, 10, 10);
    CHECK(touch(a, diamond({10, 10 - 1.99}), t) == Touch::corner_to_corner);
    CHECK(touch(a, diamond({10, 10 - 2.0}), t) == Touch::corner_to_corner);
    CHECK(touch(a, diamond({10, 10 - 2.01}), t) == Touch::corner_to_side);
    // With a gap of 0.6 and a shift of 1.8 the corners are 1.897 apart, with 2.0 they are 2.088.
    CHECK(touch(a, diamond({10.6, 10 - 1.8}), t) == Touch::corner_to_corner);
    CHECK(touch(a, diamond({10.6, 10 - 2.0}), t) == Touch::corner_to_side);
}

TEST_CASE("A shared part of a side is a touch along it when it is longer than three times the tolerance") {
    // At a gap of 0.6, the reach of 1 goes 0.8 past the end of a side: a part of 2.2 makes 3.
    const Polygon a = rectangle(0, 0, 10, 10);
    for (const double sign : {-1.0, 1.0}) {
        const auto sharing = [&](double part) { return rectangle(10.6, 10 - part, 20, 30); };
        const auto moved_the_other_way = [&](double part) { return rectangle(10.6, -20, 20, part); };
        const auto b = [&](double part) { return sign > 0 ? sharing(part) : moved_the_other_way(part); };
        CHECK(touch(a, b(2.21), t) == Touch::along_a_side);
        CHECK(touch(b(2.21), a, t) == Touch::along_a_side);
        CHECK(touch(a, b(2.19), t) == Touch::corner_to_side);
        CHECK(touch(b(2.19), a, t) == Touch::corner_to_side);
        CHECK(touch(a, b(1.5), t) == Touch::corner_to_corner);
    }
    // Without a gap the reach is a whole tolerance: 2.01 makes 3.01, 1.99 makes 2.99 and corners 1.99 apart.
    CHECK(touch(a, rectangle(10, 10 - 2.01, 20, 30), t) == Touch::along_a_side);
    CHECK(touch(a, rectangle(10, 10 - 1.99, 20, 30), t) == Touch::corner_to_corner);
}

TEST_CASE("A short side against a long one counts by the part of either that is near") {
    const Polygon a = rectangle(0, 0, 100, 100);
    // The short side is 1.5 mm long, but of the long one 1.5 + 2 * 0.8 mm = 3.1 mm are near it.
    CHECK(touch(a, rectangle(100.6, 40, 120, 41.5), t) == Touch::along_a_side);
    CHECK(touch(a, rectangle(100.6, 40, 120, 41.3), t) == Touch::corner_to_side);
}

TEST_CASE("Two sides face each other up to five degrees") {
    // A long side, and a square whose lower left corner is against the middle of it.
    const Polygon a = rectangle(0, 0, 10, 200);
    const auto leaning = [](double deg) { return turned_about(rectangle(10, 100, 60, 150), {10, 100}, deg); };
    CHECK(touch(a, leaning(-4.9), t) == Touch::along_a_side);
    CHECK(touch(a, leaning(-5.0), t) == Touch::along_a_side);
    CHECK(touch(a, leaning(-5.1), t) == Touch::corner_to_side);
}

TEST_CASE("Two sides that run away from each other touch along the part that is near alone") {
    // At 4 degrees a 1 mm reach holds for 14 mm; with a tolerance of 0.1 mm for 1.4 mm: more than 0.3.
    const Polygon a = rectangle(0, 0, 10, 200);
    const Polygon b = turned_about(rectangle(10, 100, 60, 150), {10, 100}, -4);
    CHECK(touch(a, b, 0.1) == Touch::along_a_side);
    // But a gap of 0.99 leaves the sides near for 0.01 / tan 4 deg = 0.14 mm, and 0.14 mm past the corner.
    CHECK(touch(a, shifted(b, {0.99, 0}), t) == Touch::corner_to_side);
}

TEST_CASE("Sides that look the same way do not face each other") {
    // A flat strip, and a flat triangle that stands on it by a corner: their upper sides are 0.9 mm apart
    // for 20 mm, but both look up; the triangle's lower sides lean by 8.5 degrees.
    const Polygon strip = rectangle(0, 0, 100, 1.5);
    const Polygon flat{{50, 0.9}, {60, 2.4}, {40, 2.4}};
    CHECK(touch(strip, flat, t) == Touch::corner_to_side);
}

TEST_CASE("The kind of a touch does not depend on which shape is named first, nor on mirror or turn") {
    std::mt19937 dice(5);
    std::uniform_real_distribution<double> near(-0.95, 0.95);
    std::uniform_real_distribution<double> angle(-180, 180);
    std::vector<int> seen(3, 0);
    for (int round = 0; round < 4000; ++round) {
        const Polygon a = turned_about(random_convex(dice), {30, 30}, angle(dice));
        Polygon b = shifted(turned_about(random_convex(dice), {30, 30}, angle(dice)), {200, 0});
        if (round % 2 == 0) {
            // Bring a side of b flush to a side of a, so that touches along a side are met as well.
            const Segment on = side(a, 0);
            const Segment from = side(b, 0);
            const double turn =
                std::atan2(cross(direction(from), -direction(on)), dot(direction(from), -direction(on)));
            b = turned_about(b, from.from, turn * degrees_per_radian);
            const double slide = std::uniform_real_distribution<double>(0, length(on))(dice);
            b = shifted(b, on.from + slide * direction(on) - b[0]);
            b = shifted(b, near(dice) * outward_normal(on));
        } else {
            const Gap before = gap(a, b);
            b = shifted(b, (near(dice) - before.distance_mm) * before.way_out);
        }
        if (contact(gap(a, b).distance_mm, t) != Contact::touching) continue;
        const Touch kind = touch(a, b, t);
        ++seen[static_cast<std::size_t>(kind)];
        REQUIRE(touch(b, a, t) == kind);
        const auto mirrored = [](Polygon p) {
            for (Vec2& corner : p) corner.x = -corner.x;
            std::reverse(p.begin(), p.end());
            return p;
        };
        REQUIRE(touch(mirrored(a), mirrored(b), t) == kind);
        REQUIRE(touch(turned_about(a, {7, 9}, 33), turned_about(b, {7, 9}, 33), t) == kind);
    }
    for (const int often : seen) CHECK(often > 50);
}

}  // namespace
}  // namespace boughwork
