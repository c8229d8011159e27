// SPDX-License-Identifier: MIT
#pragma once
// What the panels ask for in a frame, performed at its end.

#include <vector>

#include "engine/words/say.h"
#include "gui/session/command.h"
#include "gui/session/session.h"
#include "gui/window/widgets.h"

namespace boughwork {

using Commands = std::vector<Command>;

/// A button for a row of the command table, labelled by its name, and saying it or `words`.
inline void command_button(const Session& session, Widgets& widgets, Commands& commands, Action action,
                           const PixelBox& box, const std::string& words = {}, Tone tone = Tone::quiet) {
    const CommandRow& row = row_of(action);
    if (widgets.button(row.name, words.empty() ? say(row.name) : words, box, tone, row.possible(session)))
        commands.push_back(Press{action});
}

}  // namespace boughwork
