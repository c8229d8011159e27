// SPDX-License-Identifier: MIT
#pragma once
// The referee's two halves: what is there to be seen (measures, an arrangement), and the judgement
// on it. check() is one after the other; IncrementalChecker looks anew only at what moved.

#include <vector>

#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

/// The reports of all pieces, in number order, as measured; nothing hung yet.
std::vector<PieceReport> measured_pieces(const Scene& scene);

/// The verdict. `measured` and `a` are those of this scene and this plan, `hanging` is what hangs: what find_hanging(a)
/// found, unless it is known to be held otherwise (settled.h).
Report judge(const Scene& scene, const Plan& plan, std::vector<PieceReport> measured, const Arrangement& a,
             const std::vector<Hanging>& hanging);

}  // namespace boughwork
