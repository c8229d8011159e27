// SPDX-License-Identifier: MIT
#include "rules/arrangement.h"

#include <algorithm>
#include <cassert>
#include <utility>

#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

/// What is this near may matter, in tolerances: a side lies on a support even if its corner is past
/// the support's end by one, and off its line by one.
constexpr double near = 1.5;

std::vector<const Polygon*> outlines(const std::vector<HungPiece>& pieces) {
    std::vector<const Polygon*> list;
    list.reserve(pieces.size());
    for (const HungPiece& piece : pieces) list.push_back(&piece.posed.outline);
    return list;
}

/// Looks at what the run meets of the pieces that `for_each_piece` names.
template <class ForEachPiece>
void add_contacts(std::vector<BranchContact>& contacts, std::size_t branch, const Polygon& run,
                  const ClosePairs& pieces, double tolerance_mm, ForEachPiece for_each_piece) {
    ConvexSet wood;
    wood.add(run);
    for_each_piece([&](std::size_t i) {
        const auto how = contact_within(tolerance_mm, wood[0], pieces.outlines()[i], tolerance_mm);
        if (how && *how != Contact::apart) contacts.push_back({i, branch, *how});
    });
}

std::vector<BranchContact> contacts_of(const TreeShape& tree, const ClosePairs& pieces, double tolerance_mm) {
    std::vector<BranchContact> contacts;
    contacts.reserve(pieces.outlines().size());
    for (std::size_t b = 0; b < tree.branches.size(); ++b)
        for (const Polygon& run : tree.branches[b].runs)
            add_contacts(contacts, b, run, pieces, tolerance_mm,
                         [&](auto look) { pieces.grid().for_each_near(bounds(run), look); });
    return contacts;
}

}  // namespace

std::vector<HungPiece> laid_out(const Scene& scene, const Plan& plan) {
    std::vector<const Piece*> made;
    made.reserve(scene.pieces.size());
    for (const Piece& piece : scene.pieces) made.push_back(&piece);
    std::sort(made.begin(), made.end(), [](const Piece* x, const Piece* y) { return x->number < y->number; });
    std::vector<const Hung*> hung;
    hung.reserve(plan.hung.size());
    for (const Hung& h : plan.hung) hung.push_back(&h);
    std::sort(hung.begin(), hung.end(), [](const Hung* x, const Hung* y) { return x->piece < y->piece; });

    std::vector<HungPiece> pieces;
    pieces.reserve(hung.size());
    auto piece = made.begin();
    for (const Hung* h : hung) {
        while (piece != made.end() && (*piece)->number < h->piece) ++piece;
        assert(piece != made.end() && (*piece)->number == h->piece);
        HungPiece laid{.piece = *piece, .posed = posed((*piece)->shape, h->pose), .box = {}};
        laid.box = bounds(laid.posed.outline);
        pieces.push_back(std::move(laid));
    }
    return pieces;
}

Arrangement arrange(const Scene& scene, const Plan& plan) {
    const double t = scene.challenge.tolerance_mm;
    std::vector<HungPiece> pieces = laid_out(scene, plan);
    ClosePairs close_pairs(outlines(pieces), t, near * t);
    TreeShape tree_shape = shape_of(plan.tree, t);
    std::vector<BranchContact> branch_contacts = contacts_of(tree_shape, close_pairs, t);
    return {.challenge = &scene.challenge,
            .tree = &plan.tree,
            .tree_shape = std::move(tree_shape),
            .pieces = std::move(pieces),
            .close_pairs = std::move(close_pairs),
            .branch_contacts = std::move(branch_contacts)};
}

void move_piece(Arrangement& a, std::size_t i, const Pose& pose) {
    HungPiece& piece = a.pieces[i];
    piece.posed = posed(piece.piece->shape, pose);
    piece.box = bounds(piece.posed.outline);
    a.close_pairs.move(i, piece.posed.outline);

    std::vector<BranchContact>& contacts = a.branch_contacts;
    const auto its_own = [i](const BranchContact& c) { return c.piece == i; };
    contacts.erase(std::remove_if(contacts.begin(), contacts.end(), its_own), contacts.end());
    const double t = a.tolerance_mm();
    for (std::size_t b = 0; b < a.tree_shape.branches.size(); ++b)
        for (const Polygon& run : a.tree_shape.branches[b].runs)
            if (within_gap(bounds(run), piece.box, t + hair_mm))
                add_contacts(contacts, b, run, a.close_pairs, t, [i](auto look) { look(i); });
}

bool can_hang_by(const HungPiece& piece, std::size_t i) {
    return static_cast<std::size_t>(piece.posed.side_number(i)) <= hanging_sides(piece.piece->shape);
}

std::size_t place_of(const Arrangement& a, PieceNumber number) {
    const auto at = std::lower_bound(a.pieces.begin(), a.pieces.end(), number,
                                     [](const HungPiece& p, PieceNumber n) { return p.piece->number < n; });
    return static_cast<std::size_t>(at - a.pieces.begin());
}

}  // namespace boughwork
