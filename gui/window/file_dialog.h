// SPDX-License-Identifier: MIT
#pragma once
// Which file to open, or to save to, or to take a challenge from: a folder's list, and a field for the name. In the
// window itself, so that it is the same on every machine.

#include <string>

#include "gui/window/commands.h"
#include "gui/window/folder_list.h"
#include "gui/window/layout.h"

namespace boughwork {

class FileDialog {
public:
    enum class For { open, save, save_for_class, take_challenge, save_table, take_in_table };

    /// Begins in the open file's folder.
    FileDialog(const Session& session, For purpose);

    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    /// What is done with the file of that name.
    Command with(const std::string& name) const;
    bool reads() const {
        return purpose_ == For::open || purpose_ == For::take_challenge || purpose_ == For::take_in_table;
    }
    bool is_about_tables() const { return purpose_ == For::save_table || purpose_ == For::take_in_table; }

    For purpose_;
    FolderList list_;
    std::string name_;
};

}  // namespace boughwork
