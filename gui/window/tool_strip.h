// SPDX-License-Identifier: MIT
#pragma once
// Below the tree: what can be done with the chosen thing, by buttons what dragging does as well; and
// how near one looks.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_tool_strip(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
