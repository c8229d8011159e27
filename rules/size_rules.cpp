// SPDX-License-Identifier: MIT
#include "rules/size_rules.h"

#include <algorithm>
#include <string>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

Int128 squared(Length l) { return Int128{l.half_um} * l.half_um; }

/// The side as it lies in the plan, by its number from 0.
Segment side_in_plan(const HungPiece& piece, std::size_t number) {
    std::size_t i = 0;
    while (piece.posed.side_number(i) != static_cast<int>(number) + 1) ++i;
    return side(piece.posed.outline, i);
}

Finding wrong_size(PieceNumber piece, double by_mm, std::vector<Vec2> where, std::string says) {
    return {.rule = Rule::wrong_size,
            .pieces = {piece},
            .at_fault = {piece},
            .amount = by_mm,
            .unit = AmountIn::mm,
            .where_mm = std::move(where),
            .says = std::move(says)};
}

}  // namespace

std::vector<Finding> size_findings(const Arrangement& a) {
    const Limits& limits = a.challenge->limits;
    const Unit unit = a.challenge->units;
    std::vector<Finding> findings;
    for (const HungPiece& piece : a.pieces) {
        const Shape& shape = piece.piece->shape;
        const PieceNumber number = piece.piece->number;
        const std::string name = std::to_string(number.value);
        const std::size_t n = corner_count(shape);
        const auto squared_side = [&](std::size_t i) { return squared_distance(shape, i, (i + 1) % n); };
        std::size_t shortest = 0;
        std::size_t longest = 0;
        for (std::size_t i = 1; i < n; ++i) {
            if (squared_side(i) < squared_side(shortest)) shortest = i;
            if (squared_side(i) > squared_side(longest)) longest = i;
        }
        if (limits.side.least && squared_side(shortest) < squared(*limits.side.least)) {
            const Segment at = side_in_plan(piece, shortest);
            findings.push_back(wrong_size(number, to_mm(*limits.side.least) - length(at), {at.from, at.to},
                                          say("Piece {0} has a side of {1}; every side must be at least {2} long.",
                                              {name, length_in_words(length(at), unit, Rounding::down),
                                               length_in_words(to_mm(*limits.side.least), unit, Rounding::up)})));
        }
        if (limits.side.most && squared_side(longest) > squared(*limits.side.most)) {
            const Segment at = side_in_plan(piece, longest);
            findings.push_back(wrong_size(number, length(at) - to_mm(*limits.side.most), {at.from, at.to},
                                          say("Piece {0} has a side of {1}; no side may be longer than {2}.",
                                              {name, length_in_words(length(at), unit, Rounding::up),
                                               length_in_words(to_mm(*limits.side.most), unit, Rounding::down)})));
        }

        const double height = least_height_mm(shape);
        const double least = limits.least_height ? to_mm(*limits.least_height) : 0;
        const Vec2 middle = centroid(piece.posed.outline);
        if (at_most_mm(height, a.tolerance_mm()))
            findings.push_back(wrong_size(number, a.tolerance_mm() - height, {middle},
                                          say("Piece {0} is only {1} high, too thin to judge; it must be higher "
                                              "than {2}.",
                                              {name, length_in_words(height, unit, Rounding::down),
                                               length_in_words(a.tolerance_mm(), unit, Rounding::up)})));
        else if (more_than_mm(least, height))
            findings.push_back(wrong_size(number, least - height, {middle},
                                          say("Piece {0} is only {1} high; every piece must be at least {2} high.",
                                              {name, length_in_words(height, unit, Rounding::down),
                                               length_in_words(least, unit, Rounding::up)})));
    }
    return findings;
}

}  // namespace boughwork
