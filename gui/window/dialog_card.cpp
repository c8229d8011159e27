// SPDX-License-Identifier: MIT
#include "gui/window/dialog_card.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"

namespace boughwork {

DialogCard draw_dialog_card(const Layout& layout, Widgets& widgets, const std::string& title, double width_px,
                            double height_px) {
    const double margin = widgets.px(24);
    const double width = std::min(widgets.px(width_px), layout.page.width - 2 * margin);
    const double height = std::min(widgets.px(height_px), layout.page.height - 2 * margin);
    const PixelBox card{layout.page.x + (layout.page.width - width) / 2,
                        layout.page.y + (layout.page.height - height) / 2, width, height};
    Colour shade = palette::ink;
    shade.alpha = 90;
    widgets.sheet(layout.page, shade, 0);
    widgets.sheet(card, palette::paper, widgets.px(14));
    widgets.outline(card, palette::ink, 2 * widgets.scale(), widgets.px(14));

    const double pad = widgets.px(24);
    const double title_height = widgets.px(56);
    const double foot_height = widgets.px(palette::target_px);
    widgets.write({card.x + pad, card.y + widgets.px(34)}, widgets.fitted(title, Face::large, width - 2 * pad),
                  Face::large, palette::ink);
    const PixelBox foot{card.x + pad, card.y + height - widgets.px(18) - foot_height, width - 2 * pad, foot_height};
    const double top = card.y + title_height;
    return {{card.x + pad, top, width - 2 * pad, foot.y - widgets.px(14) - top}, foot};
}

bool Foot::button(const char* label, Tone tone, bool possible) {
    const std::string words = say(label);
    const double width = widgets_.lettering().width_px(words, Face::body) + widgets_.px(40);
    end_ -= width;
    const bool pressed = widgets_.button(label, words, {end_, box_.y, width, box_.height}, tone, possible);
    end_ -= widgets_.px(10);
    return pressed;
}

void write_problem(const Problem& problem, const PixelBox& box, Widgets& widgets) {
    widgets.write_lines(box, in_words(problem), Face::small, palette::unmet);
}

}  // namespace boughwork
