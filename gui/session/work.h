// SPDX-License-Identifier: MIT
#pragma once
// What the keys for pieces and branches ask for: whatever a hand can do by dragging, in steps. Pure
// functions; `report` is the verdict on the scene.

#include <vector>

#include "gui/session/command.h"
#include "rules/report.h"

namespace boughwork {

/// Of the first of the pieces, which brings its chain along. The others are gathered with it: they are moved and taken
/// down together, and left alone by what turns a piece. Empty: it cannot be done (no branch to hang from).
std::vector<Edit> work_on_piece(const Scene& scene, const Report& report, const std::vector<PieceNumber>& pieces,
                                Action action);

/// The pieces moved along what the first hangs from, as far as there is room. Empty: there is none.
std::vector<Edit> slid(const Scene& scene, const Report& report, const std::vector<PieceNumber>& pieces,
                       bool to_the_right);

/// Of a bend, a branch or the trunk.
std::vector<Edit> work_on_tree(const Scene& scene, const Report& report, const Picked& what, Action action);

/// A piece of the same shape, or of its mirror image if that is another one, for the envelope.
Wishes copied(const Scene& scene, PieceNumber piece);
Wishes copied_mirrored(const Scene& scene, PieceNumber piece);

/// Another shape under the same number. A hung piece keeps the middle and the line of the side it hangs by.
Wishes reshaped(const Scene& scene, const Report& report, PieceNumber piece, const Shape& shape);

/// What the remedy's move asks for.
std::vector<Edit> put_right(const Plan& plan, const Remedy& remedy);

}  // namespace boughwork
