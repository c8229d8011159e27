// SPDX-License-Identifier: MIT
#include "gui/window/tour_dialog.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/rule_picture.h"
#include "gui/picture/rule_scenes.h"
#include "gui/window/card_pictures.h"
#include "rules/rule_words.h"

namespace boughwork {
namespace {

/// What is said about the rule, else the first thing that is said at all.
std::string referee_words(Rule rule, const std::vector<Finding>& findings) {
    if (findings.empty()) return say("The referee has nothing to say: every piece counts.");
    const auto about =
        std::find_if(findings.begin(), findings.end(), [&](const Finding& finding) { return finding.rule == rule; });
    return about == findings.end() ? findings.front().says : about->says;
}

/// One of the two pictures, its sign, and what the referee says of it.
void draw_side(Rule rule, bool kept, const PixelBox& box, Widgets& widgets) {
    widgets.outline(box, palette::ink, (kept ? 1.5 : 3) * widgets.scale(), widgets.px(12));
    const double sign_px = widgets.px(34);
    widgets.draw(sign(kept, {box.x + widgets.px(14), box.y + widgets.px(12), sign_px, sign_px}, widgets.scale()));
    widgets.write({box.x + widgets.px(60), box.y + widgets.px(12) + sign_px / 2},
                  kept ? say("This is how it goes.") : say("This does not count."), Face::large, palette::ink);

    const double line = widgets.lettering().line_px(Face::body);
    const double words_height = 3 * line;
    const double top = box.y + widgets.px(56);
    const PixelBox picture{box.x + widgets.px(10), top, box.width - widgets.px(20),
                           box.y + box.height - widgets.px(16) - words_height - top};
    widgets.begin_clip(picture);
    widgets.draw(rule_picture(rule, kept, picture, 1.4 * widgets.scale()));
    widgets.end_clip();

    const std::string words = referee_words(rule, rule_scene(rule, kept).report.findings);
    widgets.write_lines(
        {box.x + widgets.px(18), picture.y + picture.height + widgets.px(8), box.width - widgets.px(36), words_height},
        words, Face::body, palette::ink);
}

}  // namespace

void draw_tour(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const std::vector<Rule>& rules = rules_in_order();
    const std::size_t stop = std::min(session.tour_stop(), rules.size() - 1);
    const Rule rule = rules[stop];
    widgets.sheet(layout.page, palette::paper, 0);
    const PixelBox inside = inset(layout.page, widgets.px(28));
    const double target = widgets.px(palette::target_px);
    const double gap = widgets.px(16);

    const double title = widgets.px(84);
    const std::string asks = asks_in_words(rule);
    const bool wide = widgets.lettering().width_px(asks, Face::heading) > inside.width;
    widgets.write_lines({inside.x, inside.y, inside.width, title}, asks, wide ? Face::large : Face::heading,
                        palette::ink);

    const double foot = inside.y + inside.height - target;
    PixelBox side{inside.x, inside.y + title, (inside.width - gap) / 2, foot - gap - inside.y - title};
    draw_side(rule, false, side, widgets);
    side.x += side.width + gap;
    draw_side(rule, true, side, widgets);

    const double wide_button = widgets.px(190);
    PixelBox button{inside.x, foot, wide_button, target};
    if (widgets.button("end the tour", say("end the tour"), button)) commands.push_back(CloseDialog{});
    widgets.write({inside.x + inside.width / 2, foot + target / 2},
                  say("{0} of {1}", {std::to_string(stop + 1), std::to_string(rules.size())}), Face::body, palette::ink,
                  TextAlign::centre);
    button.x = inside.x + inside.width - wide_button;
    command_button(session, widgets, commands, Action::next_stop, button, say("next rule"), Tone::strong);
    button.x -= wide_button + gap;
    command_button(session, widgets, commands, Action::stop_before, button, say("the rule before"));
}

}  // namespace boughwork
