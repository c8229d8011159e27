// SPDX-License-Identifier: MIT
#pragma once
// Why a piece does not hang: the first of five reasons that fits (rulebook 3).

#include <vector>

#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

/// One finding for each piece that does not hang: runs past the end, over a branch, not by a whole
/// side, cut off, or held by nothing. In number order.
std::vector<Finding> why_not_hanging(const Arrangement& a, const std::vector<Hanging>& hanging);

}  // namespace boughwork
