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
constexpr double least_step_mm = 0.05;

bool holds(const std::vector<std::size_t>& list, std::size_t x) {
    return std::find(list.begin(), list.end(), x) != list.end();
}

bool is_about(const Finding& finding, PieceNumber number) {
    return std::find(finding.pieces.begin(), finding.pieces.end(), number) != finding.pieces.end();
}

/// The signed distance of one of them to the nearest of the things that matter; infinity: none is within reach.
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
                if (const auto near = gap_to_branch(a.tree_shape.branches[b], moved, reach_mm)) hear(near->distance_mm);
    return nearest;
}

double nearest_mm(const Arrangement& a, const std::vector<Sliding>& together, Vec2 by_mm, double reach_mm,
                  const Finding* of) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const Sliding& sliding : together) nearest = std::min(nearest, nearest_mm(a, sliding, by_mm, reach_mm, of));
    return nearest;
}

}  // namespace

std::optional<double> slide_until_clear(const Arrangement& a, const std::vector<Sliding>& together, Vec2 way,
                                        double farthest_mm, double clear_mm, const Finding* of) {
    double by = 0;
    for (int step = 0; step < most_steps && by <= farthest_mm; ++step) {
        // No distance grows faster than the pieces move, so a step of what is missing never jumps
        // over the first free place.
        const double missing = clear_mm - nearest_mm(a, together, by * way, clear_mm, of);
        if (missing <= hair_mm) return by;
        by += missing;
    }
    return std::nullopt;
}

double slide_while_clear(const Arrangement& a, const std::vector<Sliding>& together, Vec2 way, double farthest_mm,
                         double clear_mm) {
    const auto to_spare = [&](double by) {
        const double reach_mm = clear_mm + farthest_mm - by;
        return nearest_mm(a, together, by * way, reach_mm, nullptr) - clear_mm;
    };
    double clear_at = 0;
    while (clear_at < farthest_mm) {
        // Nor does any shrink faster. Where there is next to nothing to spare a small step is risked, since the
        // pieces may be leaving what is near; nothing made of paper is thinner.
        const double next = std::min(clear_at + std::max(to_spare(clear_at), least_step_mm), farthest_mm);
        if (to_spare(next) >= -hair_mm) {
            clear_at = next;
            continue;
        }
        double blocked_at = next;
        while (blocked_at - clear_at > hair_mm) {
            const double middle = (clear_at + blocked_at) / 2;
            (to_spare(middle) >= -hair_mm ? clear_at : blocked_at) = middle;
        }
        return clear_at;
    }
    return clear_at;
}

}  // namespace boughwork
