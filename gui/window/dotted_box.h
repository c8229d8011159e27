// SPDX-License-Identifier: MIT
#pragma once
// A dotted frame: here something of the pupils' is wanted.

#include "gui/window/widgets.h"

namespace boughwork {

void draw_dotted_box(const PixelBox& box, Widgets& widgets);

}  // namespace boughwork
