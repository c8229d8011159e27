// SPDX-License-Identifier: MIT
#include "gui/window/tour_dialog.h"

#include <algorithm>
#include <initializer_list>

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

/// The first in which the words fit so many lines, or the last.
Face fitting(std::initializer_list<Face> faces, const std::string& words, double width_px, std::size_t lines,
             const Widgets& widgets) {
    for (const Face face : faces)
        if (!widgets.lettering().lines(words, face, width_px, lines).shortened) return face;
    return *(faces.end() - 1);
}

constexpr double words_margin_px = 18;
constexpr std::size_t most_told_lines = 4;

/// What the referee says, as large as it has room in three lines, and how high that is.
struct RefereeWords {
    std::string words;
    Face face = Face::body;
    double height_px = 0;
};
RefereeWords words_within(double width_px, Rule rule, bool kept, const Widgets& widgets) {
    const Lettering& lettering = widgets.lettering();
    const double room = width_px - 2 * widgets.px(words_margin_px);
    RefereeWords said{.words = referee_words(rule, rule_scene(rule, kept).report.findings)};
    said.face = fitting({Face::body, Face::small}, said.words, room, 3, widgets);
    const auto lines = static_cast<double>(lettering.lines(said.words, said.face, room, most_told_lines).words.size());
    said.height_px = lines * lettering.line_px(said.face);
    return said;
}

/// One of the two pictures, its sign, and what the referee says of it below.
void draw_side(Rule rule, bool kept, const PixelBox& box, double words_height, Widgets& widgets) {
    widgets.outline(box, palette::ink, (kept ? 1.5 : 3) * widgets.scale(), widgets.px(12));
    const double sign_px = widgets.px(34);
    widgets.draw(sign(kept, {box.x + widgets.px(14), box.y + widgets.px(12), sign_px, sign_px}, widgets.scale()));
    const std::string verdict = kept ? say("This is how it goes.") : say("This does not count.");
    const Face large = fitting({Face::large, Face::body}, verdict, box.width - widgets.px(72), 1, widgets);
    widgets.write({box.x + widgets.px(60), box.y + widgets.px(12) + sign_px / 2}, verdict, large, palette::ink);

    const double top = box.y + widgets.px(56);
    const PixelBox picture{box.x + widgets.px(10), top, box.width - widgets.px(20),
                           box.y + box.height - widgets.px(16) - words_height - top};
    widgets.begin_clip(picture);
    widgets.draw(rule_picture(rule, kept, picture, 1.4 * widgets.scale()));
    widgets.end_clip();

    const RefereeWords said = words_within(box.width, rule, kept, widgets);
    const double margin = widgets.px(words_margin_px);
    widgets.write_lines(
        {box.x + margin, picture.y + picture.height + widgets.px(8), box.width - 2 * margin, words_height + 1},
        said.words, said.face, palette::ink);
}

}  // namespace

void draw_tour(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const std::vector<Rule>& rules = rules_in_order();
    const std::size_t stop = std::min(session.tour_stop(), rules.size() - 1);
    const Rule rule = rules[stop];
    widgets.sheet(layout.page, palette::paper, 0);
    const bool narrow = layout.page.width < widgets.px(least_page_width_px);  // as on the projector's wall
    const PixelBox inside = inset(layout.page, widgets.px(narrow ? 14 : 28));
    const double target = widgets.px(palette::target_px);
    const double gap = widgets.px(16);

    const std::string asks = asks_in_words(rule);
    const Face face = fitting({Face::heading, Face::large}, asks, inside.width, 1, widgets);
    const auto lines = static_cast<double>(widgets.lettering().lines(asks, face, inside.width, 2).words.size());
    const double title = std::min(widgets.px(84), lines * widgets.lettering().line_px(face) + widgets.px(12));
    widgets.write_lines({inside.x, inside.y, inside.width, title}, asks, face, palette::ink);

    const double foot = inside.y + inside.height - target;
    PixelBox side{inside.x, inside.y + title, (inside.width - gap) / 2, foot - gap - inside.y - title};
    // Both pictures are alike large.
    const double words_height = std::max(words_within(side.width, rule, false, widgets).height_px,
                                         words_within(side.width, rule, true, widgets).height_px);
    draw_side(rule, false, side, words_height, widgets);
    side.x += side.width + gap;
    draw_side(rule, true, side, words_height, widgets);

    // Where it is narrow they share what there is, and the count keeps its place between them.
    const std::string count = say("{0} of {1}", {std::to_string(stop + 1), std::to_string(rules.size())});
    const double count_width = widgets.lettering().width_px(count, Face::body);
    const double wide_button = std::min(widgets.px(190), (inside.width - count_width - 3 * gap) / 3);
    PixelBox button{inside.x, foot, wide_button, target};
    if (widgets.button("end the tour", say("end the tour"), button)) commands.push_back(CloseDialog{});
    button.x = inside.x + inside.width - wide_button;
    command_button(session, widgets, commands, Action::next_stop, button, say("next rule"), Tone::strong);
    button.x -= wide_button + gap;
    const double left = inside.x + wide_button;
    widgets.write({(left + button.x) / 2, foot + target / 2}, count, Face::body, palette::ink, TextAlign::centre);
    command_button(session, widgets, commands, Action::stop_before, button, say("the rule before"));
}

}  // namespace boughwork
