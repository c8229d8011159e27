// SPDX-License-Identifier: MIT
#pragma once
// A piece alone, as on a card in the envelope or in a row of the table.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "gui/session/camera.h"
#include "rules/report.h"

namespace boughwork {

/// Unturned, with its marks and its number, as large as the box allows but no larger than
/// `no_larger_px_per_mm` (the same for all cards, so that pieces can be compared).
std::vector<Mark> piece_card(const Shape& shape, const PieceReport& report, const PixelBox& box, double scale,
                             double no_larger_px_per_mm = 1e9);

}  // namespace boughwork
