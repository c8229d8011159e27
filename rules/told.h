// SPDX-License-Identifier: MIT
#pragma once
// Who does the mathematics: what the program says itself, and what it keeps back until a pupil has
// answered or until the lesson is over (Challenge::shown). Whatever shows a kind, a length, a sum or
// points asks here first.

#include "rules/report.h"

namespace boughwork {

enum class Mathematics {
    lengths,  ///< Of sides. Answered: every side was measured by hand, with no slip.
    kinds,    ///< By sides and by angles. Answered: both were.
    sums,     ///< Perimeter, height and area. Answered: the perimeter was.
    points,   ///< Answered: they were.
};

/// Of one piece. What a piece does not have (a hexagon's kinds) is never kept back.
bool is_told(const Scene& scene, Mathematics what, const Piece& piece);

/// Of the whole plan, as of a total: of every piece that hangs in it.
bool is_told(const Scene& scene, Mathematics what, const Plan& plan);

/// Whether a line of the challenge is met, and how many count for it: what counts kinds is told with them.
bool is_told(const Scene& scene, const ChallengeLine& line, const Plan& plan);

}  // namespace boughwork
