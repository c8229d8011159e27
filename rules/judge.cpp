// SPDX-License-Identifier: MIT
#include "rules/judge.h"

#include <algorithm>
#include <string>
#include <utility>

#include "engine/words/say.h"
#include "rules/challenge_lines.h"
#include "rules/counting.h"
#include "rules/fault.h"
#include "rules/measure.h"
#include "rules/not_hanging.h"
#include "rules/pair_rules.h"
#include "rules/size_rules.h"
#include "rules/tally.h"
#include "rules/tree_rules.h"

namespace boughwork {
namespace {

std::vector<Finding> too_deep_findings(const Arrangement& a, const std::vector<Hanging>& hanging) {
    std::vector<Finding> findings;
    if (!a.challenge->depth_limit) return findings;
    const int limit = *a.challenge->depth_limit;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        if (hanging[i].depth <= limit) continue;
        const char* says = limit == 1
                               ? phrase("Piece {0} is number {1} in its chain; here pieces hang from branches only.")
                               : phrase("Piece {0} is number {1} in its chain; here a chain has at most {2} pieces.");
        findings.push_back({.rule = Rule::too_deep,
                            .pieces = {a.number(i)},
                            .at_fault = {a.number(i)},
                            .amount = static_cast<double>(hanging[i].depth),
                            .unit = AmountIn::count,
                            .where_mm = {centroid(a.outline(i))},
                            .says = say(says, {std::to_string(a.number(i).value), std::to_string(hanging[i].depth),
                                               std::to_string(limit)})});
    }
    return findings;
}

/// Findings as they come in, and who is still without one.
class Verdict {
public:
    explicit Verdict(std::vector<PieceReport*> hung) : hung_(std::move(hung)) {}

    void add(std::vector<Finding> findings) {
        for (Finding& finding : findings) {
            for (const PieceNumber number : finding.at_fault) {
                std::vector<Rule>& broken = report_of(number).broken;
                if (std::find(broken.begin(), broken.end(), finding.rule) == broken.end())
                    broken.push_back(finding.rule);
            }
            findings_.push_back(std::move(finding));
        }
    }
    bool clean(std::size_t i) const { return hung_[i]->broken.empty(); }
    std::vector<Finding> take_findings() { return std::move(findings_); }

private:
    PieceReport& report_of(PieceNumber number) {
        return **std::lower_bound(hung_.begin(), hung_.end(), number,
                                  [](const PieceReport* p, PieceNumber n) { return p->number < n; });
    }

    std::vector<PieceReport*> hung_;  // in number order, as in the arrangement
    std::vector<Finding> findings_;
};

}  // namespace

std::vector<PieceReport> measured_pieces(const Scene& scene) {
    std::vector<const Piece*> made;
    made.reserve(scene.pieces.size());
    for (const Piece& piece : scene.pieces) made.push_back(&piece);
    std::sort(made.begin(), made.end(), [](const Piece* x, const Piece* y) { return x->number < y->number; });
    std::vector<PieceReport> reports(made.size());
    for (std::size_t i = 0; i < made.size(); ++i) {
        reports[i].number = made[i]->number;
        reports[i].measures = measure(made[i]->shape, scene.challenge);
        if (scene.challenge.hand_lengths_score)
            reports[i].by_hand = with_hand_lengths(reports[i].measures, made[i]->by_hand, scene.challenge.step);
    }
    return reports;
}

Report judge(const Scene& scene, const Plan& plan, std::vector<PieceReport> measured, const Arrangement& a,
             const std::vector<Hanging>& hanging) {
    Report report;
    report.plan = plan.name;
    report.pieces = std::move(measured);
    std::vector<PieceReport*> hung;
    for (PieceReport& p : report.pieces)
        if (hung.size() < a.pieces.size() && a.number(hung.size()) == p.number) hung.push_back(&p);
    Verdict verdict(hung);

    // Hanging.
    verdict.add(why_not_hanging(a, hanging));
    verdict.add(too_deep_findings(a, hanging));
    for (std::size_t i = 0; i < hung.size(); ++i) {
        hung[i]->hangs_from = hanging[i].support;
        hung[i]->side = hanging[i].side;
        hung[i]->depth = hanging[i].depth;
        for (const std::size_t parent : hanging[i].parents) hung[i]->parents.push_back(a.number(parent));
    }

    // Contact and size, each piece by itself; then who is at fault in pairs.
    verdict.add(tree_findings(a, hanging));
    verdict.add(size_findings(a));
    std::vector<bool> clean;
    std::vector<std::int64_t> costs;
    for (std::size_t i = 0; i < hung.size(); ++i) {
        clean.push_back(verdict.clean(i));
        costs.push_back(clean[i] ? worth(scored(*hung[i]), scene.challenge.score) : 0);
    }
    const std::vector<Conflict> conflicts = find_conflicts(a, hanging);
    verdict.add(fault_findings(a, hanging, conflicts, costs));
    report.ways_out = ways_out(a, hanging, conflicts, costs, clean);

    // Cut off by `holds`, over the limit, cut off by that.
    std::vector<bool> counts;
    for (std::size_t i = 0; i < hung.size(); ++i) counts.push_back(verdict.clean(i));
    verdict.add(counting_findings(a, hanging, counts));
    for (std::size_t i = 0; i < hung.size(); ++i) {
        hung[i]->state = counts[i] ? PieceState::counts : PieceState::does_not_count;
        if (counts[i]) hung[i]->points = points(worth(scored(*hung[i]), scene.challenge.score), scene.challenge);
    }

    report.findings = verdict.take_findings();
    report.challenge = challenge_lines(scene, plan, report);
    report.bonuses = bonus_lines(scene.challenge, report);
    report.score = score(scene.challenge, report);
    return report;
}

}  // namespace boughwork
