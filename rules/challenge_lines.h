// SPDX-License-Identifier: MIT
#pragma once
// What the challenge asks as a whole, line by line, met or not (rulebook 9).

#include <vector>

#include "rules/report.h"

namespace boughwork {

/// ChallengeLine::about of the line that asks what gravity does.
inline constexpr const char* about_settling = "after_settling";

/// The lines that ask something, in the order pieces, branches, pieces_per_branch (one a branch),
/// sheets, criteria, after_settling. Needs the pieces' states, measures and branches of `report`. An unmet
/// line disqualifies no piece. after_settling is left open for after_settling.h.
std::vector<ChallengeLine> challenge_lines(const Scene& scene, const Plan& plan, const Report& report);

}  // namespace boughwork
