// SPDX-License-Identifier: MIT
#include "rules/ready_pieces.h"

#include <array>
#include <cmath>

namespace boughwork {
namespace {

using Sides = std::array<double, 3>;

/// Of one pair of kinds, from small to large.
struct Sizes {
    Kind by_sides;
    Kind by_angles;
    std::array<Sides, 3> sides;
};

const double root_2 = std::sqrt(2.0);

std::vector<ReadyPiece> cut(const std::vector<Sizes>& all, Unit unit) {
    std::vector<ReadyPiece> pieces;
    for (const Sizes& sizes : all)
        for (std::size_t i = 0; i < 3; ++i) {
            ReadyPiece piece{sizes.by_sides, sizes.by_angles, static_cast<Size>(i), {}};
            for (std::size_t side = 0; side < 3; ++side)
                piece.triangle.sides[side] = length_from_mm(sizes.sides[i][side] * to_mm(length_of(unit)));
            pieces.push_back(piece);
        }
    return pieces;
}

std::vector<ReadyPiece> in_cm() {
    using enum Kind;
    return cut({{equilateral, acute, {{{5, 5, 5}, {8, 8, 8}, {11, 11, 11}}}},
                {isosceles, acute, {{{4, 5, 5}, {8, 7, 7}, {8, 12, 12}}}},
                {isosceles, right, {{{5 * root_2, 5, 5}, {7 * root_2, 7, 7}, {12 * root_2, 12, 12}}}},
                {isosceles, obtuse, {{{6, 4, 4}, {10, 6, 6}, {13, 8, 8}}}},
                {scalene, acute, {{{6, 5, 4}, {9, 8, 7}, {13, 11, 10}}}},
                {scalene, right, {{{5, 4, 3}, {10, 8, 6}, {13, 12, 5}}}},
                {scalene, obtuse, {{{6, 4, 3}, {10, 7, 5}, {13, 9, 7}}}}},
               Unit::cm);
}

std::vector<ReadyPiece> in_inches() {
    using enum Kind;
    return cut({{equilateral, acute, {{{2, 2, 2}, {3, 3, 3}, {5, 5, 5}}}},
                {isosceles, acute, {{{2, 3, 3}, {5, 4, 4}, {4, 5, 5}}}},
                {isosceles, right, {{{2 * root_2, 2, 2}, {4 * root_2, 4, 4}, {5 * root_2, 5, 5}}}},
                {isosceles, obtuse, {{{3, 2, 2}, {5, 3, 3}, {7, 4, 4}}}},
                {scalene, acute, {{{6, 5, 4}, {7, 6, 5}, {8, 7, 6}}}},
                {scalene, right, {{{5, 4, 3}, {std::sqrt(34.0), 5, 3}, {10, 8, 6}}}},
                {scalene, obtuse, {{{4, 3, 2}, {6, 4, 3}, {7, 5, 4}}}}},
               Unit::in);
}

}  // namespace

const std::vector<ReadyPiece>& ready_pieces(Unit unit) {
    static const std::vector<ReadyPiece> metric = in_cm();
    static const std::vector<ReadyPiece> inches = in_inches();
    return unit == Unit::in ? inches : metric;
}

}  // namespace boughwork
