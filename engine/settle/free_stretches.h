// SPDX-License-Identifier: MIT
#pragma once
// Which parts of a branch are free to bend: what sticks out of the trunk. Where it leaves the trunk it is clamped.

#include <cstddef>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

struct FreeStretch {
    enum class Clamp {
        at_the_trunk,  ///< Where the path begins, below.
        at_both_ends,  ///< It goes back into the trunk: taken as stiff.
        adrift,        ///< No part of the branch is in the trunk: taken as clamped at the path's first point.
    };

    std::vector<Vec2> path_mm;  ///< From the clamp on.
    bool reversed = false;      ///< It runs against the branch's own path.
    Clamp clamp = Clamp::at_the_trunk;
};

/// In the order of the branch's path. `trunk` is convex. Stretches shorter than a thousandth of a millimetre are none.
std::vector<FreeStretch> free_stretches(const std::vector<Vec2>& path_mm, const Polygon& trunk);

/// The branch's path when its free stretches have become `bent` (the nodes of each, clamp first).
std::vector<Vec2> bent_path(const std::vector<Vec2>& path_mm, const Polygon& trunk,
                            const std::vector<std::vector<Vec2>>& bent);

}  // namespace boughwork
