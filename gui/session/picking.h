// SPDX-License-Identifier: MIT
#pragma once
// What lies under the pointer. Pure functions of the scene; a finger's reach is passed in.

#include <cstddef>
#include <optional>
#include <variant>

#include "engine/scene.h"

namespace boughwork {

struct PickedPiece {
    PieceNumber piece;
    friend bool operator==(const PickedPiece&, const PickedPiece&) = default;
};
/// A point of a branch's path: an end or a bend.
struct PickedBend {
    std::size_t branch = 0;
    std::size_t point = 0;
    friend bool operator==(const PickedBend&, const PickedBend&) = default;
};
struct PickedBranch {
    std::size_t branch = 0;
    friend bool operator==(const PickedBranch&, const PickedBranch&) = default;
};
/// The handle on the trunk's top corner: height and top width.
struct PickedTrunkTop {
    friend bool operator==(const PickedTrunkTop&, const PickedTrunkTop&) = default;
};
/// The handle on the trunk's foot: base width.
struct PickedTrunkFoot {
    friend bool operator==(const PickedTrunkFoot&, const PickedTrunkFoot&) = default;
};
using Picked = std::variant<std::monostate, PickedPiece, PickedBend, PickedBranch, PickedTrunkTop, PickedTrunkFoot>;

/// Pieces win over branches, the last drawn over the first; bends and trunk handles (offered only
/// for `chosen_branch`, and for the trunk when `trunk_chosen`) win over all.
Picked pick(const Scene& scene, Vec2 place_mm, double reach_mm, std::optional<std::size_t> chosen_branch = {},
            bool trunk_chosen = false);

}  // namespace boughwork
