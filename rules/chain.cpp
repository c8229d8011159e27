// SPDX-License-Identifier: MIT
#include "rules/chain.h"

#include <algorithm>

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
    const Pose old = before->pose;
    const double turn_deg = pose.turn_ccw_deg - old.turn_ccw_deg;
    Plan result = plan;
    for (Hung& hung : result.hung) {
        if (hung.piece == piece) {
            hung.pose = pose;
        } else if (std::binary_search(chain.begin(), chain.end(), hung.piece)) {
            hung.pose.at_mm = pose.at_mm + turned_ccw(hung.pose.at_mm - old.at_mm, turn_deg / degrees_per_radian);
            hung.pose.turn_ccw_deg += turn_deg;
        }
    }
    return result;
}

}  // namespace boughwork
