// SPDX-License-Identifier: MIT
#include "gui/window/help_dialog.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

struct Columns {
    double key_px;
    double name_px;
    double help_px;
};

double height_of(const CommandRow& row, const Columns& columns, const Widgets& widgets) {
    const Lettering& lettering = widgets.lettering();
    const double gap = widgets.px(12);
    const std::size_t lines =
        std::max(lettering.lines(say(row.name), Face::small, columns.name_px - gap, 9).words.size(),
                 lettering.lines(say(row.help), Face::small, columns.help_px - gap, 9).words.size());
    return std::max(widgets.px(palette::target_px), static_cast<double>(lines) * lettering.line_px(Face::small) + gap);
}

/// True when it is pressed. What can't be done now can be read all the same.
bool draw_row(const CommandRow& row, const PixelBox& box, const Columns& columns, bool possible, Widgets& widgets) {
    const bool pressed = possible && widgets.area(std::string("do ") + row.name, box).pressed;
    const double gap = widgets.px(12);
    double left = box.x + widgets.px(8);
    const auto write = [&](const std::string& words, double width, Colour colour) {
        const double line = widgets.lettering().line_px(Face::small);
        const auto lines =
            static_cast<double>(widgets.lettering().lines(words, Face::small, width - gap, 9).words.size());
        widgets.write_lines({left, box.y + (box.height - lines * line) / 2, width - gap, (lines + 0.5) * line}, words,
                            Face::small, colour);
        left += width;
    };
    write(key_name(row.keys), columns.key_px, palette::quiet_text);
    write(say(row.name), columns.name_px, possible ? palette::ink : palette::quiet_text);
    write(say(row.help), columns.help_px, possible ? palette::ink : palette::quiet_text);
    widgets.draw({Stroke{{{box.x, box.y + box.height}, {box.x + box.width, box.y + box.height}},
                         palette::squared_line,
                         widgets.scale()}});
    return pressed;
}

}  // namespace

void draw_help_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("Help: what can be done, and its key"), 860, 640);
    PixelBox hint = card.inside;
    hint.height = widgets.lettering().line_px(Face::small) + widgets.px(4);
    widgets.write_lines(hint, say("Press a line to do it. Tab goes from one to the next; Enter presses."), Face::small,
                        palette::quiet_text);
    const PixelBox list{card.inside.x, hint.y + hint.height, card.inside.width, card.inside.height - hint.height};

    const double width = list.width - widgets.px(26);
    Columns columns{widgets.px(130), widgets.px(210), 0};
    columns.help_px = width - columns.key_px - columns.name_px;
    double sum = widgets.px(12);
    for (const CommandRow& row : command_table()) sum += height_of(row, columns, widgets);
    const Vec2 start = widgets.begin_scroll("help words", list, sum);
    PixelBox box{start.x + widgets.px(6), start.y + widgets.px(6), width, 0};
    for (const CommandRow& row : command_table()) {
        box.height = height_of(row, columns, widgets);
        if (draw_row(row, box, columns, row.possible(session), widgets)) {
            commands.push_back(CloseDialog{});
            commands.push_back(Press{row.action});
        }
        box.y += box.height;
    }
    widgets.end_scroll();

    Foot foot(card.foot, widgets);
    if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
    if (foot.button(row_of(Action::other_language).name)) commands.push_back(Press{Action::other_language});
}

}  // namespace boughwork
