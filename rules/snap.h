// SPDX-License-Identifier: MIT
#pragma once
// Where a piece that is held in the hand would hang if it were let go: the nearest support, by the
// side that lies nearest to it, exactly on it.

#include <optional>
#include <vector>

#include "rules/report.h"

namespace boughwork {

struct Snap {
    Pose pose;             ///< With the side exactly on the support, all of it, if the support is long enough.
    Support support;
    int side = 0;          ///< From 1.
    double moved_mm = 0;   ///< How far the farthest corner moved from the pose in the hand.
};

/// The places, nearest first, at which `piece` could hang, at most one for each support and side,
/// none that moves it by more than `reach_mm`. What hangs from the piece itself supports nothing.
/// `by_side` 1.. keeps to that side.
std::vector<Snap> snaps(const Scene& scene, const Plan& plan, PieceNumber piece, const Pose& in_hand, double reach_mm,
                        std::optional<int> by_side = {});

}  // namespace boughwork
