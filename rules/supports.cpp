// SPDX-License-Identifier: MIT
#include "rules/supports.h"

#include "engine/geometry/tolerance.h"
#include "engine/geometry/tree_shape.h"
#include "rules/arrangement.h"

namespace boughwork {

std::vector<SupportEdge> find_supports(const Scene& scene, const Plan& plan, const Report& report) {
    std::vector<SupportEdge> supports;
    for (const BranchShape& branch : shape_of(plan.tree, scene.challenge.tolerance_mm).branches)
        for (const Span& span : branch.spans)
            supports.push_back({span.edge, {.branch = span.branch, .span = span.number}, 1});
    for (const HungPiece& held : laid_out(scene, plan)) {
        const PieceReport& holder = *find_piece(report, held.piece->number);
        const int depth = holder.depth + 1;
        if (!holder.hangs_from || depth > scene.challenge.depth_limit.value_or(depth)) continue;
        for (std::size_t k = 0; k < held.posed.outline.size(); ++k) {
            const Segment edge = side(held.posed.outline, k);
            if (points_down_or_sideways(outward_normal(edge)))
                supports.push_back(
                    {edge,
                     {.branch = holder.hangs_from->branch, .piece = holder.number, .side = held.posed.side_number(k)},
                     depth});
        }
    }
    return supports;
}

}  // namespace boughwork
