// SPDX-License-Identifier: MIT
#pragma once
// Poses from other poses: by another side, mirrored, carried along. Geometry alone; whether a piece
// may be there is the referee's to say.

#include "engine/geometry/polygon.h"
#include "engine/scene.h"

namespace boughwork {

/// Side `side` (from 1) of the posed shape, from its first corner to its second in the order of numbers.
Segment paper_side(const Shape& shape, const Pose& pose, int side);

/// The side, of those it can hang by, whose outward normal points up most.
int uppermost_side(const Shape& shape, const Pose& pose);

/// The side after `side`, round and round; the same for a shape that hangs by one side alone.
int side_after(const Shape& shape, int side);

/// With the middle of `side` at `middle_mm`, running from corner to corner along `along`.
Pose posed_by(const Shape& shape, int side, bool flipped, Vec2 middle_mm, Vec2 along);

/// With side `to` where side `from` was: the same line, the same middle.
Pose by_other_side(const Shape& shape, const Pose& pose, int from, int to);

/// The mirror image, in the line through `through_mm` that is square to `across`.
Pose mirrored(const Pose& pose, Vec2 through_mm, Vec2 across);

/// Turned by `turn_ccw_deg` about a place.
Pose turned(const Pose& pose, double turn_ccw_deg, Vec2 about_mm);

inline Pose shifted(Pose pose, Vec2 by_mm) {
    pose.at_mm = pose.at_mm + by_mm;
    return pose;
}

/// What `rides` becomes when it stays as it was to a piece that goes from pose `from` to pose `to`.
Pose carried(const Pose& rides, const Pose& from, const Pose& to);

}  // namespace boughwork
