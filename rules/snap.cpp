// SPDX-License-Identifier: MIT
#include "rules/snap.h"

#include <algorithm>

#include "engine/geometry/posing.h"
#include "rules/chain.h"
#include "rules/supports.h"

namespace boughwork {
namespace {

/// The plan without the piece and without what hangs from it, which can support it no more.
Plan without_chain(const Plan& plan, const Report& report, PieceNumber piece) {
    const std::vector<PieceNumber> chain = chain_below(report, piece);
    const auto goes = [&](const Hung& hung) {
        return hung.piece == piece || std::binary_search(chain.begin(), chain.end(), hung.piece);
    };
    Plan rest = plan;
    rest.hung.erase(std::remove_if(rest.hung.begin(), rest.hung.end(), goes), rest.hung.end());
    return rest;
}

/// The pose at which side `i` of what the hand holds lies exactly on the edge, its middle as near as
/// can be to where it is now, all of it on the edge (give or take the tolerance).
Snap snap_to(const Pose& in_hand, const HungPiece& held, std::size_t i, const SupportEdge& support) {
    const Segment now = side(held.posed.outline, i);
    const Vec2 along = direction(support.edge);
    const double half = length(now) / 2;
    const double room = length(support.edge);
    const double wanted = dot(0.5 * (now.from + now.to) - support.edge.from, along);
    const double at = room > 2 * half ? std::clamp(wanted, half, room - half) : room / 2;
    const Vec2 middle = support.edge.from + at * along;

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
    const Plan rest = without_chain(plan, report, piece);
    const Arrangement a = arrange(scene, rest);
    const HungPiece held{
        .piece = find_piece(scene, piece), .posed = posed(find_piece(scene, piece)->shape, in_hand), .box = {}};
    std::vector<Snap> places;
    for (const SupportEdge& support : find_supports(a, find_hanging(a))) {
        for (std::size_t i = 0; i < held.posed.outline.size(); ++i) {
            if (!can_hang_by(held, i) || (by_side && held.posed.side_number(i) != *by_side)) continue;
            if (length(side(held.posed.outline, i)) > length(support.edge) + 2 * a.tolerance_mm()) continue;
            const Snap snap = snap_to(in_hand, held, i, support);
            if (snap.moved_mm <= reach_mm) places.push_back(snap);
        }
    }
    std::stable_sort(places.begin(), places.end(),
                     [](const Snap& x, const Snap& y) { return x.moved_mm < y.moved_mm; });
    return places;
}

}  // namespace boughwork
