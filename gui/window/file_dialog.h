// SPDX-License-Identifier: MIT
#pragma once
// Which file to open, or to save to, or to take a challenge from: a folder's list, and a field for the name. In the
// window itself, so that it is the same on every machine.

#include <string>
#include <vector>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class FileDialog {
public:
    enum class For { open, save, save_for_class, take_challenge };

    /// Begins in the open file's folder.
    FileDialog(const Session& session, For purpose);

    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    void enter(const Session& session, const std::string& folder);
    void draw_list(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);
    /// What is done with the file of that name.
    Command with(const std::string& name) const;
    bool reads() const { return purpose_ == For::open || purpose_ == For::take_challenge; }
    /// The name as typed, within the folder that is shown unless it says otherwise.
    std::string path_of(const std::string& name) const;

    For purpose_;
    std::string folder_;
    std::string name_;
    Result<std::vector<Files::Entry>> entries_ = std::vector<Files::Entry>{};
};

}  // namespace boughwork
