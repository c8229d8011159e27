// SPDX-License-Identifier: MIT
#pragma once
// Draws the marks of a drawing (engine/drawing/drawing.h) on the screen, as cairo draws them on a page.

#include <vector>

#include "engine/drawing/drawing.h"
#include "gui/window/lettering.h"

namespace boughwork {

void paint(ImDrawList& list, const std::vector<Mark>& marks, Lettering& lettering);

}  // namespace boughwork
