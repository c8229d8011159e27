// SPDX-License-Identifier: MIT
#pragma once
// Sides and angles are typed, and the triangle is drawn beside them while they are; or two of them, to choose one;
// or the reason why there is none.

#include "gui/session/piece_draft.h"
#include "gui/window/drafted_triangle.h"

namespace boughwork {

/// True when Enter was typed into a field.
bool draw_typed_piece(const Session& session, PieceNumber number, const PixelBox& box, PieceDraft& draft,
                      Widgets& widgets);

}  // namespace boughwork
