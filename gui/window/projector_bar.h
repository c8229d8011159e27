// SPDX-License-Identifier: MIT
#pragma once
// Over the tree on the projector: whose tree it is, which plan, what it scores, and the way back.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_projector_bar(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
