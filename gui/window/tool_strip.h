// SPDX-License-Identifier: MIT
#pragma once
// Below the tree: what can be done with the chosen thing, by buttons what dragging does as well; and
// how near one looks. What has no room waits behind "more".

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class ToolStrip {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    /// From the left end of the box; gives back where they end.
    double draw_actions(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

    std::size_t first_ = 0;  // of those that are shown, where not all have room
};

}  // namespace boughwork
