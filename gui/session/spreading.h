// SPDX-License-Identifier: MIT
#pragma once
// Pieces that hang side by side, spread evenly along what holds them.

#include <vector>

#include "engine/edit.h"
#include "rules/report.h"

namespace boughwork {

/// All that hang where `piece` hangs, each with its chain, in the order in which they hang, with the same gap
/// between neighbours and at both ends. Empty: it does not hang, or there is no room for gaps wider than the
/// tolerance. `report` is the verdict on the scene.
std::vector<Edit> spread_out(const Scene& scene, const Report& report, PieceNumber piece);

}  // namespace boughwork
