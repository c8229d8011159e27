// SPDX-License-Identifier: MIT
#pragma once
// Pairs of convex outlines that stand to each other in one of the ways that are hard to judge.

#include <array>
#include <random>

#include "engine/geometry/polygon.h"

namespace boughwork::oracles {

enum class Family {
    random,
    flush_along_whole_sides,
    flush_along_part_of_a_side,
    corner_to_corner,
    corner_to_side,
    contained,
    equal,
    needles,
    nearly_parallel,
    at_the_tolerance,
    whole_numbers,
    far_from_the_origin,  ///< Any of the others, shifted.
};

struct Pair {
    Polygon a;
    Polygon b;
    double tolerance_mm = 1;
};

using Dice = std::mt19937_64;

/// Both outlines counter-clockwise and strictly convex, of 3 to 12 corners.
Pair make_pair(Family family, Dice& dice);

}  // namespace boughwork::oracles
