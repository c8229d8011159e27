// SPDX-License-Identifier: MIT
#pragma once
// Pieces that slide along a straight way, as one: until they are clear of what they must not touch, or until they
// meet it.

#include <optional>
#include <vector>

#include "rules/arrangement.h"
#include "rules/report.h"

namespace boughwork {

struct Sliding {
    std::size_t piece = 0;                  ///< Its place in the arrangement; it is in its own way nowhere.
    Polygon outline;                        ///< Where it starts.
    std::optional<std::size_t> carried_by;  ///< The branch that it may touch.
    std::vector<std::size_t> family;        ///< The pieces that it may touch: parents, children, what slides along.
};

/// How far along `way` (unit) until no distance to what the finding is about, or, without a finding,
/// to anything, is below `clear_mm`: the first such place. Absent past `farthest_mm`.
std::optional<double> slide_until_clear(const Arrangement& a, const std::vector<Sliding>& together, Vec2 way,
                                        double farthest_mm, double clear_mm, const Finding* of = nullptr);

/// From a clear place: how far along `way` (unit) until a distance to anything would be below `clear_mm`; at most
/// `farthest_mm`.
double slide_while_clear(const Arrangement& a, const std::vector<Sliding>& together, Vec2 way, double farthest_mm,
                         double clear_mm);

}  // namespace boughwork
