// SPDX-License-Identifier: MIT
#pragma once
// The one place where the referee speaks: what went wrong, what a picture card says, or one finding
// after the other, with what can be done about it.

#include <string>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_referee(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

/// What is said now.
std::string referee_words(const Session& session);

}  // namespace boughwork
