// SPDX-License-Identifier: MIT
#pragma once
// The dialog that is only read: all keys.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

/// Made from the command table.
void draw_help_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
