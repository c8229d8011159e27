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
    const int number = piece.posed.side_numbers[i];
    const auto corner = static_cast<std::size_t>(number) - 1;
    const std::size_t next = (corner + 1) % piece.posed.outline.size();
    return {squared_distance(piece.piece->shape, corner, next), support, number};
}

void keep_better(std::optional<Way>& best, const std::optional<Way>& way) {
    if (way && (!best || better(*way, *best))) best = way;
}

/// The best way in which the piece lies on an edge that supports it as `support` tells.
std::optional<Way> way_on(const HungPiece& piece, const Segment& edge, const Support& support, double tolerance_mm) {
    std::optional<Way> best;
    for (std::size_t i = 0; i < piece.posed.outline.size(); ++i) {
        if (!can_hang_by(piece, i)) continue;
        const auto place = in_line(side(piece.posed.outline, i), edge, tolerance_mm);
        if (place && lies_on(*place, tolerance_mm)) keep_better(best, way_by(piece, i, support));
    }
    return best;
}

std::optional<Way> way_from_branches(const Arrangement& a, const HungPiece& piece) {
    std::optional<Way> best;
    const double t = a.tolerance_mm();
    for (const BranchShape& branch : a.tree_shape.branches)
        for (const Span& span : branch.spans)
            if (within_gap(piece.box, bounds({span.edge.from, span.edge.to}), t + hair_mm))
                keep_better(best, way_on(piece, span.edge, {.branch = span.branch, .span = span.number}, t));
    return best;
}

/// From a piece that hangs from `branch` itself or by a chain.
std::optional<Way> way_from_piece(const HungPiece& piece, const HungPiece& holder, std::size_t branch,
                                  double tolerance_mm) {
    std::optional<Way> best;
    for (std::size_t k = 0; k < holder.posed.outline.size(); ++k) {
        const Segment edge = side(holder.posed.outline, k);
        if (!points_down_or_sideways(outward_normal(edge))) continue;
        const Support support{.branch = branch, .piece = holder.piece->number, .side = holder.posed.side_numbers[k]};
        keep_better(best, way_on(piece, edge, support, tolerance_mm));
    }
    return best;
}

}  // namespace

std::vector<Hanging> find_hanging(const Arrangement& a) {
    std::vector<Hanging> hanging(a.pieces.size());
    std::vector<std::size_t> layer;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        if (const auto way = way_from_branches(a, a.pieces[i])) {
            hanging[i] = {way->support, way->side, 1, {}};
            layer.push_back(i);
        }
    }
    std::vector<std::optional<Way>> best(a.pieces.size());
    for (int depth = 2; !layer.empty(); ++depth) {
        // Layer by layer, so that every parent one depth up is known before the next begins.
        std::vector<std::size_t> next;
        for (const std::size_t holder : layer) {
            for (const std::size_t i : a.neighbours[holder]) {
                if (hanging[i].support) continue;
                const auto way =
                    way_from_piece(a.pieces[i], a.pieces[holder], hanging[holder].support->branch, a.tolerance_mm());
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
