// SPDX-License-Identifier: MIT
#pragma once
// Pieces that slide along what holds them and stop at their neighbours. How near is near enough is the referee's word.

#include <optional>
#include <vector>

#include "rules/report.h"

namespace boughwork {

/// What slides, as one.
struct Slide {
    std::vector<PieceNumber> pieces;  ///< Hung. The first leads; the others ride along.
    Support support;                  ///< What the first hangs from ...
    int side = 1;                     ///< ... and by which side.
    Segment edge;                     ///< Along it.
};

/// From where they are in the scene's current plan, along `way` (a unit vector along the edge): on to the next thing
/// in their way or to the end of the edge; if something is in their way already, on until they are clear of it.
/// Absent when there is no such place. Gives back the move.
std::optional<Vec2> slid_on(const Scene& scene, const Slide& slide, Vec2 way);

/// The least move along the edge after which they are clear of everything; zero when they are. Absent: there is none.
std::optional<Vec2> slid_clear(const Scene& scene, const Slide& slide);

}  // namespace boughwork
