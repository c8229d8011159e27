// SPDX-License-Identifier: MIT
#pragma once
// How a side of a piece lies against a support: an edge of a branch, or a side of another piece
// (rulebook 3). Pure geometry of two segments.

#include <optional>

#include "engine/geometry/interval.h"
#include "engine/geometry/polygon.h"

namespace boughwork {

/// A side that is in line with a support: both its ends within t of the support's line, its outward
/// normal opposite to the support's.
struct InLine {
    double shared_mm = 0;     ///< How much of the side lies beside the support itself.
    double past_from_mm = 0;  ///< How far it sticks out past the support's first end; negative: room left.
    double past_to_mm = 0;    ///< Past its second end.
};

std::optional<InLine> in_line(const Segment& side, const Segment& support, double tolerance_mm);

/// In line, and between the support's ends give or take t.
bool lies_on(const InLine& place, double tolerance_mm);

/// In all but length: it shares more than t, and sticks out past an end by more than t.
bool runs_past(const InLine& place, double tolerance_mm);

}  // namespace boughwork
