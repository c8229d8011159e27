// SPDX-License-Identifier: MIT
#include "rules/supports.h"

#include "engine/geometry/tolerance.h"

namespace boughwork {

std::vector<SupportEdge> find_supports(const Arrangement& a, const std::vector<Hanging>& hanging) {
    std::vector<SupportEdge> supports;
    for (const BranchShape& branch : a.tree_shape.branches)
        for (const Span& span : branch.spans)
            supports.push_back({span.edge, {.branch = span.branch, .span = span.number}, 1});
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        if (!hanging[i].support) continue;
        const int depth = hanging[i].depth + 1;
        if (a.challenge->depth_limit && depth > *a.challenge->depth_limit) continue;
        const PosedShape& holder = a.pieces[i].posed;
        for (std::size_t k = 0; k < holder.outline.size(); ++k) {
            const Segment edge = side(holder.outline, k);
            if (points_down_or_sideways(outward_normal(edge)))
                supports.push_back(
                    {edge,
                     {.branch = hanging[i].support->branch, .piece = a.number(i), .side = holder.side_number(k)},
                     depth});
        }
    }
    return supports;
}

}  // namespace boughwork
