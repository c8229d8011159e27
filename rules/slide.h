// SPDX-License-Identifier: MIT
#pragma once
// A piece that slides along a straight way until it is clear of what it must not touch.

#include <optional>
#include <vector>

#include "rules/arrangement.h"
#include "rules/report.h"

namespace boughwork {

struct Sliding {
    std::size_t piece = 0;                  ///< Its place in the arrangement; it is in its own way nowhere.
    Polygon outline;                        ///< Where it starts.
    std::optional<std::size_t> carried_by;  ///< The branch that it may touch.
    std::vector<std::size_t> family;        ///< The pieces that it may touch: parents and children.
};

/// How far along `way` (unit) until no distance to what the finding is about, or, without a finding,
/// to anything, is below `clear_mm`: the first such place. Absent past `farthest_mm`.
std::optional<double> slide_until_clear(const Arrangement& a, const Sliding& sliding, Vec2 way, double farthest_mm,
                                        double clear_mm, const Finding* of = nullptr);

}  // namespace boughwork
