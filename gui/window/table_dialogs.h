// SPDX-License-Identifier: MIT
#pragma once
// What is read or asked about the data table: every answer that pupils gave, what a CSV brought, and
// whether a file may be replaced.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

void draw_answers_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
void draw_taken_in_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
void draw_replace_table_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
