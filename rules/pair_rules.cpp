// SPDX-License-Identifier: MIT
#include "rules/pair_rules.h"

#include <algorithm>
#include <optional>
#include <string>

#include "engine/geometry/tolerance.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

bool is_parent_of(std::size_t piece, const Hanging& child) {
    return std::binary_search(child.parents.begin(), child.parents.end(), piece);
}

bool allowed(Touch touch, Neighbours neighbours) {
    switch (neighbours) {
        case Neighbours::apart: return false;
        case Neighbours::corner_to_corner: return touch == Touch::corner_to_corner;
        case Neighbours::corners: return touch != Touch::along_a_side;
        case Neighbours::sides: return true;
    }
    return false;
}

std::string how_they_meet(Touch touch) {
    switch (touch) {
        case Touch::along_a_side: return " along a side";
        case Touch::corner_to_corner: return " corner to corner";
        case Touch::corner_to_side: return " by a corner";
    }
    return "";
}

}  // namespace

std::vector<Conflict> find_conflicts(const Arrangement& a, const std::vector<Hanging>& hanging) {
    const double t = a.tolerance_mm();
    const Neighbours neighbours = a.challenge->neighbours;
    std::vector<Conflict> conflicts;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        for (const auto [k, how] : a.close_pairs.of(i)) {
            if (k < i || how == Contact::apart || (!hanging[i].support && !hanging[k].support)) continue;
            if (how == Contact::overlapping) {
                conflicts.push_back(
                    {.first = i, .second = k, .rule = Rule::overlap, .gap = gap(a.outline(i), a.outline(k))});
                continue;
            }
            if (neighbours == Neighbours::sides || is_parent_of(i, hanging[k]) || is_parent_of(k, hanging[i])) continue;
            const Touch kind = touch(a.outline(i), a.outline(k), t);
            if (!allowed(kind, neighbours))
                conflicts.push_back({.first = i,
                                     .second = k,
                                     .rule = Rule::touching,
                                     .gap = gap(a.outline(i), a.outline(k)),
                                     .touch = kind});
        }
    }
    return conflicts;
}

Finding finding_on(const Arrangement& a, const Conflict& conflict, std::vector<PieceNumber> at_fault) {
    const Unit unit = a.challenge->units;
    const double d = conflict.gap.distance_mm;
    const std::string other = in_words(a.number(conflict.second));
    std::string words = capitalised(in_words(a.number(conflict.first)));
    if (conflict.rule == Rule::overlap) {
        words += " and " + other + " lie over each other by " + length_in_words(-d, unit, Rounding::up) +
                 "; pieces may not overlap.";
    } else {
        const bool any_touch = a.challenge->neighbours == Neighbours::apart;
        const std::string how = any_touch ? "" : how_they_meet(conflict.touch);
        words += d > hair_mm ? " is " + length_in_words(d, unit, Rounding::down) + " from " + other + how
                             : " touches " + other + how;
        words += "; it must be more than " + length_in_words(a.tolerance_mm(), unit, Rounding::up) + " away";
        if (a.challenge->neighbours == Neighbours::corner_to_corner)
            words += ", unless corner meets corner";
        else if (!any_touch)
            words += ", only corners may touch";
        words += ".";
    }
    return {.rule = conflict.rule,
            .pieces = {a.number(conflict.first), a.number(conflict.second)},
            .at_fault = std::move(at_fault),
            .amount = d,
            .unit = AmountIn::mm,
            .where_mm = {conflict.gap.between.from, conflict.gap.between.to},
            .says = std::move(words)};
}

}  // namespace boughwork
