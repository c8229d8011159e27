// SPDX-License-Identifier: MIT
#pragma once
// Something that is so or not so: a box with a tick or without, and words beside it.

#include <string>

#include "gui/window/widgets.h"

namespace boughwork {

/// True when it is pressed, anywhere on box or words.
bool tick_box(Widgets& widgets, const std::string& label, const std::string& words, bool ticked, const PixelBox& box);

/// The box alone, `size_px` wide, with its tick.
void draw_tick(Widgets& widgets, Vec2 middle_px, double size_px, bool ticked);

}  // namespace boughwork
