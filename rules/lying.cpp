// SPDX-License-Identifier: MIT
#include "rules/lying.h"

#include <algorithm>
#include <cmath>

#include "engine/geometry/tolerance.h"

namespace boughwork {

std::optional<InLine> in_line(const Segment& side, const Segment& support, double tolerance_mm) {
    const Vec2 along = direction(support);
    // The cheap test first: nearly every pair of segments fails it.
    for (const Vec2 end : {side.from, side.to})
        if (more_than_mm(std::abs(cross(along, end - support.from)), tolerance_mm)) return std::nullopt;
    if (!face_each_other(outward_normal(side), outward_normal(support))) return std::nullopt;
    const double a = dot(along, side.from - support.from);
    const double b = dot(along, side.to - support.from);
    const Interval taken{std::min(a, b), std::max(a, b)};
    const double support_length = length(support);
    return InLine{.shared_mm = intersection(taken, {0, support_length}).size(),
                  .past_from_mm = -taken.low,
                  .past_to_mm = taken.high - support_length};
}

bool lies_on(const InLine& place, double tolerance_mm) {
    return at_most_mm(place.past_from_mm, tolerance_mm) && at_most_mm(place.past_to_mm, tolerance_mm);
}

bool runs_past(const InLine& place, double tolerance_mm) {
    return more_than_mm(place.shared_mm, tolerance_mm) && !lies_on(place, tolerance_mm);
}

}  // namespace boughwork
