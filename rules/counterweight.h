// SPDX-License-Identifier: MIT
#pragma once
// What to move when a tree tips: one piece, with all that hangs from it, farther towards the other side.

#include <optional>
#include <vector>

#include "engine/scene.h"
#include "engine/settle/tipping.h"

namespace boughwork {

/// A piece that hangs from a branch, and its chain.
struct Load {
    PieceNumber piece;
    double weight_n = 0;
    double at_mm = 0;  ///< The middle of their weight, level.
};

struct Counterweight {
    PieceNumber piece;
    double by_mm = 0;  ///< Towards the side to which the tree does not tip.
    friend bool operator==(const Counterweight&, const Counterweight&) = default;
};

/// The shortest such move, by moments about the base's edge, for a tree whose branches reach from `left_mm` to
/// `right_mm`. Absent when it stands, and when no move of one piece is enough. What the branches then sag otherwise is
/// not reckoned with.
std::optional<Counterweight> counterweight(const Tipping& t, const std::vector<Load>& loads, double left_mm,
                                           double right_mm);

}  // namespace boughwork
