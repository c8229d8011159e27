// SPDX-License-Identifier: MIT
#pragma once
// What the keys for pieces and branches ask for: whatever a hand can do by dragging, in steps. Pure
// functions; `report` is the verdict on the scene.

#include <vector>

#include "gui/session/command.h"
#include "rules/report.h"

namespace boughwork {

/// Of a piece, which brings its chain along. Empty: it cannot be done (no branch to hang from).
std::vector<Edit> work_on_piece(const Scene& scene, const Report& report, PieceNumber piece, Action action);

/// Of a bend, a branch or the trunk.
std::vector<Edit> work_on_tree(const Scene& scene, const Report& report, const Picked& what, Action action);

/// Back into the envelope, with what hangs from it.
TakeDown taken_down(const Report& report, PieceNumber piece);

/// A piece of the same shape, or of its mirror image if that is another one, for the envelope.
Wishes copied(const Scene& scene, PieceNumber piece);
Wishes copied_mirrored(const Scene& scene, PieceNumber piece);

/// Another shape under the same number. A hung piece keeps the middle and the line of the side it hangs by.
Wishes reshaped(const Scene& scene, const Report& report, PieceNumber piece, const Shape& shape);

/// What the remedy's move asks for.
std::vector<Edit> put_right(const Plan& plan, const Remedy& remedy);

}  // namespace boughwork
