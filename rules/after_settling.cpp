// SPDX-License-Identifier: MIT
#include "rules/after_settling.h"

#include <algorithm>
#include <string>

#include "engine/words/say.h"
#include "rules/challenge_lines.h"
#include "rules/check.h"

namespace boughwork {
namespace {

bool counts(const PieceReport& piece) { return piece.state == PieceState::counts; }

/// Of the pieces that count on the flat.
int still_counting(const Report& flat, const Report& settled) {
    return static_cast<int>(std::count_if(flat.pieces.begin(), flat.pieces.end(), [&](const PieceReport& piece) {
        return counts(piece) && counts(*find_piece(settled, piece.number));
    }));
}

const SettledBranch* broken_branch(const Settled& settled) {
    const auto broken = std::find_if(settled.branches.begin(), settled.branches.end(), is_broken);
    return broken == settled.branches.end() ? nullptr : &*broken;
}

void judge(ChallengeLine& line, const Report& flat, const Settled& settled) {
    if (!settled.trusted || !settled.report) {
        line.says = say("after settling: it could not be worked out");
        return;
    }
    const int have = still_counting(flat, *settled.report);
    const SettledBranch* broken = broken_branch(settled);
    line.have = have;
    line.met = have == line.need && !broken && settled.tipping.to_the_edge_mm >= 0;
    if (settled.tipping.to_the_edge_mm < 0)
        line.says = say("after settling: the tree tips over");
    else if (broken)
        line.says = say("after settling: branch {0} is broken", {broken->branch});
    else
        line.says = say("after settling: {0} of {1} still count",
                        {std::to_string(have), std::to_string(static_cast<int>(line.need))});
}

}  // namespace

Report with_settled(Report flat, const Settled& settled) {
    for (ChallengeLine& line : flat.challenge)
        if (line.about == about_settling) judge(line, flat, settled);
    return flat;
}

Report check_and_settle(const Scene& scene, const Plan& plan) {
    Report report = check(scene, plan);
    return scene.challenge.holds_after_settling ? with_settled(std::move(report), settle(scene, plan)) : report;
}

}  // namespace boughwork
