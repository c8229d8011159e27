// SPDX-License-Identifier: MIT
#include "tests/book/hanging.h"

#include <algorithm>

namespace boughwork::book {

namespace {

/// A span, or a side that points down or sideways.
struct SupportLine {
    Segment line;
    Point normal;
    Support what;
};

std::vector<SupportLine> spans(const TreeInPlan& tree) {
    std::vector<SupportLine> lines;
    for (std::size_t b = 0; b < tree.branches.size(); ++b)
        for (std::size_t s = 0; s < tree.branches[b].spans.size(); ++s)
            lines.push_back({tree.branches[b].spans[s].edge,
                             tree.branches[b].spans[s].normal,
                             {.branch = b, .span = static_cast<int>(s)}});
    return lines;
}

std::vector<SupportLine> supporting_sides(const HungPiece& piece, std::size_t branch, Scales& scales) {
    std::vector<SupportLine> lines;
    const std::vector<Segment> sides = sides_of(piece.corners);
    for (std::size_t i = 0; i < sides.size(); ++i)
        if (const Point normal = outward_normal(piece.corners, i); down_or_sideways(normal, scales))
            lines.push_back(
                {sides[i], normal, {.branch = branch, .piece = piece.number, .side = static_cast<int>(i) + 1}});
    return lines;
}

/// Rulebook 3: the sides by which a piece may hang, from 1. "A cone hangs by its base alone."
std::vector<int> hanging_sides(const HungPiece& piece) {
    std::vector<int> sides{1};
    if (!is_cone(piece.shape))
        for (int side = 2; side <= static_cast<int>(piece.corners.size()); ++side) sides.push_back(side);
    return sides;
}

Segment side_of(const HungPiece& piece, int side) {
    return sides_of(piece.corners)[static_cast<std::size_t>(side - 1)];
}

/// A side and a support, as one sees it who looks along the support.
struct Beside {
    bool on_line = false;  ///< In all but length: on the line, and facing it.
    Real from = 0;         ///< The side's ends along the support, the lesser first.
    Real to = 0;
    Real support_length = 0;

    Real shared() const { return std::min(to, support_length) - std::max(from, Real{0}); }
    Real past_an_end() const { return std::max(-from, to - support_length); }
};

Beside beside(const HungPiece& piece, int side, const SupportLine& support, Scales& scales) {
    const Segment s = side_of(piece, side);
    const auto off_line = [&](Point p) { return std::abs(dot(p - support.line.from, support.normal)); };
    const auto along = [&](Point p) { return dot(p - support.line.from, direction(support.line)); };
    Beside b;
    b.on_line = scales.at_most(off_line(s.from), scales.t) && scales.at_most(off_line(s.to), scales.t) &&
                agree(outward_normal(piece.corners, static_cast<std::size_t>(side - 1)), -support.normal, scales);
    b.from = std::min(along(s.from), along(s.to));
    b.to = std::max(along(s.from), along(s.to));
    b.support_length = length(support.line);
    return b;
}

/// Rulebook 3: "lies on".
bool lies_on(const HungPiece& piece, int side, const SupportLine& support, Scales& scales) {
    const Beside b = beside(piece, side, support, scales);
    return b.on_line && scales.at_most(b.past_an_end(), scales.t);
}

struct Candidate {
    int side = 0;
    Support support;
};

/// Rulebook 3: "that with the longer side of the hanging piece, then the branch first in the file, then
/// the lower number"; DEVELOPERS.md: "of piece and side".
bool told_before(const HungPiece& piece, const Candidate& a, const Candidate& b) {
    const Whole128 length_a = squared_side(piece.shape, a.side);
    const Whole128 length_b = squared_side(piece.shape, b.side);
    if (length_a != length_b) return length_a > length_b;
    if (a.support.branch != b.support.branch) return a.support.branch < b.support.branch;
    if (a.support.piece && a.support.piece != b.support.piece) return *a.support.piece < *b.support.piece;
    if (a.support.side != b.support.side) return a.support.side < b.support.side;
    if (a.support.span != b.support.span) return a.support.span < b.support.span;
    return a.side < b.side;
}

std::optional<Hanging> hanging_on(const HungPiece& piece, const std::vector<SupportLine>& supports, int depth,
                                  Scales& scales) {
    std::vector<Candidate> candidates;
    for (const int side : hanging_sides(piece))
        for (const SupportLine& support : supports)
            if (lies_on(piece, side, support, scales)) candidates.push_back({side, support.what});
    if (candidates.empty()) return std::nullopt;
    const Candidate told = *std::min_element(candidates.begin(), candidates.end(),
                                             [&](const auto& a, const auto& b) { return told_before(piece, a, b); });
    Hanging hanging{.depth = depth, .side = told.side, .support = told.support};
    for (const Candidate& c : candidates)
        if (c.support.piece) hanging.parents.push_back(*c.support.piece);
    std::sort(hanging.parents.begin(), hanging.parents.end());
    hanging.parents.erase(std::unique(hanging.parents.begin(), hanging.parents.end()), hanging.parents.end());
    return hanging;
}

/// The supporting sides of the pieces that hang at a depth, or at any (0).
std::vector<SupportLine> sides_at_depth(const Judgement& j, int depth) {
    std::vector<SupportLine> lines;
    for (const HungPiece& piece : j.hung) {
        const auto found = j.hangings.find(piece.number);
        if (found == j.hangings.end() || (depth > 0 && found->second.depth != depth)) continue;
        for (const SupportLine& line : supporting_sides(piece, found->second.support.branch, j.scales))
            lines.push_back(line);
    }
    return lines;
}

/// Reason 1: runs past the end of a span or of a side of a hanging piece.
bool runs_past_the_end(Judgement& j, const HungPiece& piece) {
    std::vector<SupportLine> supports = spans(j.tree);
    for (const SupportLine& line : sides_at_depth(j, 0)) supports.push_back(line);
    std::optional<Beside> told;
    for (const int side : hanging_sides(piece))
        for (const SupportLine& support : supports) {
            const Beside b = beside(piece, side, support, j.scales);
            if (support.what.piece == piece.number || !b.on_line || !j.scales.more(b.shared(), j.scales.t) ||
                !j.scales.more(b.past_an_end(), j.scales.t))
                continue;
            if (told && std::abs(told->shared() - b.shared()) < hair_mm) j.scales.doubt();
            if (told && told->shared() >= b.shared()) continue;
            told = b;
        }
    if (told) j.find(Rule::runs_past_the_end, {piece.number}, {piece.number}, told->past_an_end());
    return told.has_value();
}

/// INFINITY when there is no branch.
Real to_nearest_branch(Judgement& j, const HungPiece& piece) {
    Real nearest = INFINITY;
    for (const BranchInPlan& branch : j.tree.branches)
        nearest = std::min(nearest, signed_distance(piece.corners, branch));
    return nearest;
}

/// Reason 2: it overlaps a branch.
bool over_a_branch(Judgement& j, const HungPiece& piece) {
    const Real d = to_nearest_branch(j, piece);
    if (contact(d, j.scales) != Contact::overlapping) return false;
    j.find(Rule::over_a_branch, {piece.number}, {piece.number}, d);
    return true;
}

/// Reason 3: it touches a branch, or touches or overlaps a hanging piece.
bool not_by_a_whole_side(Judgement& j, const HungPiece& piece) {
    Real nearest = to_nearest_branch(j, piece);
    for (const HungPiece& other : j.hung)
        if (j.hangs(other.number)) nearest = std::min(nearest, signed_distance(piece.corners, other.corners));
    if (contact(nearest, j.scales) == Contact::apart) return false;
    j.find(Rule::not_by_a_whole_side, {piece.number}, {piece.number}, nearest);
    return true;
}

/// Reason 4: it lies on a piece that got one of the reasons 1 to 3, or on a cut-off piece. How many links
/// it is from what does not hang is told, so they too are found outward.
void find_cut_off(Judgement& j, std::vector<const HungPiece*>& without_reason, std::vector<const HungPiece*> above) {
    for (int links = 1; !above.empty(); ++links) {
        std::vector<SupportLine> supports;
        for (const HungPiece* piece : above)
            for (const SupportLine& line : supporting_sides(*piece, 0, j.scales)) supports.push_back(line);
        std::vector<const HungPiece*> found;
        std::vector<const HungPiece*> others;
        for (const HungPiece* piece : without_reason)
            (hanging_on(*piece, supports, 0, j.scales) ? found : others).push_back(piece);
        for (const HungPiece* piece : found)
            j.find(Rule::cut_off, {piece->number}, {piece->number}, links, AmountIn::count);
        without_reason = std::move(others);
        above = std::move(found);
    }
}

}  // namespace

bool Judgement::breaks_no_rule(PieceNumber number) const {
    for (const Finding& finding : findings)
        for (const PieceNumber guilty : finding.at_fault)
            if (guilty == number) return false;
    return true;
}

void Judgement::find(Rule rule, std::vector<PieceNumber> pieces, std::vector<PieceNumber> at_fault, Real amount,
                     AmountIn unit) {
    std::sort(pieces.begin(), pieces.end());
    findings.push_back({.rule = rule,
                        .pieces = std::move(pieces),
                        .at_fault = std::move(at_fault),
                        .amount = static_cast<double>(amount),
                        .unit = unit});
}

void decide_hanging(Judgement& j) {
    std::vector<SupportLine> supports = spans(j.tree);
    for (int depth = 1; !supports.empty(); ++depth) {
        std::map<PieceNumber, Hanging> found;
        for (const HungPiece& piece : j.hung)
            if (!j.hangs(piece.number))
                if (const auto hanging = hanging_on(piece, supports, depth, j.scales)) found[piece.number] = *hanging;
        j.hangings.insert(found.begin(), found.end());
        supports = sides_at_depth(j, depth);
    }
}

void find_who_does_not_hang(Judgement& j) {
    const std::optional<int> limit = j.challenge().depth_limit;
    for (const auto& [number, hanging] : j.hangings)
        if (limit && hanging.depth > *limit) j.find(Rule::too_deep, {number}, {number}, hanging.depth, AmountIn::count);

    std::vector<const HungPiece*> without_reason;
    std::vector<const HungPiece*> with_reason;
    for (const HungPiece& piece : j.hung) {
        if (j.hangs(piece.number)) continue;
        const bool found = runs_past_the_end(j, piece) || over_a_branch(j, piece) || not_by_a_whole_side(j, piece);
        (found ? with_reason : without_reason).push_back(&piece);
    }
    find_cut_off(j, without_reason, with_reason);
    for (const HungPiece* piece : without_reason)
        j.find(Rule::held_by_nothing, {piece->number}, {piece->number},
               j.tree.branches.empty() ? 0 : to_nearest_branch(j, *piece));
}

}  // namespace boughwork::book
