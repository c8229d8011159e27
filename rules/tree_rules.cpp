// SPDX-License-Identifier: MIT
#include "rules/tree_rules.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

Finding about(Rule rule, PieceNumber piece, const Gap& gap, std::string says) {
    return {.rule = rule,
            .pieces = {piece},
            .at_fault = {piece},
            .amount = gap.distance_mm,
            .unit = AmountIn::mm,
            .where_mm = {gap.between.from, gap.between.to},
            .says = std::move(says)};
}

/// "Piece 1 is 0.8 mm from the trunk; it must be more than 1 mm away."
std::string too_near(const Arrangement& a, PieceNumber piece, double d, const std::string& thing) {
    const Unit unit = a.challenge->units;
    const std::string name = std::to_string(piece.value);
    const std::string near =
        d > hair_mm    ? say("Piece {0} is {1} from {2}", {name, length_in_words(d, unit, Rounding::down), thing})
        : d < -hair_mm ? say("Piece {0} lies {1} over {2}", {name, length_in_words(-d, unit, Rounding::up), thing})
                       : say("Piece {0} touches {1}", {name, thing});
    return say("{0}; it must be more than {1} away.", {near, length_in_words(a.tolerance_mm(), unit, Rounding::up)});
}

/// Below the ground the whole world is ground: the lowest corner tells.
Gap gap_to_ground(const Polygon& outline) {
    const Vec2 lowest = *std::min_element(outline.begin(), outline.end(), [](Vec2 p, Vec2 q) { return p.y < q.y; });
    return {.distance_mm = lowest.y, .between = {{lowest.x, 0}, lowest}, .way_out = {0, 1}};
}

std::string ground_in_words(const Arrangement& a, PieceNumber piece, double d) {
    const Unit unit = a.challenge->units;
    const char* says = d > hair_mm ? phrase("Piece {0} is {1} above the ground; it must stay more than {2} above it.")
                       : d < -hair_mm
                           ? phrase("Piece {0} reaches {1} into the ground; it must stay more than {2} above it.")
                           : phrase("Piece {0} touches the ground; it must stay more than {2} above it.");
    return say(says,
               {std::to_string(piece.value), length_in_words(std::abs(d), unit, d < 0 ? Rounding::up : Rounding::down),
                length_in_words(a.tolerance_mm(), unit, Rounding::up)});
}

/// Those of hanging pieces that break a rule, by piece, then by branch, each once.
std::vector<BranchContact> wrong_branch_contacts(const Arrangement& a, const std::vector<Hanging>& hanging) {
    std::vector<BranchContact> wrong;
    for (const BranchContact& c : a.branch_contacts) {
        const auto& support = hanging[c.piece].support;
        if (support && (c.branch != support->branch || c.contact == Contact::overlapping)) wrong.push_back(c);
    }
    const auto place = [](const BranchContact& c) { return std::pair(c.piece, c.branch); };
    std::sort(wrong.begin(), wrong.end(), [&](const auto& x, const auto& y) { return place(x) < place(y); });
    const auto same = [&](const auto& x, const auto& y) { return place(x) == place(y); };
    wrong.erase(std::unique(wrong.begin(), wrong.end(), same), wrong.end());
    return wrong;
}

Finding branch_finding(const Arrangement& a, const std::vector<Hanging>& hanging, const BranchContact& c) {
    const PieceNumber number = a.number(c.piece);
    const Gap gap = *gap_to_branch(a.tree_shape.branches[c.branch], a.pieces[c.piece], a.tolerance_mm());
    if (c.branch != hanging[c.piece].support->branch)
        return about(Rule::other_branch, number, gap,
                     too_near(a, number, gap.distance_mm, branch_in_words(a, c.branch)));
    return about(Rule::over_a_branch, number, gap,
                 say("Piece {0} lies {1} over branch {2}, which it hangs from; it may only touch it.",
                     {std::to_string(number.value), length_in_words(-gap.distance_mm, a.challenge->units, Rounding::up),
                      a.tree->branches[c.branch].name}));
}

}  // namespace

std::optional<Gap> gap_to_branch(const BranchShape& branch, const HungPiece& piece, double reach_mm) {
    std::optional<Gap> deepest;
    for (const Polygon& run : branch.runs) {
        if (!within_gap(bounds(run), piece.box, reach_mm + hair_mm)) continue;
        const Gap g = gap(run, piece.posed.outline);
        if (!deepest || more_than_mm(deepest->distance_mm, g.distance_mm)) deepest = g;
    }
    return deepest;
}

std::string branch_in_words(const Arrangement& a, std::size_t branch) {
    return say("branch {0}", {a.tree->branches[branch].name});
}

std::vector<Finding> tree_findings(const Arrangement& a, const std::vector<Hanging>& hanging) {
    const double t = a.tolerance_mm();
    const std::vector<BranchContact> woods = wrong_branch_contacts(a, hanging);
    auto wood = woods.begin();
    const Box trunk_box = bounds(a.tree_shape.trunk);
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        const HungPiece& piece = a.pieces[i];
        const PieceNumber number = a.number(i);

        const Gap ground = gap_to_ground(piece.posed.outline);
        if (contact(ground.distance_mm, t) != Contact::apart)
            findings.push_back(about(Rule::ground, number, ground, ground_in_words(a, number, ground.distance_mm)));

        if (within_gap(trunk_box, piece.box, t + hair_mm)) {
            const Gap trunk = gap(a.tree_shape.trunk, piece.posed.outline);
            if (contact(trunk.distance_mm, t) != Contact::apart)
                findings.push_back(
                    about(Rule::trunk, number, trunk, too_near(a, number, trunk.distance_mm, say("the trunk"))));
        }

        for (; wood != woods.end() && wood->piece == i; ++wood) findings.push_back(branch_finding(a, hanging, *wood));
    }
    return findings;
}

}  // namespace boughwork
