// SPDX-License-Identifier: MIT
#pragma once
// Which pieces count, once everything about each piece by itself is known (rulebook 3 `holds`,
// 6 and 8 `over_limit`).

#include <vector>

#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

/// Takes the pieces that do not count after all out of `counts`, and says why: cut off by `holds`,
/// over the limit, cut off by that. A place that becomes free is not filled again.
std::vector<Finding> counting_findings(const Arrangement& a, const std::vector<Hanging>& hanging,
                                       std::vector<bool>& counts);

}  // namespace boughwork
