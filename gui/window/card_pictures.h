// SPDX-License-Identifier: MIT
#pragma once
// The small pictures on picture cards: each shows its rule kept.

#include "engine/drawing/drawing.h"
#include "gui/session/camera.h"
#include "gui/window/picture_cards.h"

namespace boughwork {

std::vector<Mark> card_picture(const PictureCard& card, const PixelBox& box, double scale);

/// A tick or a cross, as strokes, in the middle of the box.
std::vector<Mark> sign(bool met, const PixelBox& box, double scale);

}  // namespace boughwork
