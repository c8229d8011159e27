// SPDX-License-Identifier: MIT
#pragma once
// The title, the plans of the file with their scores, and what concerns the file as a whole.

#include <optional>
#include <string>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class TopBar {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
    /// The menu that is open, above the page.
    void draw_menu(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
    bool menu_open() const { return menu_.has_value(); }
    void close_menu() { menu_.reset(); }

private:
    void draw_title(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);
    void draw_pages(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);
    void draw_tabs(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

    enum class Menu { plan, file };
    std::optional<Menu> menu_;
    PixelBox menu_below_;                   // what the menu hangs from
    std::size_t first_tab_ = 0;             // of those that fit
    std::string shown_plan_;                // the current plan was brought into view for
    std::optional<std::string> new_title_;  // while it is typed
};

}  // namespace boughwork
