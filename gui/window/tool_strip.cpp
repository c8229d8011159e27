// SPDX-License-Identifier: MIT
#include "gui/window/tool_strip.h"

#include <algorithm>

#include "gui/picture/palette.h"

namespace boughwork {
namespace {

/// The actions that fit what is chosen; the strip shows them in this order.
std::vector<Action> actions_for(const Session& session) {
    if (const auto piece = session.chosen_piece()) {
        std::vector<Action> actions{Action::next_span, Action::next_side, Action::mirror_image, Action::take_down};
        if (!find_hung(session.plan(), *piece)) actions.back() = Action::throw_away;
        return actions;
    }
    if (session.chosen_branch())
        return {Action::add_bend, Action::remove_bend, Action::remove_branch, Action::add_branch};
    return {Action::add_branch};
}

std::string hint_for(const Session& session) {
    if (!session.word().empty()) return session.word();
    if (session.chosen_piece() || session.chosen_branch()) return "";
    if (session.trunk_chosen()) return "Drag the round handles of the trunk.";
    return "Drag a piece from the envelope to a branch.";
}

}  // namespace

void draw_tool_strip(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
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

    // What can be done: from the left. The words decide how wide a button is; in a narrow window
    // all give way alike.
    const std::vector<Action> actions = actions_for(session);
    std::vector<double> widths;
    double sum = gap * static_cast<double>(actions.size());
    for (const Action action : actions) {
        const double words = widgets.lettering().width_px(row_of(action).name, Face::body);
        widths.push_back(std::max(words + widgets.px(32), widgets.px(72)));
        sum += widths.back();
    }
    const double shrink = std::min(1.0, (room_end - box.x) / sum);
    for (std::size_t i = 0; i < actions.size(); ++i) {
        box.width = widths[i] * shrink;
        command_button(session, widgets, commands, actions[i], box);
        box.x += box.width + gap * shrink;
    }

    const double room = room_end - box.x - gap;
    if (room < widgets.px(60)) return;
    const std::string hint = hint_for(session);
    const double line = widgets.lettering().line_px(Face::small);
    const auto lines = static_cast<double>(widgets.lettering().lines(hint, Face::small, room, 2).words.size());
    widgets.write_lines({box.x + widgets.px(4), box.y + (box.height - lines * line) / 2, room, 2 * line}, hint,
                        Face::small, palette::quiet_text);
}

}  // namespace boughwork
