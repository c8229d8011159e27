// SPDX-License-Identifier: MIT
#include "gui/session/camera.h"

#include <algorithm>

namespace boughwork {
namespace {

Vec2 middle(const PixelBox& view) { return {view.x + view.width / 2, view.y + view.height / 2}; }

double in_zoom_range(double px_per_mm) { return std::clamp(px_per_mm, least_px_per_mm, most_px_per_mm); }

}  // namespace

Vec2 to_px(const Camera& camera, Vec2 place_mm) {
    const Vec2 off = camera.px_per_mm * (place_mm - camera.centre_mm);
    return middle(camera.view) + Vec2{off.x, -off.y};
}

Vec2 to_mm(const Camera& camera, Vec2 place_px) {
    const Vec2 off = (1 / camera.px_per_mm) * (place_px - middle(camera.view));
    return camera.centre_mm + Vec2{off.x, -off.y};
}

Camera showing(const Box& box_mm, const PixelBox& view, double margin_px) {
    // A view narrower than its margins, and a box without width or height, still give a scale.
    const double room_x = std::max(view.width - 2 * margin_px, 1.0);
    const double room_y = std::max(view.height - 2 * margin_px, 1.0);
    const double width = std::max(box_mm.high.x - box_mm.low.x, 1.0);
    const double height = std::max(box_mm.high.y - box_mm.low.y, 1.0);
    return {.centre_mm = 0.5 * (box_mm.low + box_mm.high),
            .px_per_mm = in_zoom_range(std::min(room_x / width, room_y / height)),
            .view = view};
}

Camera zoomed(const Camera& camera, double factor, Vec2 fixed_px) {
    Camera zoomed = camera;
    zoomed.px_per_mm = in_zoom_range(camera.px_per_mm * factor);
    zoomed.centre_mm = camera.centre_mm + (to_mm(camera, fixed_px) - to_mm(zoomed, fixed_px));
    return zoomed;
}

Camera panned(const Camera& camera, Vec2 by_px) {
    Camera panned = camera;
    panned.centre_mm = camera.centre_mm - (1 / camera.px_per_mm) * Vec2{by_px.x, -by_px.y};
    return panned;
}

}  // namespace boughwork
