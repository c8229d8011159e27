// SPDX-License-Identifier: MIT
#include "tests/book/counting.h"

#include <algorithm>

namespace boughwork::book {

namespace {

/// How many links it is from what does not count, when it is cut off; else 0.
int links_cut_off(const Judgement& j, PieceNumber number) {
    for (const Finding& finding : j.findings)
        if (finding.rule == Rule::cut_off && finding.pieces.front() == number) return static_cast<int>(finding.amount);
    return 0;
}

/// Rulebook 3, `holds` is `counting`: what hangs from no parent that counts is cut off. Depth by depth,
/// since what is cut off holds nothing either.
void cut_off_by_holds(Judgement& j) {
    if (j.challenge().holds != Holds::counting) return;
    for (int depth = 2; depth <= static_cast<int>(j.hung.size()); ++depth)
        for (const auto& [number, hanging] : j.hangings) {
            if (hanging.depth != depth || links_cut_off(j, number) > 0) continue;
            bool held = false;
            std::vector<int> links;
            for (const PieceNumber parent : hanging.parents) {
                if (j.breaks_no_rule(parent)) held = true;
                links.push_back(links_cut_off(j, parent) + 1);
            }
            if (!held)
                j.find(Rule::cut_off, {number}, {number}, *std::min_element(links.begin(), links.end()),
                       AmountIn::count);
        }
}

/// Rulebook 8: "among the pieces that would count, in number order, those past the limit".
void over_the_limit(Judgement& j) {
    if (j.challenge().over_limit != OverLimit::extras_do_not_count) return;
    const Limits& limits = j.challenge().limits;
    const auto take_extras = [&](const std::vector<PieceNumber>& pieces, int most) {
        for (std::size_t i = 0; i < pieces.size(); ++i)
            if (static_cast<int>(i) >= most)
                j.find(Rule::over_the_limit, {pieces[i]}, {pieces[i]}, static_cast<int>(i) + 1 - most, AmountIn::count);
    };
    // On one branch, then in all.
    if (limits.pieces_per_branch.most)
        for (std::size_t b = 0; b < j.tree.branches.size(); ++b) {
            std::vector<PieceNumber> here;
            for (const PieceNumber n : counting_pieces(j))
                if (j.hangings[n].support.branch == b) here.push_back(n);
            take_extras(here, *limits.pieces_per_branch.most);
        }
    if (limits.pieces.most) take_extras(counting_pieces(j), *limits.pieces.most);
}

}  // namespace

std::vector<PieceNumber> counting_pieces(const Judgement& j) {
    std::vector<PieceNumber> counting;
    for (const auto& [number, hanging] : j.hangings)
        if (j.breaks_no_rule(number)) counting.push_back(number);
    return counting;
}

int how_many_on(const Judgement& j, const std::vector<PieceNumber>& pieces, std::size_t branch) {
    return static_cast<int>(std::count_if(pieces.begin(), pieces.end(),
                                          [&](PieceNumber n) { return j.hangings.at(n).support.branch == branch; }));
}

void find_who_is_out(Judgement& j) {
    cut_off_by_holds(j);
    over_the_limit(j);
    cut_off_by_holds(j);
}

}  // namespace boughwork::book
