// SPDX-License-Identifier: MIT
#pragma once
// A path cut into the bars that stand for a bending rod.

#include <cstddef>
#include <vector>

#include "engine/vec.h"

namespace boughwork {

double path_length_mm(const std::vector<Vec2>& path_mm);

/// The path with points added, so that no stretch is longer than its whole length over `bars`.
std::vector<Vec2> divided(const std::vector<Vec2>& path_mm, int bars);

/// The stretch, from 0, that is nearest to a place, and how far away that is.
struct NearestBar {
    std::size_t bar = 0;
    double away_mm = 0;
};
NearestBar nearest_bar(const std::vector<Vec2>& nodes_mm, Vec2 place_mm);

}  // namespace boughwork
