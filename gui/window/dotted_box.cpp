// SPDX-License-Identifier: MIT
#include "gui/window/dotted_box.h"

#include <cmath>

#include "gui/picture/palette.h"

namespace boughwork {

void draw_dotted_box(const PixelBox& box, Widgets& widgets) {
    const double pitch = widgets.px(5);
    const double dot = widgets.px(2);
    std::vector<Mark> marks;
    const auto edge = [&](Vec2 from, Vec2 to) {
        const double way = distance(from, to);
        const Vec2 along = (1 / way) * (to - from);
        for (double at = 0; at < way; at += pitch)
            marks.push_back(
                Stroke{{from + at * along, from + std::fmin(at + dot, way) * along}, palette::ink, widgets.scale()});
    };
    const Vec2 low{box.x, box.y};
    const Vec2 high{box.x + box.width, box.y + box.height};
    edge(low, {high.x, low.y});
    edge({high.x, low.y}, high);
    edge(high, {low.x, high.y});
    edge({low.x, high.y}, low);
    widgets.draw(marks);
}

}  // namespace boughwork
