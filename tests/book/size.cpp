// SPDX-License-Identifier: MIT
#include "tests/book/size.h"

#include <algorithm>

namespace boughwork::book {

namespace {

Real mm(Length l) { return static_cast<Real>(l.half_um) / 2000; }
Whole128 square(Length l) { return static_cast<Whole128>(l.half_um) * l.half_um; }

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
        Real missed_by = 0;
        bool wrong = false;
        const auto misses = [&](Real by) {
            wrong = true;
            missed_by = std::max(missed_by, by);
        };
        for (int side = 1; side <= static_cast<int>(corners_of(piece.shape)); ++side) {
            const Whole128 squared = squared_side(piece.shape, side);
            const Real true_mm = std::sqrt(static_cast<Real>(squared)) / 2000;
            // "By true length, the limit itself allowed": decided exactly.
            if (limits.side.least && squared < square(*limits.side.least)) misses(mm(*limits.side.least) - true_mm);
            if (limits.side.most && squared > square(*limits.side.most)) misses(true_mm - mm(*limits.side.most));
        }
        const Real height = least_height(piece.corners);
        if (limits.least_height && j.scales.less(height, mm(*limits.least_height)))
            misses(mm(*limits.least_height) - height);
        if (j.scales.at_most(height, j.scales.t)) misses(j.scales.t - height);
        if (wrong) j.find(Rule::wrong_size, {piece.number}, {piece.number}, missed_by);
    }
}

}  // namespace boughwork::book
