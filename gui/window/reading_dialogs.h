// SPDX-License-Identifier: MIT
#pragma once
// The dialogs that are only read: the challenge in words, and all keys.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_challenge_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
/// Made from the command table.
void draw_help_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
