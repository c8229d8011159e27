// SPDX-License-Identifier: MIT
#include "rules/chain.h"

#include <algorithm>

#include "engine/geometry/posing.h"

namespace boughwork {

std::vector<PieceNumber> chain_below(const Report& report, PieceNumber piece) {
    std::vector<PieceNumber> chain;
    std::vector<PieceNumber> open{piece};
    while (!open.empty()) {
        const PieceNumber holder = open.back();
        open.pop_back();
        for (const PieceReport& p : report.pieces) {
            if (!p.hangs_from || p.hangs_from->piece != holder) continue;
            chain.push_back(p.number);
            open.push_back(p.number);
        }
    }
    std::sort(chain.begin(), chain.end());
    return chain;
}

Plan with_pose(const Plan& plan, PieceNumber piece, const Pose& pose, const std::vector<PieceNumber>& chain) {
    const Hung* before = find_hung(plan, piece);
    if (!before) return plan;
    const Pose was = before->pose;
    Plan result = plan;
    for (Hung& hung : result.hung) {
        if (hung.piece == piece)
            hung.pose = pose;
        else if (std::binary_search(chain.begin(), chain.end(), hung.piece))
            hung.pose = carried(hung.pose, was, pose);
    }
    return result;
}

}  // namespace boughwork
