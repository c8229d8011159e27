// SPDX-License-Identifier: MIT
#pragma once
// The line of the challenge that asks what gravity does: judged apart from the others, since standing a tree up takes
// many times as long as looking at it.

#include "rules/settled.h"

namespace boughwork {

/// The verdict with that line judged, where the challenge has it: it is met when the tree stands, no branch is broken
/// and every piece that counts on the flat still counts. `settled` is of the plan that `flat` is on. The line stays
/// open when what gravity does could not be worked out.
Report with_settled(Report flat, const Settled& settled);

/// check(), and gravity where the challenge asks for it: no line is left open that can be judged.
Report check_and_settle(const Scene& scene, const Plan& plan);

}  // namespace boughwork
