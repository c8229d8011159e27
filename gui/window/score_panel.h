// SPDX-License-Identifier: MIT
#pragma once
// The score of the plan, and how many pieces count, do not, and wait.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_score(const Session& session, const Layout& layout, Widgets& widgets);

}  // namespace boughwork
