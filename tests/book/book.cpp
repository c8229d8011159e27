// SPDX-License-Identifier: MIT
#include "tests/book/book.h"

#include <algorithm>

#include "tests/book/contact.h"
#include "tests/book/counting.h"
#include "tests/book/measuring.h"
#include "tests/book/scoring.h"
#include "tests/book/size.h"
#include "tests/book/whole_challenge.h"

namespace boughwork::book {

namespace {

std::vector<HungPiece> hung_pieces(const Scene& scene, const Plan& plan) {
    std::vector<HungPiece> hung;
    for (const Hung& h : plan.hung) {
        const Shape& shape = find_piece(scene, h.piece)->shape;
        hung.push_back({h.piece, shape, in_plan(shape, h.pose)});
    }
    std::sort(hung.begin(), hung.end(), [](const auto& a, const auto& b) { return a.number < b.number; });
    return hung;
}

/// Rulebook 4: "the least costly way out", and who then counts but for what comes later. "A piece that
/// breaks another rule costs nothing"; DEVELOPERS.md: a piece costs its own points, without bonuses.
WayOut way_out(const Judgement& j, const std::vector<Pair>& pairs) {
    Costs costs;
    for (const Pair& pair : pairs)
        for (const PieceNumber n : {pair.lower, pair.higher}) {
            const Measures m = measured(find_piece(j.scene, n)->shape, j.challenge(), j.scales);
            costs[n] = j.breaks_no_rule(n) ? points_in_parts(m, j.challenge().score.by) : 0;
        }
    const std::set<PieceNumber> down = least_costly(pairs, costs);
    WayOut way{.take_down = {down.begin(), down.end()}};
    for (const auto& [number, cost] : costs)
        if (!down.count(number) && j.breaks_no_rule(number)) way.then_count.push_back(number);
    return way;
}

PieceReport report_on(const Piece& piece, const Judgement& j) {
    PieceReport r{.number = piece.number, .measures = measured(piece.shape, j.challenge(), j.scales)};
    const auto is_it = [&](const HungPiece& h) { return h.number == piece.number; };
    if (std::none_of(j.hung.begin(), j.hung.end(), is_it)) return r;
    if (const auto hanging = j.hangings.find(piece.number); hanging != j.hangings.end()) {
        r.hangs_from = hanging->second.support;
        r.side = hanging->second.side;
        r.depth = hanging->second.depth;
        r.parents = hanging->second.parents;
    }
    for (const Finding& finding : j.findings)
        for (const PieceNumber n : finding.at_fault)
            if (n == piece.number && std::find(r.broken.begin(), r.broken.end(), finding.rule) == r.broken.end())
                r.broken.push_back(finding.rule);
    r.state = r.broken.empty() ? PieceState::counts : PieceState::does_not_count;
    if (r.broken.empty()) r.points = points(r.measures, j.challenge());
    return r;
}

}  // namespace

Verdict verdict(const Scene& scene) {
    const Plan& plan = *find_plan(scene, scene.current);
    Scales scales(scene.challenge.tolerance_mm);
    Judgement j{scene, plan, scales, tree_in_plan(plan.tree, scales), hung_pieces(scene, plan), {}, {}};

    // Rulebook 6: each thing is decided once, in this order.
    decide_hanging(j);
    find_who_does_not_hang(j);
    find_contact_with_the_tree(j);
    const std::vector<Pair> pairs = find_pairs(j);
    find_wrong_sizes(j);
    const WayOut way = way_out(j, pairs);
    find_faults(j, pairs, {way.take_down.begin(), way.take_down.end()});
    find_who_is_out(j);

    Verdict verdict;
    Report& report = verdict.report;
    report.plan = plan.name;
    for (const Piece& piece : scene.pieces) report.pieces.push_back(report_on(piece, j));
    std::sort(report.pieces.begin(), report.pieces.end(),
              [](const PieceReport& a, const PieceReport& b) { return a.number < b.number; });
    report.findings = j.findings;
    report.ways_out.push_back(way);
    report.challenge = challenge_lines(j, report);
    for (const PieceReport& piece : report.pieces) report.score += piece.points;
    for (const Bonus& bonus : scene.challenge.score.bonuses) {
        report.bonuses.push_back({.points = points(bonus, report, scene.challenge)});
        report.score += report.bonuses.back().points;
    }
    verdict.in_doubt = scales.in_doubt();
    return verdict;
}

std::optional<bool> possible(const Scene& scene) {
    Scales scales(scene.challenge.tolerance_mm);
    bool all = true;
    for (const Branch& branch : find_plan(scene, scene.current)->tree.branches)
        if (runs_of(branch, scales).empty()) all = false;
    if (scales.in_doubt()) return std::nullopt;
    return all;
}

}  // namespace boughwork::book
