// SPDX-License-Identifier: MIT
#pragma once
// Where everything on the page lies, as a pure function of the window's size and the scale. All in
// pixels of the window, y down.

#include "gui/session/camera.h"

namespace boughwork {

/// The page at scale 1 needs this much room; a smaller window lowers the scale that was asked for.
inline constexpr double least_page_width_px = 1024;
inline constexpr double least_page_height_px = 690;

struct Layout {
    double scale = 1;  ///< What one px of the design is in pixels.
    PixelBox page;
    PixelBox title;
    PixelBox pages;  ///< Which page of the file is seen.
    PixelBox sheet;  ///< All below that row: for every page but the tree's.
    // The tree's page.
    PixelBox tabs;      ///< The plans, and "new plan".
    PixelBox clock;     ///< At the right end of the tabs' row, in the paper's corner.
    PixelBox commands;  ///< Undo, redo, file, help.
    PixelBox paper;     ///< The tree on squared paper, with its rulers.
    PixelBox strip;     ///< Below the paper: what the chosen thing can do, and the zoom.
    PixelBox score;
    PixelBox envelope;
    PixelBox referee;
    PixelBox cards;

    /// A length of the design in pixels, whole.
    double px(double design_px) const;
};

/// At the wanted scale, 1 to 2, as far as the window has room. `larger` times as large as that, the page is larger than
/// the window where it must be (magnifier.h).
Layout layout_of(double width_px, double height_px, double wanted_scale, double larger = 1);

/// The same page for the back of the room: title, plan, clock, tree and referee alone, twice as large as
/// `usual`. Boxes of what is not shown are empty.
Layout projector_layout(const Layout& usual);

/// `box` made smaller by `by` on every side.
PixelBox inset(const PixelBox& box, double by);
bool contains(const PixelBox& box, Vec2 place_px);
Vec2 middle(const PixelBox& box);

}  // namespace boughwork
