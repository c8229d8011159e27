// SPDX-License-Identifier: MIT
#include "gui/window/reading_dialogs.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

/// A list of rows in columns, that scrolls when it is long.
struct Row {
    std::vector<std::string> cells;
};

void draw_rows(const std::string& label, const PixelBox& box, const std::vector<Row>& rows,
               const std::vector<double>& column_px, Face face, Widgets& widgets) {
    const Lettering& lettering = widgets.lettering();
    const double line = lettering.line_px(face);
    const double gap = widgets.px(10);
    std::vector<double> widths;
    double rest = box.width - widgets.px(20);
    for (const double column : column_px) {
        widths.push_back(column > 0 ? widgets.px(column) : rest);
        rest -= widths.back();
    }
    std::vector<std::vector<std::vector<std::string>>> lines;
    std::vector<double> heights;
    double sum = 0;
    for (const Row& row : rows) {
        lines.emplace_back();
        std::size_t most = 1;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            lines.back().push_back(lettering.lines(row.cells[c], face, widths[c] - gap, 20).words);
            most = std::max(most, lines.back().back().size());
        }
        heights.push_back(static_cast<double>(most) * line + gap);
        sum += heights.back();
    }

    const Vec2 start = widgets.begin_scroll(label, box, sum);
    double top = start.y;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        double left = start.x;
        for (std::size_t c = 0; c < lines[r].size(); ++c) {
            double y = top + line / 2;
            for (const std::string& one : lines[r][c]) {
                widgets.write({left, y}, one, face, c == 0 ? palette::quiet_text : palette::ink);
                y += line;
            }
            left += widths[c];
        }
        top += heights[r];
        widgets.draw({Stroke{{{start.x, top - gap / 2}, {start.x + box.width - widgets.px(20), top - gap / 2}},
                             palette::squared_line,
                             1}});
    }
    widgets.end_scroll();
}

void draw_close(Foot& foot, Commands& commands) {
    if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
}

}  // namespace

void draw_help_dialog(const Session&, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("Help: what can be done, and its key"), 820, 640);
    std::vector<Row> rows;
    rows.push_back({{say("Tab"), say("next button"), say("Goes from button to button; Enter presses.")}});
    for (const CommandRow& row : command_table()) rows.push_back({{key_name(row.keys), say(row.name), say(row.help)}});
    draw_rows("help words", card.inside, rows, {130, 190, 0}, Face::small, widgets);
    Foot foot(card.foot, widgets);
    draw_close(foot, commands);
    if (foot.button(row_of(Action::other_language).name)) commands.push_back(Press{Action::other_language});
}

}  // namespace boughwork
