// SPDX-License-Identifier: MIT
#include "rules/rebuilding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/geometry/posing.h"
#include "engine/limits.h"
#include "rules/arrangement.h"
#include "rules/cutting.h"
#include "rules/hanging.h"
#include "rules/lying.h"

namespace boughwork {
namespace {

/// A hand that finds no good place in so many tries lays the paper exactly.
constexpr int most_tries = 30;

Vec2 half_way(const Segment& s) { return 0.5 * (s.from + s.to); }

/// That side as the outline has it, its outside on the right.
Segment facing(const Shape& shape, const Pose& pose, int side) {
    const Segment s = paper_side(shape, pose, side);
    return pose.flipped ? s : Segment{s.to, s.from};
}

Segment facing(const PosedShape& posed, int number) {
    std::size_t i = 0;
    while (posed.side_number(i) != number) ++i;
    return side(posed.outline, i);
}

/// Turned about a place and shifted; without errors not a bit of it changes.
Pose erring(Pose pose, double turn_ccw_deg, Vec2 about_mm, Vec2 by_mm) {
    if (turn_ccw_deg != 0) pose = turned(pose, turn_ccw_deg, about_mm);
    return shifted(pose, by_mm);
}

/// What hangs from a side goes with it when it comes to lie elsewhere.
Pose going_with(const Pose& pose, const Segment& from, const Segment& to) {
    if (from == to) return pose;
    const Vec2 was = direction(from);
    const Vec2 is = direction(to);
    const double turn_deg = std::atan2(cross(was, is), dot(was, is)) * degrees_per_radian;
    return erring(pose, turn_deg, half_way(from), half_way(to) - half_way(from));
}

/// What a piece is taped to, as the arrangement has it.
struct Edge {
    Segment along;
    std::optional<std::size_t> holder;  ///< Its place in Arrangement::pieces.
    int holder_side = 0;
    int side = 0;  ///< Of the piece itself.
};

Edge edge_that_holds(const Arrangement& a, const Hanging& hanging) {
    const Support& support = *hanging.support;
    if (support.piece) {
        const std::size_t holder = place_of(a, *support.piece);
        return {facing(a.pieces[holder].posed, support.side), holder, support.side, hanging.side};
    }
    const std::vector<Span>& spans = a.tree_shape.branches[support.branch].spans;
    const auto span = std::find_if(spans.begin(), spans.end(), [&](const Span& s) { return s.number == support.span; });
    return {span->edge, {}, 0, hanging.side};
}

/// What a piece that does not hang would be taped to all the same: what it runs past the end of, the longest share.
std::optional<Edge> edge_run_past(const Arrangement& a, const std::vector<Hanging>& hanging, std::size_t i) {
    std::optional<Edge> best;
    double longest_mm = 0;
    const HungPiece& piece = a.pieces[i];
    const auto look = [&](const Edge& edge) {
        for (std::size_t k = 0; k < piece.posed.outline.size(); ++k) {
            if (!can_hang_by(piece, k)) continue;
            const auto place = in_line(side(piece.posed.outline, k), edge.along, a.tolerance_mm());
            if (!place || !runs_past(*place, a.tolerance_mm()) || place->shared_mm <= longest_mm) continue;
            longest_mm = place->shared_mm;
            best = edge;
            best->side = piece.posed.side_number(k);
        }
    };
    for (const BranchShape& branch : a.tree_shape.branches)
        for (const Span& span : branch.spans) look({span.edge, {}, 0, 0});
    for (const ClosePairs::Neighbour& near : a.close_pairs.of(i)) {
        if (!hanging[near.place].support) continue;
        const PosedShape& holder = a.pieces[near.place].posed;
        for (std::size_t k = 0; k < holder.outline.size(); ++k)
            look({side(holder.outline, k), near.place, holder.side_number(k), 0});
    }
    return best;
}

}  // namespace

Rebuilding::Rebuilding(const Scene& scene, const Plan& plan) : plan_(plan) {
    scene_.challenge = scene.challenge;
    scene_.pieces = scene.pieces;
    scene_.hands = scene.hands;
    plan_work();
}

void Rebuilding::plan_work() {
    const Arrangement a = arrange(scene_, plan_);
    const std::vector<Hanging> hanging = find_hanging(a);
    std::vector<std::size_t> order(a.pieces.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto depth = [&](std::size_t i) {
        return hanging[i].support ? hanging[i].depth : std::numeric_limits<int>::max();
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t x, std::size_t y) { return depth(x) < depth(y); });

    std::vector<std::size_t> turn_of(order.size());
    for (const std::size_t i : order) {
        turn_of[i] = work_.size();
        Work work;
        const auto number_is = [&](PieceNumber n) { return n == a.number(i); };
        while (!number_is(scene_.pieces[work.made].number)) ++work.made;
        while (!number_is(plan_.hung[work.hung].piece)) ++work.hung;
        work.shape = scene_.pieces[work.made].shape;
        work.pose = plan_.hung[work.hung].pose;
        const auto edge = hanging[i].support ? edge_that_holds(a, hanging[i]) : edge_run_past(a, hanging, i);
        work.held_side = edge ? edge->side : uppermost_side(work.shape, work.pose);
        if (edge) {
            work.taped = Taped{edge->along, {}, edge->holder_side};
            if (edge->holder) work.taped->piece = turn_of[*edge->holder];
        }
        work_.push_back(std::move(work));
    }
}

void Rebuilding::build(int number) {
    for (const Work& work : work_) {
        Piece& piece = scene_.pieces[work.made];
        HandErrors errors(scene_.hands.seed, number, piece.number.value);
        piece.shape = cut(work.shape, scene_.hands.cut_mm, errors);
        Pose pose = work.pose;
        if (piece.shape != work.shape) {
            const Segment held = paper_side(work.shape, pose, work.held_side);
            pose = posed_by(piece.shape, work.held_side, pose.flipped, half_way(held), direction(held));
        }
        if (!work.taped) {
            pose = put(piece.shape, pose, work, errors);
        } else {
            Segment along = work.taped->along;
            if (work.taped->piece) {
                const Work& holder = work_[*work.taped->piece];
                along = facing(scene_.pieces[holder.made].shape, plan_.hung[holder.hung].pose, work.taped->side);
                pose = going_with(pose, work.taped->along, along);
            }
            pose = tape(piece.shape, pose, work, along, errors);
        }
        // Where a file could not say it, it stays as planned.
        plan_.hung[work.hung].pose = within_limits(pose.at_mm) ? pose : work.pose;
    }
}

Pose Rebuilding::tape(const Shape& paper, const Pose& pose, const Work& work, const Segment& along,
                      HandErrors& errors) const {
    const Hands& hands = scene_.hands;
    const Segment held = facing(paper, pose, work.held_side);
    const Vec2 middle = half_way(held);
    const Vec2 way_along = direction(along);
    const Vec2 slip = errors.mm(hands.place_mm) * way_along;
    for (int tries = 0; tries < most_tries; ++tries) {
        const Vec2 by_mm = slip + errors.mm(hands.place_mm) * outward_normal(along);
        const double turn_deg = errors.deg(hands.turn_deg);
        const Vec2 half = turned_ccw(held.to - middle, turn_deg / degrees_per_radian);
        const Segment lies{middle - half + by_mm, middle + half + by_mm};
        if (in_line(lies, along, scene_.challenge.tolerance_mm)) return erring(pose, turn_deg, middle, by_mm);
    }
    return shifted(pose, slip);
}

Pose Rebuilding::put(const Shape& paper, const Pose& pose, const Work& work, HandErrors& errors) const {
    const Hands& hands = scene_.hands;
    const double x_mm = errors.mm(hands.place_mm);
    const double y_mm = errors.mm(hands.place_mm);
    return erring(pose, errors.deg(hands.turn_deg), half_way(paper_side(paper, pose, work.held_side)), {x_mm, y_mm});
}

}  // namespace boughwork
