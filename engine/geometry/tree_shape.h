// SPDX-License-Identifier: MIT
#pragma once
// The tree as shapes: the trunk's outline, each branch's runs and outline, and the spans of its
// under-edge from which pieces can hang (rulebook 2).

#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/polygon.h"
#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

/// A straight stretch of a branch's long edges that points down or sideways.
struct Span {
    std::size_t branch = 0;  ///< Index into Tree::branches.
    int number = 0;          ///< From 0 along the path.
    Segment edge;            ///< The branch lies on its left, what hangs on its right.
};

struct BranchShape {
    std::vector<Polygon> runs;  ///< Convex, one a straight stretch of the simplified path.
    Polygon outline;            ///< The whole strip, for drawing.
    std::vector<Span> spans;
};

struct TreeShape {
    Polygon trunk;
    std::vector<BranchShape> branches;  ///< In the order of Tree::branches.
};

/// Ramer-Douglas-Peucker, distance to the chord (as a segment) at most `reach_mm` dropped.
std::vector<Vec2> simplified(const std::vector<Vec2>& path_mm, double reach_mm);

/// Why a branch cannot be built, or Done: fewer than two points or a repeated one, a thickness that
/// is not positive, a turn of more than 120 degrees, a run whose long edge vanishes in its mitres.
Result<Done> possible(const Branch& branch, double tolerance_mm);

/// Of a tree whose branches are all possible.
TreeShape shape_of(const Tree& tree, double tolerance_mm);

}  // namespace boughwork
