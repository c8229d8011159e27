// SPDX-License-Identifier: MIT
#pragma once
// Another plan file is chosen, and its pieces lie here as cards, to be ticked and brought in.

#include <optional>
#include <string>
#include <vector>

#include "gui/window/folder_list.h"

namespace boughwork {

class OtherFilePanel {
public:
    explicit OtherFilePanel(const Session& session) : list_(session, folder_of_open_file(session)) {}

    void draw(const Session& session, const PixelBox& box, Widgets& widgets);

    /// What would be brought in, in the file's order.
    std::vector<Piece> ticked() const;

private:
    void choose_file(const Session& session, const std::string& name);
    void draw_pieces(const Session& session, const PixelBox& box, Widgets& widgets);

    FolderList list_;
    std::string name_;
    std::optional<Result<std::vector<Piece>>> pieces_;  // once a file was chosen
    std::vector<bool> ticked_;
};

}  // namespace boughwork
