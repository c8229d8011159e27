// SPDX-License-Identifier: MIT
#pragma once
// Who is at fault in a pair that comes too near, and the least costly way out (rulebook 4).

#include <cstdint>
#include <vector>

#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/pair_rules.h"
#include "rules/report.h"

namespace boughwork {

/// One finding for each conflict. If only one of the two hangs the other alone is at fault, else as
/// the challenge sets. `costs`: what taking a piece down costs in points, 0 for one that breaks
/// another rule.
std::vector<Finding> fault_findings(const Arrangement& a, const std::vector<Hanging>& hanging,
                                    const std::vector<Conflict>& conflicts, const std::vector<std::int64_t>& costs);

/// For each tangle of hanging pieces in conflict, what to take down; whatever the setting. `clean`: the
/// pieces that break no other rule, worth something or not.
std::vector<WayOut> ways_out(const Arrangement& a, const std::vector<Hanging>& hanging,
                             const std::vector<Conflict>& conflicts, const std::vector<std::int64_t>& costs,
                             const std::vector<bool>& clean);

}  // namespace boughwork
