// SPDX-License-Identifier: MIT
#pragma once
// Everything in a plan that a piece can hang from: spans of branches, and sides of hanging pieces
// that point down or sideways.

#include <vector>

#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

struct SupportEdge {
    Segment edge;  ///< What hangs from it lies on its right.
    Support support;
    int depth = 0;  ///< Of what hangs from it: 1 from a branch.
};

/// Spans first, then sides of pieces in number order; none at which a piece would be too deep.
std::vector<SupportEdge> find_supports(const Arrangement& a, const std::vector<Hanging>& hanging);

}  // namespace boughwork
