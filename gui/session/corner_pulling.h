// SPDX-License-Identifier: MIT
#pragma once
// A triangle whose corners are pulled about on squared paper, by a hand or by arrow keys. Both sides at the pulled
// corner stop at a step; the third stays. What cannot be cut is never reached: the last triangle stays.

#include <array>

#include "engine/geometry/triangle_making.h"
#include "engine/vec.h"

namespace boughwork {

/// Sides and corners as in scene.h; on the paper the corners may run either way.
struct PulledTriangle {
    Triangle triangle;
    std::array<Vec2, 3> corners_mm;
    friend bool operator==(const PulledTriangle&, const PulledTriangle&) = default;
};

/// With the middle of its extent at (0, 0), the first side on top.
PulledTriangle laid_out(const Triangle& triangle);

/// Of about 8, 7 and 6 cm, on the step.
PulledTriangle first_to_pull(const Stop& stop);

/// `corner` (from 0) as near as may be to where the hand is.
PulledTriangle corner_pulled(const PulledTriangle& from, std::size_t corner, Vec2 to_mm, const Stop& stop);

/// One step the way of the arrow, or whichever change of both sides by a step at most goes that way best. Without a
/// stop the corner moves by a step of `ruler`.
PulledTriangle corner_stepped(const PulledTriangle& from, std::size_t corner, Vec2 arrow, const Step& ruler,
                              const Stop& stop);

/// Other sides, with the middle and the direction of the first side as they were.
PulledTriangle with_sides(const PulledTriangle& from, const Triangle& triangle);

/// The piece to be cut, as it is seen: its corners run clockwise.
Triangle as_seen(const PulledTriangle& pulled);

}  // namespace boughwork
