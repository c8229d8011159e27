// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "engine/geometry/posing.h"
#include "engine/geometry/shape.h"

using namespace boughwork;

namespace {

const Shape pennant = Triangle{{length_from_mm(80), length_from_mm(60), length_from_mm(50)}};
const Pose leaning = {.at_mm = {60, 412.7}, .turn_ccw_deg = -4.76, .flipped = false};

bool near(Vec2 a, Vec2 b) { return distance(a, b) <= 1e-6; }

Vec2 middle(const Segment& s) { return 0.5 * (s.from + s.to); }

void check_same(const Pose& a, const Pose& b) {
    CHECK(near(a.at_mm, b.at_mm));
    CHECK(std::abs(std::remainder(a.turn_ccw_deg - b.turn_ccw_deg, 360.0)) < 1e-9);
    CHECK(a.flipped == b.flipped);
}

}  // namespace

TEST_CASE("By its next side a piece lies on the same line with the same middle") {
    for (const bool flipped : {false, true}) {
        Pose pose = leaning;
        pose.flipped = flipped;
        const Segment was = paper_side(pennant, pose, 1);
        const Segment now = paper_side(pennant, by_other_side(pennant, pose, 1, 2), 2);
        CHECK(near(middle(now), middle(was)));
        CHECK(near(direction(now), direction(was)));
        CHECK(length(now) == Approx(60));
    }
}

TEST_CASE("Next side, three times, brings a triangle back to where it was") {
    Pose pose = leaning;
    int side = 1;
    for (int i = 0; i < 3; ++i) {
        pose = by_other_side(pennant, pose, side, side_after(pennant, side));
        side = side_after(pennant, side);
    }
    CHECK(side == 1);
    check_same(pose, leaning);
}

TEST_CASE("A mirror image keeps the side on its line, and a second one brings the piece back") {
    const Segment was = paper_side(pennant, leaning, 1);
    const Pose image = mirrored(leaning, middle(was), was.to - was.from);
    const Segment now = paper_side(pennant, image, 1);
    CHECK(image.flipped);
    CHECK(near(now.from, was.to));
    CHECK(near(now.to, was.from));
    // The third corner stays on the same side of the line.
    const Vec2 third = corners_mm(pennant, image)[2];
    CHECK(cross(direction(was), third - was.from) ==
          Approx(cross(direction(was), corners_mm(pennant, leaning)[2] - was.from)));
    check_same(mirrored(image, middle(was), was.to - was.from), leaning);
}

TEST_CASE("What hangs from a piece stays as it was to the piece, turned, mirrored or both") {
    const Pose rides = {.at_mm = {75, 390}, .turn_ccw_deg = 33, .flipped = true};
    for (const bool flipped : {false, true}) {
        const Pose to = {.at_mm = {-40, 300}, .turn_ccw_deg = 121, .flipped = flipped};
        const Pose carried_pose = carried(rides, leaning, to);
        const std::vector<Vec2> piece_before = corners_mm(pennant, leaning);
        const std::vector<Vec2> rider_before = corners_mm(pennant, rides);
        const std::vector<Vec2> piece_after = corners_mm(pennant, to);
        const std::vector<Vec2> rider_after = corners_mm(pennant, carried_pose);
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t k = 0; k < 3; ++k)
                CHECK(distance(piece_after[i], rider_after[k]) == Approx(distance(piece_before[i], rider_before[k])));
    }
}

TEST_CASE("A chain that is only shifted keeps its turn to the last bit") {
    const Pose rides = {.at_mm = {75, 390}, .turn_ccw_deg = 33.3, .flipped = true};
    CHECK(carried(rides, leaning, shifted(leaning, {7, -3})).turn_ccw_deg == rides.turn_ccw_deg);
}

TEST_CASE("The uppermost side is the one that points up most, flipped or not") {
    CHECK(uppermost_side(pennant, {}) == 1);
    CHECK(uppermost_side(pennant, {.flipped = true}) == 1);
    CHECK(uppermost_side(pennant, by_other_side(pennant, leaning, 1, 3)) == 3);
    CHECK(uppermost_side(Cone{length_from_mm(20), length_from_mm(60)}, {.turn_ccw_deg = 180}) == 1);
}
