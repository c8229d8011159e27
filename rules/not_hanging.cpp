// SPDX-License-Identifier: MIT
#include "rules/not_hanging.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "rules/lying.h"
#include "rules/tree_rules.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// Judges one piece after the other; `i` is always its place in the arrangement.
class Judge {
public:
    Judge(const Arrangement& a, const std::vector<Hanging>& hanging)
        : a_(a), hanging_(hanging), t_(a.tolerance_mm()), unit_(a.challenge->units) {}

    std::optional<Finding> runs_past_the_end(std::size_t i) const;
    std::optional<Finding> over_a_branch(std::size_t i) const;
    std::optional<Finding> not_by_a_whole_side(std::size_t i) const;
    Finding cut_off(std::size_t i, std::size_t holder, int links) const;
    Finding held_by_nothing(std::size_t i) const;

    bool lies_on_piece(std::size_t i, std::size_t holder) const;

private:
    Finding about(Rule rule, std::size_t i, double amount, std::vector<Vec2> where, std::string says) const {
        return {.rule = rule,
                .pieces = {a_.number(i)},
                .at_fault = {a_.number(i)},
                .amount = amount,
                .unit = AmountIn::mm,
                .where_mm = std::move(where),
                .says = std::move(says)};
    }
    std::string name(std::size_t i) const { return std::to_string(a_.number(i).value); }

    const Arrangement& a_;
    const std::vector<Hanging>& hanging_;
    double t_;
    Unit unit_;
};

/// A support that a side runs past, and what it is: a branch, or a side of a piece.
struct Overrun {
    InLine place;
    Segment side;
    Segment support;
    std::string branch;
    std::string holder;
    int holder_side = 0;
};

/// "the left end of branch b1", "the upper end of side 2 of piece 7": as seen from the support's middle.
std::string end_in_words(const Overrun& overrun, bool at_to) {
    const Segment& support = overrun.support;
    const Vec2 toward = at_to ? support.to - support.from : support.from - support.to;
    const bool level = std::abs(toward.x) >= std::abs(toward.y);
    const bool first = level ? toward.x < 0 : toward.y < 0;
    if (overrun.holder.empty())
        return say(level   ? first ? phrase("the left end of branch {0}") : phrase("the right end of branch {0}")
                     : first ? phrase("the lower end of branch {0}")
                           : phrase("the upper end of branch {0}"),
                   {overrun.branch});
    return say(level   ? first ? phrase("the left end of side {0} of piece {1}")
                               : phrase("the right end of side {0} of piece {1}")
                 : first ? phrase("the lower end of side {0} of piece {1}")
                       : phrase("the upper end of side {0} of piece {1}"),
               {std::to_string(overrun.holder_side), overrun.holder});
}

std::optional<Finding> Judge::runs_past_the_end(std::size_t i) const {
    const HungPiece& piece = a_.pieces[i];
    std::optional<Overrun> longest;
    const auto try_support = [&](const Segment& support, const auto& called) {
        for (std::size_t k = 0; k < piece.posed.outline.size(); ++k) {
            if (!can_hang_by(piece, k)) continue;
            const Segment s = side(piece.posed.outline, k);
            const auto place = in_line(s, support, t_);
            if (!place || !runs_past(*place, t_)) continue;
            if (longest && !more_than_mm(place->shared_mm, longest->place.shared_mm)) continue;
            longest = Overrun{.place = *place, .side = s, .support = support};
            called(*longest);
        }
    };
    for (const BranchShape& branch : a_.tree_shape.branches)
        for (const Span& span : branch.spans)
            if (within_gap(piece.box, bounds({span.edge.from, span.edge.to}), t_ + hair_mm))
                try_support(span.edge, [&](Overrun& it) { it.branch = a_.tree->branches[span.branch].name; });
    for (const ClosePairs::Neighbour& near : a_.close_pairs.of(i)) {
        const std::size_t n = near.place;
        if (!hanging_[n].support) continue;
        const PosedShape& holder = a_.pieces[n].posed;
        for (std::size_t k = 0; k < holder.outline.size(); ++k) {
            const Segment support = side(holder.outline, k);
            if (!points_down_or_sideways(outward_normal(support))) continue;
            try_support(support, [&](Overrun& it) {
                it.holder = name(n);
                it.holder_side = holder.side_number(k);
            });
        }
    }
    if (!longest) return std::nullopt;

    const bool at_to = longest->place.past_to_mm >= longest->place.past_from_mm;
    const double past = at_to ? longest->place.past_to_mm : longest->place.past_from_mm;
    // The side runs against the support, so its first end lies at the support's second.
    return about(Rule::runs_past_the_end, i, past,
                 {at_to ? longest->support.to : longest->support.from, at_to ? longest->side.from : longest->side.to},
                 say("Piece {0} runs {1} past {2}; the whole side must lie on it.",
                     {name(i), length_in_words(past, unit_, Rounding::up), end_in_words(*longest, at_to)}));
}

std::optional<Finding> Judge::over_a_branch(std::size_t i) const {
    std::optional<Gap> deepest;
    std::size_t of = 0;
    for (std::size_t b = 0; b < a_.tree_shape.branches.size(); ++b) {
        const auto near = gap_to_branch(a_.tree_shape.branches[b], a_.pieces[i], t_);
        if (!near || contact(near->distance_mm, t_) != Contact::overlapping) continue;
        if (deepest && at_most_mm(deepest->distance_mm, near->distance_mm)) continue;
        deepest = *near;
        of = b;
    }
    if (!deepest) return std::nullopt;
    return about(Rule::over_a_branch, i, deepest->distance_mm, {deepest->between.from, deepest->between.to},
                 say("Piece {0} lies {1} over {2}; it must hang below it, by a whole side.",
                     {name(i), length_in_words(-deepest->distance_mm, unit_, Rounding::up), branch_in_words(a_, of)}));
}

/// What a piece meets without hanging from it.
struct Meeting {
    Gap gap;
    std::string other;
    Touch touch;
};

/// {0} the piece, {1} the other, {2} how far apart or how deep.
const char* words_for(const Meeting& meeting, double t) {
    const double d = meeting.gap.distance_mm;
    if (contact(d, t) == Contact::overlapping)
        return phrase("Piece {0} lies {2} over {1}; it must hang by a whole side.");
    const bool apart = d > hair_mm;
    if (!points_down_or_sideways(meeting.gap.way_out))
        return apart ? phrase("Piece {0} is {2} from {1}, from above; it must hang by a whole side.")
                     : phrase("Piece {0} touches {1}, from above; it must hang by a whole side.");
    if (meeting.touch == Touch::along_a_side)
        return apart ? phrase("Piece {0} is {2} from {1}, along part of a side; it must hang by a whole side.")
                     : phrase("Piece {0} touches {1}, along part of a side; it must hang by a whole side.");
    return apart ? phrase("Piece {0} is {2} from {1}, by a corner only; it must hang by a whole side.")
                 : phrase("Piece {0} touches {1}, by a corner only; it must hang by a whole side.");
}

std::optional<Finding> Judge::not_by_a_whole_side(std::size_t i) const {
    const Polygon& outline = a_.outline(i);
    std::optional<Meeting> nearest;
    const auto meet = [&](const Polygon& other, const Gap& g, const auto& called) {
        if (contact(g.distance_mm, t_) == Contact::apart) return;
        const double so_far = nearest ? nearest->gap.distance_mm : std::numeric_limits<double>::infinity();
        if (more_than_mm(g.distance_mm, so_far)) return;
        const Touch how = touch(other, outline, t_);
        // Of two that are as near (two runs at a bend), one that shares a side says more.
        if (at_most_mm(so_far, g.distance_mm) && (how != Touch::along_a_side || nearest->touch == how)) return;
        nearest = Meeting{g, called(), how};
    };
    for (std::size_t b = 0; b < a_.tree_shape.branches.size(); ++b)
        for (const Polygon& run : a_.tree_shape.branches[b].runs)
            if (within_gap(bounds(run), a_.pieces[i].box, t_ + hair_mm))
                meet(run, gap(run, outline), [&] { return branch_in_words(a_, b); });
    for (const ClosePairs::Neighbour& near : a_.close_pairs.of(i)) {
        const std::size_t n = near.place;
        if (hanging_[n].support && near.contact != Contact::apart)
            meet(a_.outline(n), gap(a_.outline(n), outline), [&] { return in_words(a_.number(n)); });
    }
    if (!nearest) return std::nullopt;

    const double d = nearest->gap.distance_mm;
    const std::string amount = length_in_words(std::abs(d), unit_, d > 0 ? Rounding::down : Rounding::up);
    return about(Rule::not_by_a_whole_side, i, d, {nearest->gap.between.from, nearest->gap.between.to},
                 say(words_for(*nearest, t_), {name(i), nearest->other, amount}));
}

bool Judge::lies_on_piece(std::size_t i, std::size_t holder) const {
    const HungPiece& piece = a_.pieces[i];
    const Polygon& on = a_.outline(holder);
    for (std::size_t k = 0; k < on.size(); ++k) {
        const Segment support = side(on, k);
        if (!points_down_or_sideways(outward_normal(support))) continue;
        for (std::size_t s = 0; s < piece.posed.outline.size(); ++s) {
            if (!can_hang_by(piece, s)) continue;
            const auto place = in_line(side(piece.posed.outline, s), support, t_);
            if (place && lies_on(*place, t_)) return true;
        }
    }
    return false;
}

Finding Judge::cut_off(std::size_t i, std::size_t holder, int links) const {
    Finding finding =
        about(Rule::cut_off, i, links, {centroid(a_.outline(i))},
              say("Piece {0} hangs from piece {1}, which does not hang itself.", {name(i), name(holder)}));
    finding.unit = AmountIn::count;
    return finding;
}

Finding Judge::held_by_nothing(std::size_t i) const {
    std::optional<Gap> nearest;
    std::size_t of = 0;
    for (std::size_t b = 0; b < a_.tree_shape.branches.size(); ++b) {
        const auto g = gap_to_branch(a_.tree_shape.branches[b], a_.pieces[i], std::numeric_limits<double>::infinity());
        if (!g || (nearest && at_most_mm(nearest->distance_mm, g->distance_mm))) continue;
        nearest = *g;
        of = b;
    }
    if (!nearest)
        return about(Rule::held_by_nothing, i, 0, {centroid(a_.outline(i))},
                     say("Nothing holds piece {0}; the tree has no branch.", {name(i)}));
    return about(
        Rule::held_by_nothing, i, nearest->distance_mm, {nearest->between.from, nearest->between.to},
        say("Nothing holds piece {0}; branch {1} is {2} away.",
            {name(i), a_.tree->branches[of].name, length_in_words(nearest->distance_mm, unit_, Rounding::down)}));
}

}  // namespace

std::vector<Finding> why_not_hanging(const Arrangement& a, const std::vector<Hanging>& hanging) {
    const Judge judge(a, hanging);
    std::vector<std::optional<Finding>> why(a.pieces.size());
    std::vector<std::size_t> layer;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        if (hanging[i].support) continue;
        why[i] = judge.runs_past_the_end(i);
        if (!why[i]) why[i] = judge.over_a_branch(i);
        if (!why[i]) why[i] = judge.not_by_a_whole_side(i);
        if (why[i]) layer.push_back(i);
    }
    // Whatever lies on one of those is cut off with it, link by link.
    for (int links = 1; !layer.empty(); ++links) {
        std::vector<std::size_t> next;
        for (const std::size_t holder : layer) {
            for (const auto [i, how] : a.close_pairs.of(holder)) {
                if (hanging[i].support || why[i] || !judge.lies_on_piece(i, holder)) continue;
                why[i] = judge.cut_off(i, holder, links);
                next.push_back(i);
            }
        }
        std::sort(next.begin(), next.end());
        layer = std::move(next);
    }
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < a.pieces.size(); ++i)
        if (!hanging[i].support) findings.push_back(why[i] ? *why[i] : judge.held_by_nothing(i));
    return findings;
}

}  // namespace boughwork
