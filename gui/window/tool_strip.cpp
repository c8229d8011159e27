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
            return {next_span,  next_side,          mirror_image, take_down,  gather,        gather_row,
                    spread_out, stop_at_neighbours, change_piece, copy_piece, mirrored_copy, throw_away};
        return {next_span, change_piece, copy_piece, mirrored_copy, throw_away};
    }
    if (session.chosen_branch()) return {add_bend, remove_bend, remove_branch, add_branch};
    return {add_branch};
}

/// What is on looks it.
Tone tone_of(const Session& session, Action action) {
    if (!row_of(action).possible(session)) return Tone::quiet;
    const bool on = (action == Action::stop_at_neighbours && session.stops_at_neighbours()) ||
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

Width sum_of(const std::vector<Width>& widths, double gap) {
    Width sum;
    for (const Width& width : widths) {
        sum.wide += width.wide + gap;
        sum.narrow += width.narrow + gap;
    }
    return sum;
}

std::string hint_for(const Session& session) {
    if (!session.word().empty()) return session.word();
    if (session.chosen_piece() || session.chosen_branch()) return "";
    if (session.trunk_chosen()) return say("Drag the round handles of the trunk.");
    return say("Drag a piece from the envelope to a branch.");
}

}  // namespace

double ToolStrip::draw_actions(const Session& session, const PixelBox& strip, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(8);
    std::vector<Action> actions = actions_for(session);
    const auto widths_of = [&](const std::vector<Action>& shown) {
        std::vector<Width> widths;
        for (const Action action : shown) widths.push_back(width_of(say(row_of(action).name), widgets));
        return widths;
    };
    PixelBox box = strip;
    const bool all_fit = sum_of(widths_of(actions), gap).narrow <= strip.width + gap;
    if (all_fit) more_ = false;
    if (!all_fit) {
        const auto half = actions.begin() + static_cast<std::ptrdiff_t>(actions.size() / 2);
        actions = more_ ? std::vector<Action>(half, actions.end()) : std::vector<Action>(actions.begin(), half);
        box.width -= widgets.px(72) + gap;
    }
    // Where not all have their words in one line, all give way alike.
    const std::vector<Width> widths = widths_of(actions);
    const Width sum = sum_of(widths, gap);
    const double spare = sum.wide > sum.narrow ? (box.width + gap - sum.narrow) / (sum.wide - sum.narrow) : 1;
    const double wide = std::clamp(spare, 0.0, 1.0);
    for (std::size_t i = 0; i < actions.size(); ++i) {
        box.width = widths[i].narrow + wide * (widths[i].wide - widths[i].narrow);
        command_button(session, widgets, commands, actions[i], box, {}, tone_of(session, actions[i]));
        box.x += box.width + gap;
    }
    if (all_fit) return box.x;
    box.width = widgets.px(72);
    if (widgets.button("more", more_ ? say("back") : say("more"), box)) more_ = !more_;
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
    if (room < widgets.px(60)) return;
    const std::string hint = hint_for(session);
    const double line = widgets.lettering().line_px(Face::small);
    const auto lines = static_cast<double>(widgets.lettering().lines(hint, Face::small, room, 2).words.size());
    widgets.write_lines({box.x + widgets.px(4), box.y + (box.height - lines * line) / 2, room, 2 * line}, hint,
                        Face::small, palette::quiet_text);
}

}  // namespace boughwork
