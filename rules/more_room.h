// SPDX-License-Identifier: MIT
#pragma once
// What would make a piece hold more often in shaky hands: a little more room along what it hangs from. Tried, not
// reckoned; every try is many builds, so ask when a person wants to know, not on every frame.

#include <optional>
#include <string>
#include <vector>

#include "rules/shaky_hands.h"

namespace boughwork {

struct MoreRoom {
    PieceNumber piece;
    Vec2 move_mm;                    ///< Of the planned place.
    std::vector<PieceNumber> chain;  ///< What hangs from the piece and moves along.
    Chance fails_now;
    Chance fails_then;  ///< In the same builds, by the same errors.
    std::string says;   ///< "Moved 3 mm left, it fails in 1 of 10 builds."
    friend bool operator==(const MoreRoom&, const MoreRoom&) = default;
};

/// For a piece that hangs and fails in more than one of ten of the first `builds` builds: the smallest move tried after
/// which it fails in at most one of ten, else the one that makes it fail least; at best half as often as now, and no
/// other piece fails in more than one of twenty builds more than it does now. Absent when none was found.
std::optional<MoreRoom> more_room(const Scene& scene, const Plan& plan, PieceNumber piece, int builds);

/// Of those pieces of the report that fail most often, since each takes many builds.
std::vector<MoreRoom> more_rooms(const Scene& scene, const Plan& plan, const HandsReport& report);

}  // namespace boughwork
