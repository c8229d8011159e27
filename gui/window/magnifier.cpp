// SPDX-License-Identifier: MIT
#include "gui/window/magnifier.h"

#include <algorithm>

namespace boughwork {
namespace {

/// So much of the window's width, at either edge, shows the page's very end: a hand need not reach the last pixel.
constexpr double edge_part = 0.08;

double following(double pointer, double page, double window) {
    const double edge = edge_part * window;
    const double part = std::clamp((pointer - edge) / (window - 2 * edge), 0.0, 1.0);
    return part * std::max(0.0, page - window);
}

double showing(double corner, double from, double size, double window) {
    const double far_end_shown = std::max(corner, from + size - window);
    return std::min(far_end_shown, from);
}

}  // namespace

Vec2 kept_on_page(Vec2 corner, const PixelBox& page, const PixelBox& window) {
    return {std::clamp(corner.x, 0.0, std::max(0.0, page.width - window.width)),
            std::clamp(corner.y, 0.0, std::max(0.0, page.height - window.height))};
}

Vec2 following_pointer(Vec2 pointer_in_window, const PixelBox& page, const PixelBox& window) {
    return {following(pointer_in_window.x, page.width, window.width),
            following(pointer_in_window.y, page.height, window.height)};
}

Vec2 bringing_into_view(Vec2 corner, const PixelBox& box, const PixelBox& page, const PixelBox& window) {
    return kept_on_page(
        {showing(corner.x, box.x, box.width, window.width), showing(corner.y, box.y, box.height, window.height)}, page,
        window);
}

}  // namespace boughwork
