// SPDX-License-Identifier: MIT
#pragma once
// With large letters the page may be larger than the window, which then shows a part of it: the part that follows the
// pointer, as a magnifying glass follows the hand. Pure functions; everything in pixels, y down.

#include "engine/vec.h"
#include "gui/session/camera.h"

namespace boughwork {

/// Where the window's upper left corner lies on the page, kept so that the window stays upon the page.
Vec2 kept_on_page(Vec2 corner, const PixelBox& page, const PixelBox& window);

/// By where the pointer is in the window: at its left edge the page's left end is seen, at its right edge the right
/// end, and so on in between, so that every place of the page can be reached.
Vec2 following_pointer(Vec2 pointer_in_window, const PixelBox& page, const PixelBox& window);

/// Moved no more than is needed to show the box; of a box larger than the window, its upper left part.
Vec2 bringing_into_view(Vec2 corner, const PixelBox& box, const PixelBox& page, const PixelBox& window);

}  // namespace boughwork
