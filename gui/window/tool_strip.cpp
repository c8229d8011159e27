// SPDX-License-Identifier: MIT
#include "gui/window/tool_strip.h"

#include <algorithm>
#include <cstddef>

#include "engine/words/say.h"
#include "gui/picture/palette.h"

namespace boughwork {
namespace {

/// The actions that fit what is chosen; the strip shows them in this order.
std::vector<Action> actions_for(const Session& session) {
    using enum Action;
    if (const auto piece = session.chosen_piece()) {
        if (find_hung(session.plan(), *piece))
            return {next_span,          next_side, mirror_image, take_down,  gather,        gather_row, spread_out,
                    stop_at_neighbours, chances,   change_piece, copy_piece, mirrored_copy, throw_away};
        return {next_span, change_piece, copy_piece, mirrored_copy, throw_away};
    }
    if (session.chosen_branch()) return {add_bend, remove_bend, remove_branch, add_branch};
    return {add_branch, chances};
}

/// What is on looks it.
Tone tone_of(const Session& session, Action action) {
    if (!row_of(action).possible(session)) return Tone::quiet;
    const bool on = (action == Action::stop_at_neighbours && session.stops_at_neighbours()) ||
                    (action == Action::chances && session.shows_chances()) ||
                    (action == Action::gather && session.is_gathered(*session.chosen_piece()));
    return on ? Tone::strong : Tone::quiet;
}

/// A button's width: as wide as its words, or as narrow as they can be in two lines of small letters.
struct Width {
    double wide = 0;
    double narrow = 0;
};

Width width_of(const std::string& words, const Widgets& widgets) {
    const Lettering& lettering = widgets.lettering();
    const double small = lettering.width_px(words, Face::small);
    double narrowest = small;
    for (std::size_t blank = words.find(' '); blank != std::string::npos; blank = words.find(' ', blank + 1)) {
        const double first = lettering.width_px(words.substr(0, blank), Face::small);
        const double second = lettering.width_px(words.substr(blank + 1), Face::small);
        narrowest = std::min(narrowest, std::max(first, second));
    }
    const double target = widgets.px(palette::target_px);
    return {std::max(lettering.width_px(words, Face::body) + widgets.px(32), widgets.px(72)),
            std::max(narrowest + widgets.px(22), target)};
}

/// Of those from `first` to before `end`, each with the gap behind it.
Width sum_of(const std::vector<Width>& widths, std::size_t first, std::size_t end, double gap) {
    Width sum;
    for (std::size_t i = first; i < end; ++i) {
        sum.wide += widths[i].wide + gap;
        sum.narrow += widths[i].narrow + gap;
    }
    return sum;
}

std::string hint_for(const Session& session) {
    if (!session.word().empty()) return session.word();
    if (session.chosen_piece() || session.chosen_branch()) return "";
    if (session.trunk_chosen()) return say("Drag the round handles of the trunk.");
    const bool something_waits = session.plan().hung.size() < session.scene().pieces.size();
    if (session.plan().tree.branches.empty() || session.plan().hung.empty() || !something_waits) return "";
    return say("Drag a piece from the envelope to a branch.");
}

/// What was just done, where the buttons leave no room for it: on a slip in the paper's corner.
void write_on_paper(const std::string& words, const PixelBox& paper, Widgets& widgets) {
    const double pad = widgets.px(12);
    const double width = std::min(widgets.lettering().width_px(words, Face::small) + 2 * pad, paper.width - 2 * pad);
    const double height = widgets.px(34);
    const PixelBox slip{paper.x + paper.width - pad - width, paper.y + pad, width, height};
    widgets.sheet(slip, palette::paper, widgets.px(8));
    widgets.outline(slip, palette::ink, 1.2 * widgets.scale(), widgets.px(8));
    widgets.write({slip.x + pad, slip.y + height / 2}, widgets.fitted(words, Face::small, width - 2 * pad), Face::small,
                  palette::ink);
}

}  // namespace

double ToolStrip::draw_actions(const Session& session, const PixelBox& strip, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(8);
    const std::vector<Action> actions = actions_for(session);
    std::vector<Width> widths;
    for (const Action action : actions) widths.push_back(width_of(say(row_of(action).name), widgets));

    // Where not all fit, as many as do, and a button for the next ones.
    PixelBox box = strip;
    const bool all_fit = sum_of(widths, 0, widths.size(), gap).narrow <= strip.width + gap;
    if (all_fit || first_ >= actions.size()) first_ = 0;
    if (!all_fit) box.width -= widgets.px(72) + gap;
    std::size_t end = first_ + 1;
    while (end < actions.size() && sum_of(widths, first_, end + 1, gap).narrow <= box.width + gap) ++end;

    // Where not all have their words in one line, all give way alike.
    const Width sum = sum_of(widths, first_, end, gap);
    const double spare = sum.wide > sum.narrow ? (box.width + gap - sum.narrow) / (sum.wide - sum.narrow) : 1;
    const double wide = std::clamp(spare, 0.0, 1.0);
    for (std::size_t i = first_; i < end; ++i) {
        box.width = widths[i].narrow + wide * (widths[i].wide - widths[i].narrow);
        command_button(session, widgets, commands, actions[i], box, {}, tone_of(session, actions[i]));
        box.x += box.width + gap;
    }
    if (all_fit) return box.x;
    box.width = widgets.px(72);
    const bool last = end == actions.size();
    if (widgets.button("more", last ? say("back") : say("more"), box)) first_ = last ? 0 : end;
    return box.x + box.width + gap;
}

void ToolStrip::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(8);
    const double target = widgets.px(palette::target_px);
    PixelBox box = layout.strip;
    box.y += widgets.px(6);
    box.height = target;

    // How near: at the right end.
    const double all_width = widgets.px(96);
    PixelBox zoom{box.x + box.width - all_width - 2 * (target + gap), box.y, target, target};
    const double room_end = zoom.x - gap;
    command_button(session, widgets, commands, Action::zoom_out, zoom, "−");
    zoom.x += target + gap;
    command_button(session, widgets, commands, Action::zoom_in, zoom, "+");
    zoom.x += target + gap;
    zoom.width = all_width;
    command_button(session, widgets, commands, Action::show_all, zoom);

    box.x = draw_actions(session, {box.x, box.y, room_end - box.x, box.height}, widgets, commands);

    const double room = room_end - box.x - gap;
    const std::string hint = hint_for(session);
    const bool fits = room >= widgets.px(60) && !widgets.lettering().lines(hint, Face::small, room, 2).shortened;
    if (!fits && !session.word().empty()) return write_on_paper(session.word(), layout.paper, widgets);
    if (room < widgets.px(60)) return;
    const double line = widgets.lettering().line_px(Face::small);
    const auto lines = static_cast<double>(widgets.lettering().lines(hint, Face::small, room, 2).words.size());
    widgets.write_lines({box.x + widgets.px(4), box.y + (box.height - lines * line) / 2, room, 2 * line}, hint,
                        Face::small, palette::quiet_text);
}

}  // namespace boughwork
