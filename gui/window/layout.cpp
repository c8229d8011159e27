// SPDX-License-Identifier: MIT
#include "gui/window/layout.h"

#include <algorithm>
#include <cmath>

namespace boughwork {

double Layout::px(double design_px) const { return std::round(design_px * scale); }

Layout layout_of(double width_px, double height_px, double wanted_scale, double larger) {
    Layout layout;
    const double fits = std::min(width_px / least_page_width_px, height_px / least_page_height_px);
    layout.scale = larger * std::clamp(std::min(wanted_scale, fits), 1.0, 2.0);
    if (larger > 1) {
        width_px = std::max(width_px, std::ceil(least_page_width_px * layout.scale));
        height_px = std::max(height_px, std::ceil(least_page_height_px * layout.scale));
    }
    layout.page = {0, 0, width_px, height_px};

    const double margin = layout.px(14);
    const double between = layout.px(8);
    const double side_width = layout.px(250);
    const double left = margin;
    const double left_width = width_px - 2 * margin - side_width - layout.px(16);
    const double side = left + left_width + layout.px(16);

    const double cards_height = layout.px(98);
    const double referee_height = layout.px(76);
    const double cards_top = height_px - layout.px(10) - cards_height;
    const double referee_top = cards_top - between - referee_height;
    layout.referee = {left, referee_top, width_px - 2 * margin, referee_height};
    layout.cards = {left, cards_top, width_px - 2 * margin, cards_height};

    const double top = layout.px(10);
    const double bar_height = layout.px(48);
    const double commands_width = layout.px(310);
    const double title_width = std::clamp(width_px * 0.25 - layout.px(100), layout.px(150), layout.px(300));
    layout.title = {left, top, title_width, bar_height};
    layout.commands = {width_px - margin - commands_width, top, commands_width, bar_height};
    const double pages_left = left + title_width + between;
    layout.pages = {pages_left, top, layout.commands.x - 2 * between - pages_left, bar_height};

    const double below = top + bar_height;
    layout.sheet = {left, below, width_px - 2 * margin, height_px - layout.px(10) - below};
    const double clock_width = layout.px(260);
    layout.tabs = {left, below + between, left_width - clock_width - between, bar_height};
    layout.clock = {left + left_width - clock_width, below + between, clock_width, bar_height - layout.px(4)};
    const double tree_top = layout.tabs.y + bar_height;
    const double strip_height = layout.px(54);
    const double strip_top = referee_top - layout.px(6) - strip_height;
    layout.paper = {left, tree_top, left_width, strip_top - tree_top};
    layout.strip = {left, strip_top, left_width, strip_height};

    const double score_height = layout.px(112);
    const double envelope_top = layout.tabs.y + score_height + layout.px(12);
    layout.score = {side, layout.tabs.y, side_width, score_height};
    layout.envelope = {side, envelope_top, side_width, referee_top - between - envelope_top};
    return layout;
}

Layout projector_layout(const Layout& usual) {
    Layout layout;
    layout.scale = 2 * usual.scale;
    layout.page = usual.page;
    const double margin = layout.px(10);
    const double between = layout.px(6);
    const double width = layout.page.width - 2 * margin;
    const double bar_height = layout.px(44);
    const double back_width = layout.px(100);
    const double clock_width = std::min(layout.px(230), width * 0.35);
    const double top = layout.px(6);
    layout.commands = {margin + width - back_width, top, back_width, bar_height};
    layout.clock = {layout.commands.x - between - clock_width, top, clock_width, bar_height};
    layout.title = {margin, top, layout.clock.x - between - margin, bar_height};

    const double referee_height = layout.px(104);  // two buttons, one below the other
    layout.referee = {margin, layout.page.height - margin - referee_height, width, referee_height};
    const double tree_top = top + bar_height + between;
    layout.paper = {margin, tree_top, width, layout.referee.y - between - tree_top};
    return layout;
}

PixelBox inset(const PixelBox& box, double by) {
    return {box.x + by, box.y + by, std::max(0.0, box.width - 2 * by), std::max(0.0, box.height - 2 * by)};
}

bool contains(const PixelBox& box, Vec2 place_px) {
    return place_px.x >= box.x && place_px.x < box.x + box.width && place_px.y >= box.y &&
           place_px.y < box.y + box.height;
}

Vec2 middle(const PixelBox& box) { return {box.x + box.width / 2, box.y + box.height / 2}; }

}  // namespace boughwork
