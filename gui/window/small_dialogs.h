// SPDX-License-Identifier: MIT
#pragma once
// The dialogs that ask one thing: a plan's name, whether a file may be replaced, what to do with the
// copy that was left behind, whether the seal shall be broken, and whether to end though nothing could be kept.

#include <string>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class RenameDialog {
public:
    explicit RenameDialog(const Session& session) : name_(session.plan().name) {}
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    std::string name_;
};

void draw_replace_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
void draw_break_seal_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
void draw_leave_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
void draw_recover_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

}  // namespace boughwork
