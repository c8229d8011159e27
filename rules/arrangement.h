// SPDX-License-Identifier: MIT
#pragma once
// A plan laid out for judging: the tree's shapes, the hung pieces in number order (so that the order
// of the file decides nothing), and what is near what. Rules speak of pieces by their place in
// `pieces`.

#include <cstddef>
#include <vector>

#include "engine/geometry/close_pairs.h"
#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/scene.h"

namespace boughwork {

struct HungPiece {
    const Piece* piece = nullptr;
    PosedShape posed;
    Box box;
};

/// A piece that touches a branch or overlaps it.
struct BranchContact {
    std::size_t piece = 0;
    std::size_t branch = 0;
    Contact contact = Contact::touching;
};

struct Arrangement {
    const Challenge* challenge = nullptr;
    const Tree* tree = nullptr;
    TreeShape tree_shape;
    std::vector<HungPiece> pieces;
    ClosePairs close_pairs;                      ///< Of the pieces' outlines.
    std::vector<BranchContact> branch_contacts;  ///< In no order; one for each run of a branch.

    double tolerance_mm() const { return challenge->tolerance_mm; }
    PieceNumber number(std::size_t i) const { return pieces[i].piece->number; }
    const Polygon& outline(std::size_t i) const { return pieces[i].posed.outline; }
};

/// The hung pieces, in number order. `scene` must outlive them.
std::vector<HungPiece> laid_out(const Scene& scene, const Plan& plan);

/// `scene` and `plan` must outlive it.
Arrangement arrange(const Scene& scene, const Plan& plan);

/// As arrange() would have it with piece `i` in another pose: looks anew at that piece alone.
void move_piece(Arrangement& a, std::size_t i, const Pose& pose);

/// The place in `pieces` of a hung piece.
std::size_t place_of(const Arrangement& a, PieceNumber number);

/// True when side `i` of the outline is one that the piece can hang by.
bool can_hang_by(const HungPiece& piece, std::size_t i);

}  // namespace boughwork
