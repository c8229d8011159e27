// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 2: the trunk, the branches and the spans of their long edges.

#include "engine/scene.h"
#include "tests/book/tolerance.h"

namespace boughwork::book {

/// One straight stretch of a branch, from mitre to mitre, or to a square end.
struct Run {
    Segment left;   ///< Its two long edges, along the path.
    Segment right;  ///<
    Corners shape() const { return {left.from, left.to, right.to, right.from}; }
};

struct Span {
    Segment edge;
    Point normal;  ///< Outward.
};

struct BranchInPlan {
    std::vector<Run> runs;
    std::vector<Span> spans;
};

struct TreeInPlan {
    Corners trunk;
    std::vector<BranchInPlan> branches;
};

/// What is left of a path when its needless points are out.
std::vector<Point> simplified(const std::vector<Point>& path, Scales& scales);

/// The runs of a branch; none when it is to be refused.
std::vector<Run> runs_of(const Branch& branch, Scales& scales);

TreeInPlan tree_in_plan(const Tree& tree, Scales& scales);

/// Of a piece and a branch: its deepest run counts.
Real signed_distance(const Corners& piece, const BranchInPlan& branch);

}  // namespace boughwork::book
