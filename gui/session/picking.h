// SPDX-License-Identifier: MIT
#pragma once
// What lies under the pointer. Pure functions of the scene; a finger's reach is passed in.

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

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
/// The trunk as a whole: it can be chosen, which offers its handles, and is not moved.
struct PickedTrunk {
    friend bool operator==(const PickedTrunk&, const PickedTrunk&) = default;
};
using Picked =
    std::variant<std::monostate, PickedPiece, PickedBend, PickedBranch, PickedTrunkTop, PickedTrunkFoot, PickedTrunk>;

/// What lies at the place, or else nearest to it within `reach_mm`. Pieces win over branches and
/// branches over the trunk, the last drawn over the first; bends and trunk handles (offered only
/// for `chosen_branch`, and for the trunk when `trunk_chosen`) win over all.
Picked pick(const Scene& scene, Vec2 place_mm, double reach_mm, std::optional<std::size_t> chosen_branch = {},
            bool trunk_chosen = false);

/// Where the trunk's handles are: its upper and its lower right corner.
Vec2 trunk_top_handle_mm(const Trunk& trunk);
Vec2 trunk_foot_handle_mm(const Trunk& trunk);

/// True when the scene's current plan has it (a piece in the envelope counts); nothing is always there.
bool is_there(const Scene& scene, const Picked& picked);

/// All that can be chosen, in the order in which keys go through it: pieces by number, then each
/// branch and its points, then the trunk and its handles.
std::vector<Picked> all_in_turn(const Scene& scene);

}  // namespace boughwork
