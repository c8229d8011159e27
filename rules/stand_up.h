// SPDX-License-Identifier: MIT
#pragma once
// A plan as a tree that is stood up: its branches as rods, its pieces as sheets of paper with a weight; and back, a
// plan in which everything is where gravity has brought it.

#include <cstddef>
#include <vector>

#include "engine/settle/free_stretches.h"
#include "engine/settle/standing_tree.h"
#include "engine/settle/tipping.h"
#include "rules/arrangement.h"
#include "rules/counterweight.h"
#include "rules/holding.h"

namespace boughwork {

/// One rod of the StandingTree: a free stretch of a branch.
struct StoodRod {
    std::size_t branch = 0;
    FreeStretch stretch;
};

struct StoodUp {
    StandingTree standing;
    std::vector<StoodRod> rods;       ///< One for each of `standing.rods`.
    std::vector<std::size_t> pieces;  ///< For each of `standing.sheets` its place in Arrangement::pieces.
};

/// A cone's is that of its net, without a bottom.
double paper_area_mm2(const Shape& shape);

StoodUp stand_up(const Scene& scene, const Plan& plan, const Arrangement& a, const std::vector<Holding>& holding);

/// The plan with the branches bent and the pieces moved; nothing else of it changes.
Plan moved_plan(const Plan& plan, const Arrangement& a, const StoodUp& stood, const TreePlaces& now);

/// Everything that has a weight, where it is now.
std::vector<WeightAt> weights(const Plan& plan, const StoodUp& stood, const TreePlaces& now);

/// The pieces that hang from branches, each with its chain, where they are now.
std::vector<Load> loads(const Arrangement& a, const StoodUp& stood, const TreePlaces& now);

}  // namespace boughwork
