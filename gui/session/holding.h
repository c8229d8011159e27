// SPDX-License-Identifier: MIT
#pragma once
// What a hand does with a piece, a bend, a branch or the trunk, as pure functions of the scene that
// was there when it took hold. Nothing is recorded here.

#include <optional>
#include <vector>

#include "engine/edit.h"
#include "gui/session/command.h"
#include "gui/session/picking.h"
#include "rules/report.h"
#include "rules/snap.h"

namespace boughwork {

/// What a hand holds, and where it took hold.
struct Held {
    Picked what;
    Vec2 grabbed_at_mm;
    Vec2 at_mm;
    Pose pose;                         ///< Of a held piece, in the hand, before it snaps.
    std::optional<Snap> ghost;         ///< Where it would hang; its pose is the preview's.
    std::optional<int> by_side;        ///< Chosen by "next side" while held.
    bool free = false;                 ///< Held apart from every branch by will.
    std::vector<PieceNumber> company;  ///< Hung pieces that go along, without turning.
    bool stops_at_neighbours = false;  ///< Where it would hang, it keeps clear of everything.
    bool on_paper = true;              ///< Off it a piece hangs from nothing: it is back in the envelope.
    Report before;                     ///< The verdict when it was grabbed: what hangs from what.
};

/// How near a hand must bring a piece for it to snap: a thumb's width of paper (common practice, no
/// source), or what a finger's target is on the screen, whichever is larger.
inline constexpr double snap_reach_mm = 25;
inline constexpr double snap_reach_px = 40;

/// Taken hold of, or nothing when it is not there or cannot be held. A piece from the envelope comes
/// with its first side on top, its middle under the hand.
std::optional<Held> grabbed(const Scene& scene, const Report& report, const Picked& what, Vec2 at_mm);

/// The hand is there now. `scene` is the one that was there when it took hold, here and below.
Held held_at(const Scene& scene, Held held, const HoldAt& hand, double reach_mm);
/// A held piece without company by its next side, or as its mirror image; where it would hang if it would, else
/// turned in the hand.
Held held_by_next_side(const Scene& scene, Held held, double reach_mm);
Held held_mirrored(const Scene& scene, Held held, double reach_mm);

/// What letting go here asks for; applied together. Empty: nothing changed.
std::vector<Edit> wishes_of(const Scene& scene, const Held& held);

}  // namespace boughwork
