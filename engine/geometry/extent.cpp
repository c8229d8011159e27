// SPDX-License-Identifier: MIT
#include "engine/geometry/extent.h"

#include <algorithm>
#include <cassert>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"

namespace boughwork {
namespace {

Box joined(const Box& a, const Box& b) {
    return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
            {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

}  // namespace

Box extent_mm(const Scene& scene, const Plan& plan) {
    const TreeShape tree = shape_of(plan.tree, scene.challenge.tolerance_mm);
    Box box = bounds(tree.trunk);
    for (const BranchShape& branch : tree.branches) box = joined(box, bounds(branch.outline));
    for (const Hung& hung : plan.hung) {
        const Piece* piece = find_piece(scene, hung.piece);
        assert(piece && "a plan hangs pieces of its scene");
        box = joined(box, bounds(posed(piece->shape, hung.pose).outline));
    }
    return box;
}

}  // namespace boughwork
