// SPDX-License-Identifier: MIT
#include "rules/slide.h"

#include <algorithm>
#include <limits>

#include "engine/geometry/tolerance.h"
#include "rules/tree_rules.h"

namespace boughwork {
namespace {

/// A slide that has not come free in so many steps is stuck against something nearly parallel.
constexpr int most_steps = 200;

bool holds(const std::vector<std::size_t>& list, std::size_t x) {
    return std::find(list.begin(), list.end(), x) != list.end();
}

bool is_about(const Finding& finding, PieceNumber number) {
    return std::find(finding.pieces.begin(), finding.pieces.end(), number) != finding.pieces.end();
}

/// The signed distance to the nearest of the things that matter.
double nearest_mm(const Arrangement& a, const Sliding& sliding, Vec2 by_mm, double reach_mm, const Finding* of) {
    HungPiece moved = a.pieces[sliding.piece];
    moved.posed.outline = sliding.outline;
    for (Vec2& corner : moved.posed.outline) corner = corner + by_mm;
    moved.box = bounds(moved.posed.outline);
    double nearest = std::numeric_limits<double>::infinity();
    const auto hear = [&](double d) { nearest = std::min(nearest, d); };
    const auto matters = [&](Rule rule) { return !of || of->rule == rule; };

    if (matters(Rule::ground)) hear(moved.box.low.y);
    if (matters(Rule::trunk)) hear(gap(a.tree_shape.trunk, moved.posed.outline).distance_mm);
    for (std::size_t k = 0; k < a.pieces.size(); ++k) {
        if (k == sliding.piece || (of ? !is_about(*of, a.number(k)) : holds(sliding.family, k))) continue;
        if (within_gap(moved.box, a.pieces[k].box, reach_mm)) hear(gap(a.outline(k), moved.posed.outline).distance_mm);
    }
    if (matters(Rule::other_branch))
        for (std::size_t b = 0; b < a.tree_shape.branches.size(); ++b)
            if (sliding.carried_by != b)
                if (const auto near = gap_to_branch(a.tree_shape.branches[b], moved, reach_mm))
                    hear(near->gap.distance_mm);
    return nearest;
}

}  // namespace

std::optional<double> slide_until_clear(const Arrangement& a, const Sliding& sliding, Vec2 way, double farthest_mm,
                                        double clear_mm, const Finding* of) {
    double by = 0;
    for (int step = 0; step < most_steps && by <= farthest_mm; ++step) {
        // No distance grows faster than the piece moves, so a step of what is missing never jumps
        // over the first free place.
        const double missing = clear_mm - nearest_mm(a, sliding, by * way, clear_mm, of);
        if (missing <= hair_mm) return by;
        by += missing;
    }
    return std::nullopt;
}

}  // namespace boughwork
