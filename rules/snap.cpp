// SPDX-License-Identifier: MIT
#include "rules/snap.h"

#include <algorithm>

#include "engine/geometry/posing.h"
#include "rules/arrangement.h"
#include "rules/chain.h"
#include "rules/supports.h"

namespace boughwork {
namespace {

/// The pose at which side `i` of what the hand holds lies exactly on the edge, its middle as near as
/// can be to where it is now, all of it on the edge (give or take the tolerance); absent when the
/// middle is farther away than `reach_mm`.
std::optional<Snap> snap_to(const Pose& in_hand, const HungPiece& held, std::size_t i, const SupportEdge& support,
                            double reach_mm) {
    const Segment now = side(held.posed.outline, i);
    const Vec2 along = direction(support.edge);
    const double half = length(now) / 2;
    const double room = length(support.edge);
    const Vec2 middle_now = 0.5 * (now.from + now.to);
    const double wanted = dot(middle_now - support.edge.from, along);
    const double at = room > 2 * half ? std::clamp(wanted, half, room - half) : room / 2;
    const Vec2 middle = support.edge.from + at * along;
    if (distance(middle_now, middle) > reach_mm) return std::nullopt;

    Snap snap{.pose = {}, .support = support.support, .side = held.posed.side_number(i), .moved_mm = 0};
    // Corners run clockwise, so an unflipped side runs with the edge that holds it.
    snap.pose = posed_by(held.piece->shape, snap.side, in_hand.flipped, middle, in_hand.flipped ? -along : along);
    // The outline runs the other way about, against the edge.
    snap.moved_mm = (distance(now.from, middle + half * along) + distance(now.to, middle - half * along)) / 2;
    return snap;
}

}  // namespace

std::vector<Snap> snaps(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece,
                        const Pose& in_hand, double reach_mm, std::optional<int> by_side) {
    const Piece* made = find_piece(scene, piece);
    const HungPiece held{.piece = made, .posed = posed(made->shape, in_hand), .box = {}};
    const std::vector<PieceNumber> chain = chain_below(report, piece);
    std::vector<Snap> places;
    for (const SupportEdge& support : find_supports(scene, plan, report)) {
        // Neither the piece nor what hangs from it can hold it.
        const std::optional<PieceNumber>& holder = support.support.piece;
        if (holder && (*holder == piece || std::binary_search(chain.begin(), chain.end(), *holder))) continue;
        for (std::size_t i = 0; i < held.posed.outline.size(); ++i) {
            if (!can_hang_by(held, i) || (by_side && held.posed.side_number(i) != *by_side)) continue;
            if (length(side(held.posed.outline, i)) > length(support.edge) + 2 * scene.challenge.tolerance_mm) continue;
            if (const auto snap = snap_to(in_hand, held, i, support, reach_mm)) places.push_back(*snap);
        }
    }
    std::stable_sort(places.begin(), places.end(),
                     [](const Snap& x, const Snap& y) { return x.moved_mm < y.moved_mm; });
    return places;
}

}  // namespace boughwork
