// SPDX-License-Identifier: MIT
#pragma once
// A folder's plan files (or tables) and folders as a list, and the way up. In the window itself, so that it is the same
// on every machine.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gui/session/session.h"
#include "gui/window/layout.h"
#include "gui/window/widgets.h"

namespace boughwork {

class FolderList {
public:
    /// Of the files, those that end so.
    FolderList(const Session& session, const std::string& folder, std::string ending = ".json")
        : ending_(std::move(ending)) {
        enter(session, folder);
    }

    /// Gives back the name of a file that was pressed. `chosen` is marked.
    std::optional<std::string> draw(const Session& session, const PixelBox& box, const std::string& chosen,
                                    Widgets& widgets);

    /// The name as typed, within the folder that is shown unless it says otherwise.
    std::string path_of(const std::string& name) const;

private:
    void enter(const Session& session, const std::string& folder);
    std::optional<std::string> draw_entries(const Session& session, const PixelBox& box, const std::string& chosen,
                                            Widgets& widgets);

    std::string ending_;
    std::string folder_;
    Result<std::vector<Files::Entry>> entries_ = std::vector<Files::Entry>{};
};

/// The folder that the open file lies in, or where the program stands.
std::string folder_of_open_file(const Session& session);

}  // namespace boughwork
