// SPDX-License-Identifier: MIT
#pragma once
// The tree that stands on the table, as the teacher judged it piece by piece (Plan::built). "Plan says"
// is the referee's report; "tree says" is made here. A ruling wins over both.

#include "rules/report.h"

namespace boughwork {

/// The piece's entry in Plan::built, or null when nobody has looked at it.
const Built* find_built(const Plan& plan, PieceNumber piece);

/// The plan's report, turned into one on the built tree: a piece counts when it hangs there as planned and
/// counts in the plan, or hangs there as it should without having been planned, or is ruled to count. What
/// nobody has looked at, and what is not there, is in the envelope. Limits on how many at most are applied
/// anew, in number order; findings and ways out are the plan's affair and empty. `planned` is the report on
/// the plan.
Report built_report(const Scene& scene, const Plan& plan, const Report& planned);

/// Hung in the plan, and not looked at.
int left_to_judge(const Plan& plan);

}  // namespace boughwork
