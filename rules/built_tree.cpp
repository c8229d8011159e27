// SPDX-License-Identifier: MIT
#include "rules/built_tree.h"

#include <algorithm>
#include <optional>

#include "rules/challenge_lines.h"
#include "rules/tally.h"

namespace boughwork {
namespace {

void forget(std::vector<Rule>& broken, Rule rule) {
    broken.erase(std::remove(broken.begin(), broken.end(), rule), broken.end());
}

/// What the eye sees of the piece: its state and what it breaks, limits apart.
void look_at(PieceReport& piece, const Built* built, bool planned) {
    forget(piece.broken, Rule::over_the_limit);
    if (!built || (built->found == Found::not_there && !built->ruling)) {
        piece.state = PieceState::in_the_envelope;
        piece.broken.clear();
        return;
    }
    if (built->found == Found::wrong || !planned) piece.broken = built->broken;
    const bool as_it_should = built->found == Found::as_planned && piece.broken.empty();
    const bool counts = built->ruling ? built->ruling->counts : as_it_should;
    piece.state = counts ? PieceState::counts : PieceState::does_not_count;
}

/// In number order, those past a limit; what is ruled to count takes up room, but is never past it.
void apply_limit(const Plan& plan, std::vector<PieceReport>& pieces, int most, std::optional<std::size_t> branch = {}) {
    int place = 0;
    for (PieceReport& piece : pieces) {
        const bool concerned = !branch || (piece.hangs_from && piece.hangs_from->branch == *branch);
        if (piece.state != PieceState::counts || !concerned || ++place <= most) continue;
        if (find_built(plan, piece.number)->ruling) continue;
        piece.state = PieceState::does_not_count;
        piece.broken.push_back(Rule::over_the_limit);
    }
}

}  // namespace

const Built* find_built(const Plan& plan, PieceNumber piece) {
    const auto found =
        std::find_if(plan.built.begin(), plan.built.end(), [&](const Built& b) { return b.piece == piece; });
    return found == plan.built.end() ? nullptr : &*found;
}

Report built_report(const Scene& scene, const Plan& plan, const Report& planned) {
    Report report;
    report.plan = planned.plan;
    report.pieces = planned.pieces;
    for (PieceReport& piece : report.pieces) {
        const bool in_plan = piece.state != PieceState::in_the_envelope;
        look_at(piece, find_built(plan, piece.number), in_plan);
    }
    const Challenge& challenge = scene.challenge;
    if (challenge.over_limit == OverLimit::extras_do_not_count) {
        if (challenge.limits.pieces_per_branch.most)
            for (std::size_t b = 0; b < plan.tree.branches.size(); ++b)
                apply_limit(plan, report.pieces, *challenge.limits.pieces_per_branch.most, b);
        if (challenge.limits.pieces.most) apply_limit(plan, report.pieces, *challenge.limits.pieces.most);
    }
    for (PieceReport& piece : report.pieces)
        piece.points = piece.state == PieceState::counts ? points(worth(scored(piece), challenge.score), challenge) : 0;
    report.challenge = challenge_lines(scene, plan, report);
    // What stands on the table has settled.
    const auto settling = [](const ChallengeLine& line) { return line.about == about_settling; };
    report.challenge.erase(std::remove_if(report.challenge.begin(), report.challenge.end(), settling),
                           report.challenge.end());
    report.bonuses = bonus_lines(challenge, report);
    report.score = score(challenge, report);
    return report;
}

int left_to_judge(const Plan& plan) {
    return static_cast<int>(std::count_if(plan.hung.begin(), plan.hung.end(),
                                          [&](const Hung& hung) { return !find_built(plan, hung.piece); }));
}

}  // namespace boughwork
