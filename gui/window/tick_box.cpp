// SPDX-License-Identifier: MIT
#include "gui/window/tick_box.h"

#include "gui/picture/palette.h"

namespace boughwork {

void draw_tick(Widgets& widgets, Vec2 middle, double size, bool ticked) {
    const PixelBox square{middle.x - size / 2, middle.y - size / 2, size, size};
    widgets.sheet(square, palette::paper, widgets.px(4));
    widgets.outline(square, palette::ink, 1.5 * widgets.scale(), widgets.px(4));
    if (!ticked) return;
    widgets.draw({Stroke{.points = {middle + size * Vec2{-0.28, 0.02}, middle + size * Vec2{-0.06, 0.25},
                                    middle + size * Vec2{0.3, -0.26}},
                         .colour = palette::ink,
                         .width = 3 * widgets.scale()}});
}

bool tick_box(Widgets& widgets, const std::string& label, const std::string& words, bool ticked, const PixelBox& box) {
    const Handling touch = widgets.area(label, box);
    const double size = widgets.px(24);
    draw_tick(widgets, {box.x + size / 2 + widgets.px(4), box.y + box.height / 2}, size, ticked);
    const double left = box.x + size + widgets.px(14);
    const double room = box.x + box.width - left;
    const double line = widgets.lettering().line_px(Face::small);
    const auto lines = static_cast<double>(widgets.lettering().lines(words, Face::small, room, 2).words.size());
    widgets.write_lines({left, box.y + (box.height - lines * line) / 2, room, lines * line}, words, Face::small,
                        palette::ink);
    return touch.pressed;
}

}  // namespace boughwork
