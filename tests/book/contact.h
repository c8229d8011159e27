// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 4: contact with the ground, the tree and other pieces, and who is at fault in a pair.

#include <set>

#include "tests/book/hanging.h"

namespace boughwork::book {

/// Two hanging pieces that come too near to each other, not yet decided whose fault it is.
struct Pair {
    Rule rule = Rule::overlap;
    PieceNumber lower;
    PieceNumber higher;
    Real d = 0;
};

/// Ground, trunk, other branch, over a branch; and the pairs of which only one hangs.
void find_contact_with_the_tree(Judgement& judgement);

/// Finds the pairs of which only one hangs, and returns those of which both do.
std::vector<Pair> find_pairs(Judgement& judgement);

/// Costs of the pieces of pairs; a piece that breaks another rule costs nothing.
using Costs = std::map<PieceNumber, std::int64_t>;

/// Rulebook 4, `fewest points`: the least costly choice of pieces that leaves no pair.
std::set<PieceNumber> least_costly(const std::vector<Pair>& pairs, const Costs& costs);

void find_faults(Judgement& judgement, const std::vector<Pair>& pairs, const std::set<PieceNumber>& least_costly);

}  // namespace boughwork::book
