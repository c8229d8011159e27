// SPDX-License-Identifier: MIT
#pragma once
// Pieces against the challenge's limits of size (rulebook 5).

#include <vector>

#include "rules/arrangement.h"
#include "rules/report.h"

namespace boughwork {

/// The rule wrong size, of every hung piece: one finding for each limit it breaks (shortest side,
/// longest side, least height). The amount says by how many mm.
std::vector<Finding> size_findings(const Arrangement& a);

}  // namespace boughwork
