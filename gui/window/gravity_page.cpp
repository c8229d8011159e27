// SPDX-License-Identifier: MIT
#include "gui/window/gravity_page.h"

#include <algorithm>
#include <cstdio>

#include "engine/geometry/extent.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/plan_picture.h"
#include "gui/picture/squared_paper.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// The whole tree, flat and as it is, with what is below it.
Camera camera_over(const Session& session, const PixelBox& view, double around_px) {
    const Box flat = extent_mm(session.scene(), session.plan());
    const Box now = extent_mm(session.scene(), session.gravity().plan());
    return showing({{std::min(flat.low.x, now.low.x), std::min(flat.low.y, now.low.y)},
                    {std::max(flat.high.x, now.high.x), std::max(flat.high.y, now.high.y)}},
                   view, around_px);
}

void draw_tree(const Session& session, const PixelBox& box, Widgets& widgets) {
    constexpr double around_px = 36;
    const Gravity& gravity = session.gravity();
    const Settled* settled = gravity.settled();
    const Report& report = settled && settled->report ? *settled->report : session.report();
    PictureOptions options;
    options.scale = widgets.scale();
    options.flat = &session.plan();
    if (settled && !settled->tipping_says.empty()) options.tipping = &settled->tipping;
    const Camera camera = camera_over(session, paper_within(box, widgets.scale()), around_px * widgets.scale());
    widgets.begin_clip(box);
    widgets.draw(plan_picture(session.scene(), gravity.plan(), report, camera, options).marks);
    widgets.end_clip();
}

void draw_buttons(const Session& session, PixelBox box, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(8);
    const bool runs = session.gravity().runs();
    const double quarter = (box.width - 3 * gap) / 4;
    box.width = quarter;
    command_button(session, widgets, commands, Action::gravity_start, box);
    box.x += quarter + gap;
    command_button(session, widgets, commands, Action::gravity_back, box);
    box.x += quarter + gap;
    command_button(session, widgets, commands, Action::run_gravity, box, runs ? say("hold it") : say("let go"),
                   Tone::strong);
    box.x += quarter + gap;
    command_button(session, widgets, commands, Action::gravity_step, box);
}

void draw_speed(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::vector<Choice> choices{
        {"slow", say("slow")}, {"as it is", say("as it is")}, {"at once", say("at once")}};
    const auto pressed =
        choice_row(widgets, "speed", choices, static_cast<std::size_t>(session.gravity().speed()), box);
    if (pressed) commands.push_back(SetGravitySpeed{static_cast<GravitySpeed>(*pressed)});
}

/// What there is to be said, one paragraph each.
struct Said {
    std::string words;
    Colour colour = palette::ink;
};
std::vector<Said> said_of(const Session& session) {
    const Gravity& gravity = session.gravity();
    const Settled* settled = gravity.settled();
    if (!settled) {
        char seconds[16];
        std::snprintf(seconds, sizeof seconds, "%.1f", gravity.seconds());
        return {
            {gravity.seconds() == 0 ? say("The tree is held as it lies flat. Let go, and see what gravity does to it.")
                                    : say("{0} seconds after letting go", {seconds})},
            {say("A preview: nothing in the plan changes. The rest is worked out, the way to it is only shown."),
             palette::quiet_text}};
    }
    std::vector<Said> all;
    for (const Finding& finding : settled->wrong) all.push_back({finding.says, palette::unmet});
    if (settled->wrong.empty() && settled->report && settled->trusted)
        all.push_back({say("Nothing that was right on the flat has become wrong."), palette::met});
    if (!settled->tipping_says.empty())
        all.push_back({settled->tipping_says, settled->tipping.to_the_edge_mm < 0 ? palette::unmet : palette::ink});
    for (const std::string& note : settled->notes) all.push_back({note});
    for (const SettledBranch& branch : settled->branches)
        if (!branch.says_all.empty()) all.push_back({branch.says_all});
    return all;
}

/// The pieces that fail most often first.
std::vector<Said> said_of_hands(const Session& session) {
    std::vector<Said> all{
        {say("Nobody cuts and hangs exactly. The plan is built again and again with small errors, and "
             "the referee looks at every build."),
         palette::quiet_text}};
    const HandsReport* report = session.tried_hands().report();
    if (session.plan().hung.size() > most_tried_pieces)
        all.push_back(
            {say("This plan has too many pieces for that: at most {0}.", {std::to_string(most_tried_pieces)})});
    if (!report) return all;
    if (report->pieces.empty()) {
        all.push_back({say("No piece hangs yet.")});
        return all;
    }
    all.push_back({report->says, report->holds() ? palette::met : palette::unmet});
    std::vector<ShakyPiece> pieces = report->pieces;
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const ShakyPiece& x, const ShakyPiece& y) { return x.holds.times < y.holds.times; });
    for (const ShakyPiece& piece : pieces) {
        std::string words = piece.says;
        if (piece.holds.times < piece.holds.of)
            words += " " + say("({0} per cent hold, give or take {1})",
                               {number_in_words(100 * piece.holds.share()),
                                number_in_words(100 * piece.holds.standard_error())});
        if (const MoreRoom* room = session.room_for(piece.number)) words += " " + room->says;
        all.push_back({words});
    }
    for (const ShakyLine& line : report->challenge)
        all.push_back({say("{0}: met in {1}", {line.asks, in_words(line.met)})});
    return all;
}

void draw_words(const std::string& label, const std::vector<Said>& all, const PixelBox& box, Widgets& widgets) {
    const double line = widgets.lettering().line_px(Face::body);
    const double gap = widgets.px(10);
    const double width = box.width - widgets.px(26);
    double height = gap;
    constexpr std::size_t most_lines = 12;
    for (const Said& said : all)
        height += gap + line * static_cast<double>(
                                   widgets.lettering().lines(said.words, Face::body, width, most_lines).words.size());
    const Vec2 start = widgets.begin_scroll(label, box, height);
    double top = start.y;
    for (const Said& said : all)
        top += gap + widgets.write_lines({start.x, top, width, most_lines * line}, said.words, Face::body, said.colour);
    widgets.end_scroll();
}

}  // namespace

void GravityPage::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    widgets.sheet(layout.sheet, palette::paper);
    const PixelBox inside = inset(layout.sheet, widgets.px(14));
    const double gap = widgets.px(18);
    const double target = widgets.px(palette::target_px);
    const double right_width = std::min(widgets.px(430), inside.width * 0.42);
    const PixelBox left{inside.x, inside.y, inside.width - right_width - gap, inside.height};
    draw_tree(session, {left.x, left.y, left.width, left.height - target - widgets.px(10)}, widgets);
    draw_buttons(session, {left.x, left.y + left.height - target, left.width, target}, widgets, commands);

    PixelBox right{left.x + left.width + gap, inside.y, right_width, target};
    const std::vector<Choice> choices{
        {"what happens", say("what happens")}, {"hands", say("shaky hands")}, {"made of", say("made of")}};
    if (const auto pressed = choice_row(widgets, "gravity shows", choices, static_cast<std::size_t>(shows_), right))
        shows_ = static_cast<Shows>(*pressed);
    const double top = right.y + target + widgets.px(10);
    const double foot = inside.y + inside.height - target;
    const PixelBox body{right.x, top, right_width, foot - widgets.px(10) - top};
    switch (shows_) {
        case Shows::what_happens: draw_words("what gravity does", said_of(session), body, widgets); break;
        case Shows::shaky_hands: draw_words("what hands do", said_of_hands(session), body, widgets); break;
        case Shows::made_of: settings_.draw(session, body, widgets, commands); break;
    }
    draw_speed(session, {right.x, foot, right_width, target}, widgets, commands);
}

}  // namespace boughwork
