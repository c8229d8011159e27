// SPDX-License-Identifier: MIT
#include "tests/book/contact.h"

#include <algorithm>

namespace boughwork::book {

namespace {

/// The ground is everything below y = 0: the shortest push is straight up.
Real height_above_ground(const Corners& corners) {
    Real lowest = INFINITY;
    for (const Point p : corners) lowest = std::min(lowest, p.y);
    return lowest;
}

/// Rulebook 4, "parent and child".
bool is_parent_of(const Judgement& j, PieceNumber parent, PieceNumber child) {
    const auto found = j.hangings.find(child);
    if (found == j.hangings.end()) return false;
    const std::vector<PieceNumber>& parents = found->second.parents;
    return std::find(parents.begin(), parents.end(), parent) != parents.end();
}

/// Rulebook 4: what `neighbours` allows.
bool allowed(Touch touch, Neighbours neighbours) {
    switch (neighbours) {
        case Neighbours::apart: return false;
        case Neighbours::corner_to_corner: return touch == Touch::corner_to_corner;
        case Neighbours::corners: return touch != Touch::along_a_side;
        case Neighbours::sides: return true;
    }
    return false;
}

/// The rule that a pair breaks, if any.
std::optional<Rule> broken_by(Judgement& j, const HungPiece& a, const HungPiece& b, Real d) {
    switch (contact(d, j.scales)) {
        case Contact::apart: return std::nullopt;
        case Contact::overlapping: return Rule::overlap;
        case Contact::touching: break;
    }
    if (is_parent_of(j, a.number, b.number) || is_parent_of(j, b.number, a.number)) return std::nullopt;
    if (allowed(touch(a.corners, b.corners, j.scales), j.challenge().neighbours)) return std::nullopt;
    return Rule::touching;
}

}  // namespace

void find_contact_with_the_tree(Judgement& j) {
    for (const HungPiece& piece : j.hung) {
        const PieceNumber n = piece.number;
        const Real above = height_above_ground(piece.corners);
        if (contact(above, j.scales) != Contact::apart) j.find(Rule::ground, {n}, {n}, above);
        const Real off_trunk = signed_distance(piece.corners, j.tree.trunk);
        if (contact(off_trunk, j.scales) != Contact::apart) j.find(Rule::trunk, {n}, {n}, off_trunk);
        if (!j.hangs(n)) continue;
        for (std::size_t b = 0; b < j.tree.branches.size(); ++b) {
            const Real d = signed_distance(piece.corners, j.tree.branches[b]);
            const Contact how = contact(d, j.scales);
            if (b != j.hangings[n].support.branch && how != Contact::apart) j.find(Rule::other_branch, {n}, {n}, d);
            if (b == j.hangings[n].support.branch && how == Contact::overlapping)
                j.find(Rule::over_a_branch, {n}, {n}, d);
        }
    }
}

std::vector<Pair> find_pairs(Judgement& j) {
    std::vector<Pair> both_hang;
    for (std::size_t i = 0; i < j.hung.size(); ++i)
        for (std::size_t k = i + 1; k < j.hung.size(); ++k) {
            const HungPiece& a = j.hung[i];
            const HungPiece& b = j.hung[k];
            if (!j.hangs(a.number) && !j.hangs(b.number)) continue;
            const Real d = signed_distance(a.corners, b.corners);
            const std::optional<Rule> rule = broken_by(j, a, b, d);
            if (!rule) continue;
            if (j.hangs(a.number) && j.hangs(b.number))
                both_hang.push_back({*rule, a.number, b.number, d});
            else
                j.find(*rule, {a.number, b.number}, {j.hangs(a.number) ? b.number : a.number}, d);
        }
    return both_hang;
}

std::set<PieceNumber> least_costly(const std::vector<Pair>& pairs, const Costs& costs) {
    std::vector<PieceNumber> pieces;  // The highest first, to compare choices by.
    for (const auto& [number, cost] : costs) pieces.insert(pieces.begin(), number);
    struct Choice {
        std::int64_t cost = 0;
        std::vector<PieceNumber> pieces;
    };
    std::optional<Choice> best;
    for (unsigned subset = 0; subset < (1u << pieces.size()); ++subset) {
        Choice choice;
        for (std::size_t i = 0; i < pieces.size(); ++i)
            if (subset & (1u << i)) {
                choice.pieces.push_back(pieces[i]);
                choice.cost += costs.at(pieces[i]);
            }
        const auto chosen = [&](PieceNumber n) {
            return std::find(choice.pieces.begin(), choice.pieces.end(), n) != choice.pieces.end();
        };
        if (!std::all_of(pairs.begin(), pairs.end(),
                         [&](const Pair& p) { return chosen(p.lower) || chosen(p.higher); }))
            continue;
        const auto better = [](const Choice& a, const Choice& b) {
            if (a.cost != b.cost) return a.cost < b.cost;
            if (a.pieces.size() != b.pieces.size()) return a.pieces.size() < b.pieces.size();
            return a.pieces > b.pieces;  // The highest compared first.
        };
        if (!best || better(choice, *best)) best = choice;
    }
    return {best->pieces.begin(), best->pieces.end()};
}

void find_faults(Judgement& j, const std::vector<Pair>& pairs, const std::set<PieceNumber>& least) {
    for (const Pair& pair : pairs) {
        std::vector<PieceNumber> at_fault;
        for (const PieceNumber n : {pair.lower, pair.higher}) switch (j.challenge().at_fault) {
                case AtFault::both: at_fault.push_back(n); break;
                case AtFault::higher_number:
                    if (n == pair.higher) at_fault.push_back(n);
                    break;
                case AtFault::fewest_points:
                    if (least.count(n)) at_fault.push_back(n);
                    break;
            }
        j.find(pair.rule, {pair.lower, pair.higher}, at_fault, pair.d);
    }
}

}  // namespace boughwork::book
