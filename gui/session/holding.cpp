// SPDX-License-Identifier: MIT
#include "gui/session/holding.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/geometry/posing.h"
#include "engine/geometry/shape.h"
#include "gui/session/chain.h"
#include "gui/session/places.h"
#include "gui/session/pulling.h"
#include "gui/session/sliding.h"

namespace boughwork {
namespace {

/// A piece turns by itself no more than this, so that it hangs by the side that is up in the hand; enough for the
/// steep sides of an equilateral triangle.
constexpr double snap_turn_deg = 75;
/// With company it does not turn: only what comes of working with numbers is let pass.
constexpr double snap_turn_with_company_deg = 0.001;
/// A place a millimetre farther away is as good as one that asks for five degrees less.
constexpr double snap_mm_per_degree = 0.2;

const Piece* held_piece(const Scene& scene, const Held& held) {
    const auto* picked = std::get_if<PickedPiece>(&held.what);
    return picked ? find_piece(scene, picked->piece) : nullptr;
}

/// The place to which the hand brings the piece nearest: by how far the middle of the side still has
/// to go, and by how much it has to turn. Not by how far its ends go, else a long piece would have to
/// be turned by hand before it could hang from a sloping branch.
std::optional<Snap> nearest_place(const std::vector<Snap>& places, const Shape& shape, const Pose& in_hand,
                                  double most_turn_deg) {
    const auto middle = [&](const Pose& pose, int side) {
        const Segment line = paper_side(shape, pose, side);
        return 0.5 * (line.from + line.to);
    };
    std::optional<Snap> best;
    double best_cost_mm = 0;
    for (const Snap& snap : places) {
        const double turn_deg = std::abs(std::remainder(snap.pose.turn_ccw_deg - in_hand.turn_ccw_deg, 360.0));
        const double away_mm = distance(middle(in_hand, snap.side), middle(snap.pose, snap.side));
        if (turn_deg > most_turn_deg) continue;
        const double cost_mm = away_mm + turn_deg * snap_mm_per_degree;
        if (best && cost_mm >= best_cost_mm) continue;
        best = snap;
        best_cost_mm = cost_mm;
    }
    return best;
}

/// All that moves with the piece that is held, itself first.
std::vector<PieceNumber> all_moved(const Held& held, PieceNumber piece) {
    std::vector<PieceNumber> pieces = {piece};
    pieces.insert(pieces.end(), held.company.begin(), held.company.end());
    return with_chains(held.before, pieces);
}

/// What letting go of it in that pose asks for.
std::vector<Edit> moved(const Plan& plan, const Held& held, PieceNumber piece, const Pose& pose) {
    if (held.company.empty()) return hung_with_chain(plan, held.before, piece, pose);
    return {MoveTogether{all_moved(held, piece), pose.at_mm - find_hung(plan, piece)->pose.at_mm}};
}

/// Where it would hang, moved along there until everything is clear of it; as it is when that cannot be.
Pose beside_neighbours(const Scene& scene, const Held& held, const Piece& piece) {
    const Snap& ghost = *held.ghost;
    const std::optional<Segment> edge = edge_of(scene, held.before, ghost.support);
    const Result<Scene> hung = apply_all(scene, moved(current_plan(scene), held, piece.number, ghost.pose));
    if (!edge || !hung) return ghost.pose;
    const std::optional<Vec2> move_mm =
        slid_clear(*hung, {all_moved(held, piece.number), ghost.support, ghost.side, *edge});
    return shifted(ghost.pose, move_mm.value_or(Vec2{}));
}

/// Looks for a place to hang. A piece that was not moved at all stays where it hangs.
Held snapped(const Scene& scene, Held held, const Piece& piece, double reach_mm) {
    held.ghost.reset();
    const Plan& plan = current_plan(scene);
    const Hung* hung = find_hung(plan, piece.number);
    if (held.free || !held.on_paper || (hung && hung->pose == held.pose)) return held;
    std::vector<Snap> places = snaps(scene, plan, held.before, piece.number, held.pose, reach_mm, held.by_side);
    const std::vector<PieceNumber> all = all_moved(held, piece.number);
    places.erase(std::remove_if(places.begin(), places.end(),
                                [&](const Snap& snap) {
                                    const std::optional<PieceNumber>& holder = snap.support.piece;
                                    return holder &&
                                           std::find(all.begin(), all.end(), *holder) != all.end();  // it comes along
                                }),
                 places.end());
    held.ghost = nearest_place(places, piece.shape, held.pose,
                               held.company.empty() ? snap_turn_deg : snap_turn_with_company_deg);
    if (held.ghost && held.stops_at_neighbours) held.ghost->pose = beside_neighbours(scene, held, piece);
    return held;
}

int side_in_use(const Held& held, const Shape& shape) {
    if (held.ghost) return held.ghost->side;
    return held.by_side.value_or(uppermost_side(shape, held.pose));
}

}  // namespace

std::optional<Held> grabbed(const Scene& scene, const Report& report, const Picked& what, Vec2 at_mm) {
    if (!is_there(scene, what) || std::holds_alternative<std::monostate>(what) ||
        std::holds_alternative<PickedTrunk>(what))
        return std::nullopt;
    Held held = {.what = what, .grabbed_at_mm = at_mm, .at_mm = at_mm, .before = report};
    if (const Piece* piece = held_piece(scene, held)) {
        const Hung* hung = find_hung(current_plan(scene), piece->number);
        held.pose = hung ? hung->pose : Pose{.at_mm = at_mm - centroid(posed(piece->shape, {}).outline)};
    }
    return held;
}

Held held_at(const Scene& scene, Held held, const HoldAt& hand, double reach_mm) {
    held.pose = shifted(held.pose, hand.at_mm - held.at_mm);
    held.at_mm = hand.at_mm;
    held.free = hand.free;
    held.on_paper = hand.on_paper;
    const Piece* piece = held_piece(scene, held);
    return piece ? snapped(scene, std::move(held), *piece, reach_mm) : held;
}

Held held_by_next_side(const Scene& scene, Held held, double reach_mm) {
    const Piece* piece = held_piece(scene, held);
    if (!piece || !held.company.empty()) return held;
    const int side = side_in_use(held, piece->shape);
    const int next = side_after(piece->shape, side);
    if (held.ghost) {
        held.pose = by_other_side(piece->shape, held.ghost->pose, side, next);
    } else {
        const double turn_deg =
            by_other_side(piece->shape, held.pose, side, next).turn_ccw_deg - held.pose.turn_ccw_deg;
        held.pose = turned(held.pose, turn_deg, held.at_mm);
    }
    held.by_side = next;
    return snapped(scene, std::move(held), *piece, reach_mm);
}

Held held_mirrored(const Scene& scene, Held held, double reach_mm) {
    const Piece* piece = held_piece(scene, held);
    if (!piece || !held.company.empty()) return held;
    const int side = side_in_use(held, piece->shape);
    const Pose& pose = held.ghost ? held.ghost->pose : held.pose;
    const Segment line = paper_side(piece->shape, pose, side);
    const Vec2 through = held.ghost ? 0.5 * (line.from + line.to) : held.at_mm;
    held.pose = mirrored(pose, through, line.to - line.from);
    held.by_side = side;
    return snapped(scene, std::move(held), *piece, reach_mm);
}

std::vector<Edit> wishes_of(const Scene& scene, const Held& held) {
    const Plan& plan = current_plan(scene);
    if (const Piece* piece = held_piece(scene, held)) {
        const Pose& pose = held.ghost ? held.ghost->pose : held.pose;
        const Hung* hung = find_hung(plan, piece->number);
        if (!held.on_paper)
            return hung ? std::vector<Edit>{TakeDown{all_moved(held, piece->number)}} : std::vector<Edit>{};
        if (hung && hung->pose == pose) return {};
        return moved(plan, held, piece->number, pose);
    }
    Vec2 by_mm = held.at_mm - held.grabbed_at_mm;
    if (const auto* bend = std::get_if<PickedBend>(&held.what); bend && !held.free && by_mm != Vec2{}) {
        const Branch& branch = plan.tree.branches[bend->branch];
        const Vec2 from = branch.path_mm[bend->point];
        by_mm = rounded_point(branch, bend->point, from + by_mm, scene.challenge.units) - from;
    }
    return by_mm == Vec2{} ? std::vector<Edit>{} : pulled(scene, held.before, held.what, by_mm);
}

}  // namespace boughwork
