// SPDX-License-Identifier: MIT
#include "gui/window/table_foot.h"

#include "engine/words/say.h"
#include "gui/picture/line_plot.h"
#include "gui/picture/palette.h"
#include "gui/window/layout.h"
#include "rules/description.h"
#include "rules/hand_measured.h"

namespace boughwork {
namespace {

void draw_plot(const Session& session, const PixelBox& box, Widgets& widgets) {
    widgets.sheet(box, palette::paper);
    const Challenge& challenge = session.scene().challenge;
    const double pad = widgets.px(18);
    const double head = widgets.px(34);
    const PixelBox inside{box.x + pad, box.y + head, box.width - 2 * pad, box.height - head - widgets.px(4)};
    const LinePlot plot = line_plot(sides_known_in_steps(session.scene(), session.report()), challenge,
                                    places_in(inside.width, widgets.scale()));
    if (plot.how_many.empty()) {
        widgets.write_lines(inset(box, pad), say("Measure a side by hand, and it becomes a cross here."), Face::small,
                            palette::quiet_text);
        return;
    }
    widgets.write({inside.x, box.y + widgets.px(18)}, words_above(plot, challenge), Face::small, palette::ink);
    widgets.draw(line_plot_marks(plot, challenge, inside, widgets.scale()));
}

void draw_words(const Session& session, const TableFootWords& words, const PixelBox& box, Widgets& widgets) {
    if (!words.problem.empty()) {
        widgets.write_lines(box, words.problem, Face::small, palette::unmet);
        return;
    }
    PixelBox rest = box;
    const std::string& first = words.hint.empty() ? session.word() : words.hint;
    if (!first.empty()) {
        const double used =
            widgets.write_lines(box, first, words.hint.empty() ? Face::small : Face::body, palette::ink);
        rest.y += used;
        rest.height -= used;
    }
    // Only where there is room for all of it: a hint stands before the definition.
    const std::string kinds = kinds_words(session.scene().challenge);
    const auto most = static_cast<std::size_t>((rest.height + 1) / widgets.lettering().line_px(Face::small));
    if (most > 0 && !widgets.lettering().lines(kinds, Face::small, rest.width, most).shortened)
        widgets.write_lines(rest, kinds, Face::small, palette::quiet_text);
}

}  // namespace

void draw_table_foot(const Session& session, const TableFootWords& words, const PixelBox& box, CellKeys& keys,
                     Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(10);
    const double left = (box.width - gap) * 0.5;
    draw_plot(session, {box.x, box.y, left, box.height}, widgets);
    const PixelBox card{box.x + left + gap, box.y, box.width - left - gap, box.height};
    widgets.sheet(card, palette::paper);

    const double pad = widgets.px(16);
    const double row = widgets.px(palette::target_px);
    PixelBox button{card.x + pad, card.y + card.height - widgets.px(12) - row, 0, row};
    draw_words(session, words,
               {card.x + pad, card.y + widgets.px(10), card.width - 2 * pad, button.y - card.y - widgets.px(12)},
               widgets);
    const Action actions[] = {Action::copy_table, Action::save_table, Action::take_in_table, Action::list_answers};
    button.width = (card.width - 2 * pad - 3 * widgets.px(8)) / 4;
    keys.begin_line();
    for (const Action action : actions) {
        command_button(session, widgets, commands, action, button, say(row_of(action).name));
        keys.reach(row_of(action).name);
        button.x += button.width + widgets.px(8);
    }
}

}  // namespace boughwork
