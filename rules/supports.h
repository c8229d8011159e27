// SPDX-License-Identifier: MIT
#pragma once
// Everything in a plan that a piece can hang from: spans of branches, and sides of hanging pieces
// that point down or sideways.

#include <vector>

#include "engine/geometry/polygon.h"
#include "rules/report.h"

namespace boughwork {

struct SupportEdge {
    Segment edge;  ///< What hangs from it lies on its right.
    Support support;
    int depth = 0;  ///< Of what hangs from it: 1 from a branch.
};

/// Spans first, then sides of pieces in number order; none at which a piece would be too deep.
/// `report` is the verdict on `plan`.
std::vector<SupportEdge> find_supports(const Scene& scene, const Plan& plan, const Report& report);

}  // namespace boughwork
