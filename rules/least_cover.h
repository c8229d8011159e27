// SPDX-License-Identifier: MIT
#pragma once
// The least costly choice of things whose removal leaves no pair in conflict: a minimum weight
// vertex cover, exact, with the rulebook's order of ties.

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace boughwork {

/// Things are 0 .. costs.size()-1; conflicts are pairs of different things. Least cost; of equals
/// the fewest things; of equals the higher ones, the highest compared first. Ascending.
///
/// Exact as long as the search stays below `most_steps`, which every tangle of a few dozen pieces
/// does; past it the thing in most conflicts is taken, again and again, and the answer may cost more
/// than the least.
std::vector<std::size_t> least_cover(const std::vector<std::int64_t>& costs,
                                     const std::vector<std::pair<std::size_t, std::size_t>>& conflicts,
                                     int most_steps = 200'000);

}  // namespace boughwork
