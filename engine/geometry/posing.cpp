// SPDX-License-Identifier: MIT
#include "engine/geometry/posing.h"

#include <cassert>
#include <cmath>

#include "engine/geometry/shape.h"

namespace boughwork {
namespace {

/// The same direction, as more than -180 and at most 180 degrees.
double one_turn_deg(double deg) {
    const double rest = std::remainder(deg, 360.0);
    return rest <= -180.0 ? rest + 360.0 : rest;
}

double direction_deg(Vec2 along) { return std::atan2(along.y, along.x) * degrees_per_radian; }

Vec2 turned_deg(Vec2 v, double ccw_deg) { return turned_ccw(v, ccw_deg / degrees_per_radian); }

Vec2 middle(const Segment& s) { return 0.5 * (s.from + s.to); }

/// A place on the paper, in the piece's own frame, and back.
Vec2 to_paper(const Pose& pose, Vec2 place_mm) {
    const Vec2 local = turned_deg(place_mm - pose.at_mm, -pose.turn_ccw_deg);
    return pose.flipped ? Vec2{-local.x, local.y} : local;
}

Vec2 to_plan(const Pose& pose, Vec2 local_mm) {
    const Vec2 facing = pose.flipped ? Vec2{-local_mm.x, local_mm.y} : local_mm;
    return pose.at_mm + turned_deg(facing, pose.turn_ccw_deg);
}

}  // namespace

Segment paper_side(const Shape& shape, const Pose& pose, int side) {
    const std::vector<Vec2> corners = corners_mm(shape, pose);
    const auto number = static_cast<std::size_t>(side);
    assert(side >= 1 && number <= corners.size());
    return {corners[number - 1], corners[number % corners.size()]};
}

int uppermost_side(const Shape& shape, const Pose& pose) {
    int best = 1;
    double best_up = -2;
    for (int side = 1; side <= static_cast<int>(hanging_sides(shape)); ++side) {
        // Corners run clockwise, so the outside is on the left; a flipped piece runs the other way.
        const Vec2 along = direction(paper_side(shape, pose, side));
        const double up = pose.flipped ? -along.x : along.x;
        if (up > best_up + 1e-9) {  // of two equally high, the lower number
            best = side;
            best_up = up;
        }
    }
    return best;
}

int side_after(const Shape& shape, int side) { return side % static_cast<int>(hanging_sides(shape)) + 1; }

Pose posed_by(const Shape& shape, int side, bool flipped, Vec2 middle_mm, Vec2 along) {
    const Segment unturned = paper_side(shape, {.flipped = flipped}, side);
    const double turn_deg = one_turn_deg(direction_deg(along) - direction_deg(direction(unturned)));
    return {.at_mm = middle_mm - turned_deg(middle(unturned), turn_deg), .turn_ccw_deg = turn_deg, .flipped = flipped};
}

Pose by_other_side(const Shape& shape, const Pose& pose, int from, int to) {
    const Segment was = paper_side(shape, pose, from);
    return posed_by(shape, to, pose.flipped, middle(was), direction(was));
}

Pose mirrored(const Pose& pose, Vec2 through_mm, Vec2 across) {
    const Vec2 axis = unit(across);
    const Vec2 off = pose.at_mm - through_mm;
    // Mirroring in x, then turning by twice the angle of `across`, mirrors in the line square to it.
    return {.at_mm = through_mm + off - 2 * dot(off, axis) * axis,
            .turn_ccw_deg = one_turn_deg(2 * direction_deg(axis) - pose.turn_ccw_deg),
            .flipped = !pose.flipped};
}

Pose turned(const Pose& pose, double turn_ccw_deg, Vec2 about_mm) {
    return {.at_mm = about_mm + turned_deg(pose.at_mm - about_mm, turn_ccw_deg),
            .turn_ccw_deg = one_turn_deg(pose.turn_ccw_deg + turn_ccw_deg),
            .flipped = pose.flipped};
}

Pose carried(const Pose& rides, const Pose& from, const Pose& to) {
    // A pure shift is done as one, so that not a bit of the turn changes.
    if (from.turn_ccw_deg == to.turn_ccw_deg && from.flipped == to.flipped)
        return shifted(rides, to.at_mm - from.at_mm);
    const double turn_on_paper = rides.turn_ccw_deg - from.turn_ccw_deg;
    const bool mirror = from.flipped != to.flipped;
    return {.at_mm = to_plan(to, to_paper(from, rides.at_mm)),
            .turn_ccw_deg = one_turn_deg(to.turn_ccw_deg + (mirror ? -turn_on_paper : turn_on_paper)),
            .flipped = rides.flipped != mirror};
}

}  // namespace boughwork
