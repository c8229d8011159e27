// SPDX-License-Identifier: MIT
#include "rules/hanging.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "engine/geometry/tolerance.h"
#include "rules/lying.h"

namespace boughwork {
namespace {

/// One way in which a piece hangs. The best is told: by the longer side of the hanging piece, then
/// from the branch first in the file, then from the lower number (of span, or of piece and side).
struct Way {
    Int128 side_squared = 0;
    Support support;
    int side = 0;
};

bool better(const Way& a, const Way& b) {
    if (a.side_squared != b.side_squared) return a.side_squared > b.side_squared;
    const auto rank = [](const Way& w) {
        const int parent = w.support.piece ? w.support.piece->value : 0;
        return std::tuple(w.support.branch, parent, w.support.span, w.support.side, w.side);
    };
    return rank(a) < rank(b);
}

/// The way by side `i` of the piece's outline.
Way way_by(const HungPiece& piece, std::size_t i, const Support& support) {
    const int number = piece.posed.side_number(i);
    const auto corner = static_cast<std::size_t>(number) - 1;
    const std::size_t next = (corner + 1) % piece.posed.outline.size();
    return {squared_distance(piece.piece->shape, corner, next), support, number};
}

void keep_better(std::optional<Way>& best, const std::optional<Way>& way) {
    if (way && (!best || better(*way, *best))) best = way;
}

/// The best way in which piece `i` lies on an edge that supports it as `support` tells.
std::optional<Way> way_on(const Arrangement& a, std::size_t i, const Segment& edge, Vec2 normal,
                          const Support& support) {
    std::optional<Way> best;
    const HungPiece& piece = a.pieces[i];
    const ConvexView sides = a.close_pairs.outlines()[i];
    for (std::size_t k = 0; k < sides.corners; ++k) {
        // The cheap question first: most sides look another way.
        if (!face_each_other(sides.normal(k), normal) || !can_hang_by(piece, k)) continue;
        const auto place = in_line(side(piece.posed.outline, k), edge, a.tolerance_mm());
        if (place && lies_on(*place, a.tolerance_mm())) keep_better(best, way_by(piece, k, support));
    }
    return best;
}

/// For each piece the best way in which it lies on a branch.
std::vector<std::optional<Way>> ways_from_branches(const Arrangement& a) {
    std::vector<std::optional<Way>> best(a.pieces.size());
    for (const BranchShape& branch : a.tree_shape.branches)
        for (const Span& span : branch.spans)
            a.close_pairs.grid().for_each_near(bounds({span.edge.from, span.edge.to}), [&](std::size_t i) {
                keep_better(best[i], way_on(a, i, span.edge, outward_normal(span.edge),
                                            {.branch = span.branch, .span = span.number}));
            });
    return best;
}

/// From a piece that hangs from `branch` itself or by a chain.
std::optional<Way> way_from_piece(const Arrangement& a, std::size_t i, std::size_t holder, std::size_t branch) {
    std::optional<Way> best;
    const PosedShape& held_by = a.pieces[holder].posed;
    const ConvexView sides = a.close_pairs.outlines()[holder];
    for (std::size_t k = 0; k < sides.corners; ++k) {
        const Vec2 normal = sides.normal(k);
        if (!points_down_or_sideways(normal)) continue;
        const Support support{.branch = branch, .piece = a.number(holder), .side = held_by.side_number(k)};
        keep_better(best, way_on(a, i, side(held_by.outline, k), normal, support));
    }
    return best;
}

}  // namespace

std::vector<Hanging> find_hanging(const Arrangement& a) {
    std::vector<Hanging> hanging(a.pieces.size());
    std::vector<std::size_t> layer;
    std::vector<std::optional<Way>> best = ways_from_branches(a);
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        if (!best[i]) continue;
        hanging[i] = {best[i]->support, best[i]->side, 1, {}};
        layer.push_back(i);
    }
    for (int depth = 2; !layer.empty(); ++depth) {
        // Layer by layer, so that every parent one depth up is known before the next begins.
        std::vector<std::size_t> next;
        for (const std::size_t holder : layer) {
            for (const ClosePairs::Neighbour& near : a.close_pairs.of(holder)) {
                const std::size_t i = near.place;
                if (hanging[i].support) continue;
                const auto way = way_from_piece(a, i, holder, hanging[holder].support->branch);
                if (!way) continue;
                if (!best[i]) next.push_back(i);
                keep_better(best[i], way);
                hanging[i].parents.push_back(holder);
            }
        }
        for (const std::size_t i : next) {
            hanging[i].support = best[i]->support;
            hanging[i].side = best[i]->side;
            hanging[i].depth = depth;
        }
        layer = std::move(next);
    }
    for (Hanging& h : hanging) std::sort(h.parents.begin(), h.parents.end());
    return hanging;
}

}  // namespace boughwork
