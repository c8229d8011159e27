// SPDX-License-Identifier: MIT
#include "rules/pair_rules.h"

#include <algorithm>
#include <optional>
#include <string>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
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

/// "Piece 7 is 0.8 mm from piece 9", with how they meet where that matters.
std::string touch_in_words(const Arrangement& a, const Conflict& conflict) {
    const std::string piece = std::to_string(a.number(conflict.first).value);
    const std::string other = in_words(a.number(conflict.second));
    const double d = conflict.gap.distance_mm;
    const bool plain = a.challenge->neighbours == Neighbours::apart;
    const bool along = conflict.touch == Touch::along_a_side;
    if (d > hair_mm)
        return say(plain   ? phrase("Piece {0} is {1} from {2}")
                   : along ? phrase("Piece {0} is {1} from {2} along a side")
                           : phrase("Piece {0} is {1} from {2} by a corner"),
                   {piece, length_in_words(d, a.challenge->units, Rounding::down), other});
    return say(plain   ? phrase("Piece {0} touches {1}")
               : along ? phrase("Piece {0} touches {1} along a side")
                       : phrase("Piece {0} touches {1} by a corner"),
               {piece, other});
}

std::string in_words(const Arrangement& a, const Conflict& conflict) {
    const Unit unit = a.challenge->units;
    if (conflict.rule == Rule::overlap)
        return say("Piece {0} and piece {1} lie over each other by {2}; pieces may not overlap.",
                   {std::to_string(a.number(conflict.first).value), std::to_string(a.number(conflict.second).value),
                    length_in_words(-conflict.gap.distance_mm, unit, Rounding::up)});
    const Neighbours neighbours = a.challenge->neighbours;
    const char* says = neighbours == Neighbours::apart ? phrase("{0}; it must be more than {1} away.")
                       : neighbours == Neighbours::corner_to_corner
                           ? phrase("{0}; it must be more than {1} away, unless corner meets corner.")
                           : phrase("{0}; it must be more than {1} away, only corners may touch.");
    return say(says, {touch_in_words(a, conflict), length_in_words(a.tolerance_mm(), unit, Rounding::up)});
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
    return {.rule = conflict.rule,
            .pieces = {a.number(conflict.first), a.number(conflict.second)},
            .at_fault = std::move(at_fault),
            .amount = conflict.gap.distance_mm,
            .unit = AmountIn::mm,
            .where_mm = {conflict.gap.between.from, conflict.gap.between.to},
            .says = in_words(a, conflict)};
}

}  // namespace boughwork
