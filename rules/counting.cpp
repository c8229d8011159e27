// SPDX-License-Identifier: MIT
#include "rules/counting.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <string>

#include "engine/words/say.h"

namespace boughwork {
namespace {

Finding about(const Arrangement& a, std::size_t i, Rule rule, int count, std::string says) {
    return {.rule = rule,
            .pieces = {a.number(i)},
            .at_fault = {a.number(i)},
            .amount = static_cast<double>(count),
            .unit = AmountIn::count,
            .where_mm = {centroid(a.outline(i))},
            .says = std::move(says)};
}

/// What hangs from no parent that counts, from the branches outward. `links`: how many it is from the
/// nearest piece that holds nothing, though not cut off itself; 0 while a piece is not cut off.
void cut_off_chains(const Arrangement& a, const std::vector<Hanging>& hanging, std::vector<bool>& counts,
                    std::vector<int>& links, std::vector<Finding>& findings) {
    std::vector<std::size_t> by_depth(a.pieces.size());
    std::iota(by_depth.begin(), by_depth.end(), std::size_t{0});
    std::stable_sort(by_depth.begin(), by_depth.end(),
                     [&](std::size_t x, std::size_t y) { return hanging[x].depth < hanging[y].depth; });
    for (const std::size_t i : by_depth) {
        const std::vector<std::size_t>& parents = hanging[i].parents;
        if (parents.empty() || links[i] > 0) continue;
        if (std::any_of(parents.begin(), parents.end(), [&](std::size_t parent) { return counts[parent]; })) continue;
        int nearest = links[parents.front()];
        for (const std::size_t parent : parents) nearest = std::min(nearest, links[parent]);
        links[i] = nearest + 1;
        counts[i] = false;
        const PieceNumber holder = *hanging[i].support->piece;
        findings.push_back(about(a, i, Rule::cut_off, links[i],
                                 say("Piece {0} hangs from piece {1}, which does not count; here only a piece that "
                                     "counts can hold another.",
                                     {std::to_string(a.number(i).value), std::to_string(holder.value)})));
    }
}

/// In number order, those of `pieces` past `most`: on a branch, or in all.
void over_the_limit(const Arrangement& a, const std::vector<std::size_t>& pieces, int most,
                    std::optional<std::size_t> branch, std::vector<bool>& counts, std::vector<Finding>& findings) {
    const char* in_all = most == 1 ? phrase("At most {0} piece counts in all, and piece {1} would be number {2}.")
                                   : phrase("At most {0} pieces count in all, and piece {1} would be number {2}.");
    const char* on_branch = most == 1
                                ? phrase("At most {0} piece counts on branch {3}, and piece {1} would be number {2}.")
                                : phrase("At most {0} pieces count on branch {3}, and piece {1} would be number {2}.");
    int place = 0;
    for (const std::size_t i : pieces) {
        if (!counts[i] || ++place <= most) continue;
        counts[i] = false;
        findings.push_back(about(
            a, i, Rule::over_the_limit, place - most,
            say(branch ? on_branch : in_all, {std::to_string(most), std::to_string(a.number(i).value),
                                              std::to_string(place), branch ? a.tree->branches[*branch].name : ""})));
    }
}

}  // namespace

std::vector<Finding> counting_findings(const Arrangement& a, const std::vector<Hanging>& hanging,
                                       std::vector<bool>& counts) {
    const Challenge& challenge = *a.challenge;
    std::vector<Finding> findings;
    std::vector<int> links(a.pieces.size(), 0);
    const auto cut_off_by_holds = [&] {
        if (challenge.holds == Holds::counting) cut_off_chains(a, hanging, counts, links, findings);
    };
    cut_off_by_holds();
    if (challenge.over_limit == OverLimit::noted) return findings;

    std::vector<std::vector<std::size_t>> on_branch(a.tree_shape.branches.size());
    std::vector<std::size_t> in_all(a.pieces.size());
    std::iota(in_all.begin(), in_all.end(), std::size_t{0});
    for (const std::size_t i : in_all)
        if (hanging[i].support) on_branch[hanging[i].support->branch].push_back(i);
    if (challenge.limits.pieces_per_branch.most)
        for (std::size_t b = 0; b < on_branch.size(); ++b)
            over_the_limit(a, on_branch[b], *challenge.limits.pieces_per_branch.most, b, counts, findings);
    if (challenge.limits.pieces.most)
        over_the_limit(a, in_all, *challenge.limits.pieces.most, std::nullopt, counts, findings);
    cut_off_by_holds();
    return findings;
}

}  // namespace boughwork
