// SPDX-License-Identifier: MIT
#include "tests/book/size.h"

#include <algorithm>

namespace boughwork::book {

namespace {

Real mm(Length l) { return static_cast<Real>(l.half_um) / 2000; }
Whole128 squared(Length l) { return static_cast<Whole128>(l.half_um) * l.half_um; }

Real root_mm(Whole128 squared) { return std::sqrt(static_cast<Real>(squared)) / 2000; }

/// The least of the heights on the sides: the narrowest gap it can pass through.
Real least_height(const Corners& corners) {
    Real least = INFINITY;
    for (const Segment& s : sides_of(corners)) {
        Real height = 0;
        for (const Point p : corners) height = std::max(height, std::abs(cross(direction(s), p - s.from)));
        least = std::min(least, height);
    }
    return least;
}

}  // namespace

void find_wrong_sizes(Judgement& j) {
    const Limits& limits = j.challenge().limits;
    for (const HungPiece& piece : j.hung) {
        const auto misses_by = [&](Real by) { j.find(Rule::wrong_size, {piece.number}, {piece.number}, by); };
        Whole128 shortest = squared_side(piece.shape, 1);
        Whole128 longest = shortest;
        for (int side = 2; side <= static_cast<int>(corners_of(piece.shape)); ++side) {
            shortest = std::min(shortest, squared_side(piece.shape, side));
            longest = std::max(longest, squared_side(piece.shape, side));
        }
        // "By true length, the limit itself allowed": decided exactly. A finding for each limit missed.
        if (limits.side.least && shortest < squared(*limits.side.least))
            misses_by(mm(*limits.side.least) - root_mm(shortest));
        if (limits.side.most && longest > squared(*limits.side.most))
            misses_by(root_mm(longest) - mm(*limits.side.most));
        const Real height = least_height(piece.corners);
        if (j.scales.at_most(height, j.scales.t))
            misses_by(j.scales.t - height);  // Too thin to judge, whatever the limit.
        else if (limits.least_height && j.scales.less(height, mm(*limits.least_height)))
            misses_by(mm(*limits.least_height) - height);
    }
}

}  // namespace boughwork::book
