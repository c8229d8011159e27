// SPDX-License-Identifier: MIT
#pragma once
// The tour of the rules: each rule broken and kept, side by side, over one sentence; for the front of
// the room.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_tour(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
