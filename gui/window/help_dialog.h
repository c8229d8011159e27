// SPDX-License-Identifier: MIT
#pragma once
// The help page: every row of the command table with its key, to be read and to be pressed, so that all
// that can be done is within reach of Tab, of a finger, and of who forgot the key.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_help_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
