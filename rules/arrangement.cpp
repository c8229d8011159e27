// SPDX-License-Identifier: MIT
#include "rules/arrangement.h"

#include <algorithm>
#include <cassert>
#include <numeric>

#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

/// By a sweep along x: each piece meets only those whose boxes begin before its own ends.
std::vector<std::vector<std::size_t>> near_each_other(const std::vector<HungPiece>& pieces, double gap_mm) {
    std::vector<std::size_t> by_left(pieces.size());
    std::iota(by_left.begin(), by_left.end(), std::size_t{0});
    std::sort(by_left.begin(), by_left.end(),
              [&](std::size_t a, std::size_t b) { return pieces[a].box.low.x < pieces[b].box.low.x; });
    std::vector<std::vector<std::size_t>> neighbours(pieces.size());
    for (std::size_t i = 0; i < by_left.size(); ++i) {
        const std::size_t a = by_left[i];
        for (std::size_t k = i + 1; k < by_left.size(); ++k) {
            const std::size_t b = by_left[k];
            if (pieces[b].box.low.x > pieces[a].box.high.x + gap_mm) break;
            if (!within_gap(pieces[a].box, pieces[b].box, gap_mm)) continue;
            neighbours[a].push_back(b);
            neighbours[b].push_back(a);
        }
    }
    for (std::vector<std::size_t>& list : neighbours) std::sort(list.begin(), list.end());
    return neighbours;
}

}  // namespace

Arrangement arrange(const Scene& scene, const Plan& plan) {
    Arrangement a{.challenge = &scene.challenge,
                  .tree = &plan.tree,
                  .tree_shape = shape_of(plan.tree, scene.challenge.tolerance_mm),
                  .pieces = {},
                  .neighbours = {}};
    std::vector<const Piece*> pieces;
    for (const Piece& piece : scene.pieces) pieces.push_back(&piece);
    std::sort(pieces.begin(), pieces.end(), [](const Piece* x, const Piece* y) { return x->number < y->number; });
    std::vector<const Hung*> hung;
    for (const Hung& h : plan.hung) hung.push_back(&h);
    std::sort(hung.begin(), hung.end(), [](const Hung* x, const Hung* y) { return x->piece < y->piece; });

    auto piece = pieces.begin();
    for (const Hung* h : hung) {
        while (piece != pieces.end() && (*piece)->number < h->piece) ++piece;
        assert(piece != pieces.end() && (*piece)->number == h->piece);
        HungPiece laid{.piece = *piece, .posed = posed((*piece)->shape, h->pose), .box = {}};
        laid.box = bounds(laid.posed.outline);
        a.pieces.push_back(std::move(laid));
    }
    a.neighbours = near_each_other(a.pieces, scene.challenge.tolerance_mm + hair_mm);
    return a;
}

bool can_hang_by(const HungPiece& piece, std::size_t i) {
    return static_cast<std::size_t>(piece.posed.side_numbers[i]) <= hanging_sides(piece.piece->shape);
}

}  // namespace boughwork
