// SPDX-License-Identifier: MIT
#pragma once
// How much of what a piece hangs from is left beside it.

#include <optional>

#include "engine/geometry/polygon.h"
#include "rules/report.h"

namespace boughwork {

/// Both stretches run along the support, from its first end to its second; one of no length: no room there.
struct RoomBeside {
    Segment before;  ///< From the neighbour's side, or the support's first end, to the piece's own side.
    Segment behind;  ///< From the piece's own side to the next neighbour's, or to the support's second end.
};

/// Between sides that hang, as a ruler laid along the support has it; shapes that lean over are the
/// referee's matter. Absent when the piece does not hang. `report` is the verdict on `plan`.
std::optional<RoomBeside> room_beside(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece);

}  // namespace boughwork
