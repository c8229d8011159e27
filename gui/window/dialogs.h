// SPDX-License-Identifier: MIT
#pragma once
// The dialog that the session asks for, if any, above the page. What is typed into it lives as long
// as it is open.

#include <variant>

#include "gui/window/answer_dialog.h"
#include "gui/window/file_dialog.h"
#include "gui/window/guide_dialog.h"
#include "gui/window/make_a_piece_dialog.h"
#include "gui/window/small_dialogs.h"

namespace boughwork {

class Dialogs {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

    /// An arrow key, y up; true when the dialog has a use for it.
    bool follow_arrow(Vec2 arrow);

private:
    void begin(const Session& session);

    Dialog shown_ = Dialog::none;
    std::variant<std::monostate, MakeAPieceDialog, FileDialog, RenameDialog, AnswerDialog, GuideDialog>
        own_;  // the one that remembers something of its own
};

}  // namespace boughwork
