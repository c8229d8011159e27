// SPDX-License-Identifier: MIT
#pragma once
// A piece and what hangs from it, moved as one.

#include <vector>

#include "rules/report.h"

namespace boughwork {

/// What hangs from the piece, directly or by others, told by each piece's reported parent; in number order.
std::vector<PieceNumber> chain_below(const Report& report, PieceNumber piece);

/// The plan with `piece` in the new pose, and with `chain` moved and turned along with it.
Plan with_pose(const Plan& plan, PieceNumber piece, const Pose& pose, const std::vector<PieceNumber>& chain);

}  // namespace boughwork
