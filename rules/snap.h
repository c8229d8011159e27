// SPDX-License-Identifier: MIT
#pragma once
// Where a piece that is held in the hand would hang if it were let go: the nearest support, by the
// side that lies nearest to it, exactly on it.

#include <optional>
#include <vector>

#include "rules/report.h"

namespace boughwork {

struct Snap {
    Pose pose;  ///< With the side exactly on the support, all of it (give or take the tolerance).
    Support support;
    int side = 0;         ///< From 1.
    double moved_mm = 0;  ///< How far the ends of that side move from the pose in the hand, on average.
};

/// The places, nearest first, at which `piece` could hang, at most one for each side and each support
/// that is long enough for it, none that moves the middle of that side by more than `reach_mm`, none that would be too
/// deep. `report` is the verdict on `plan`; what hangs from the piece itself supports nothing. `by_side` 1.. keeps to
/// that side.
std::vector<Snap> snaps(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece,
                        const Pose& in_hand, double reach_mm, std::optional<int> by_side = {});

}  // namespace boughwork
