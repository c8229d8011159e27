// SPDX-License-Identifier: MIT
#pragma once
// A piece alone, as on a card in the envelope or in a row of the table.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "gui/session/camera.h"
#include "rules/report.h"

namespace boughwork {

/// The shape's corners in the middle of the box, as large as the box less a margin allows, but no larger than
/// `no_larger_px_per_mm`.
std::vector<Vec2> corners_within(const Shape& shape, const PixelBox& box, double margin_px,
                                 double no_larger_px_per_mm = 1e9);

/// A piece with these corners, its marks and its number, if it has one; a number that has no room in it stands
/// within the box.
std::vector<Mark> piece_drawn(const Shape& shape, const PieceReport& report, std::vector<Vec2> corners_px,
                              const PixelBox& box, double scale);

/// Unturned, with its marks and its number, as large as the box allows but no larger than
/// `no_larger_px_per_mm` (the same for all cards, so that pieces can be compared).
std::vector<Mark> piece_card(const Shape& shape, const PieceReport& report, const PixelBox& box, double scale,
                             double no_larger_px_per_mm = 1e9);

}  // namespace boughwork
