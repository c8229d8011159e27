// SPDX-License-Identifier: MIT
#include "gui/window/referee_panel.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// The way out of a crowd that the finding belongs to: "If piece 9 comes down, the other 2 can count."
std::string way_out_words(const Report& report, const Finding& finding) {
    for (const WayOut& way : report.ways_out) {
        const auto is_in = [&](PieceNumber piece) {
            return std::find(way.take_down.begin(), way.take_down.end(), piece) != way.take_down.end() ||
                   std::find(way.then_count.begin(), way.then_count.end(), piece) != way.then_count.end();
        };
        const bool crowded = finding.rule == Rule::touching || finding.rule == Rule::overlap;
        if (crowded && finding.pieces.size() > 1 && std::all_of(finding.pieces.begin(), finding.pieces.end(), is_in))
            return " " + way.says;
    }
    return "";
}

/// "2.1 cm left", and of which piece where there is a doubt.
std::string fix_words(const Finding& finding, const Remedy& remedy) {
    if (finding.pieces.size() == 1) return say("fix: {0}", {remedy.says});
    return say("fix: {0}, {1}", {in_words(remedy.piece), remedy.says});
}

/// Of the chosen piece, or of all: how often they hold in shaky hands, and what would help.
std::string chance_words(const Session& session) {
    const TriedHands& tried = session.tried_hands();
    if (!session.shows_chances() || !tried.report()) return "";
    const ShakyPiece* piece = session.chosen_piece() ? tried.report(*session.chosen_piece()) : nullptr;
    if (!piece) return tried.report()->says;
    const MoreRoom* room = session.room_for(piece->number);
    return piece->says + (room ? " " + room->says : "");
}

std::string calm_words(const Session& session) {
    const Report& report = session.report();
    if (const std::string chances = chance_words(session); !chances.empty()) return chances;
    if (session.plan().tree.branches.empty())
        return say("The tree has no branch yet. Press \"{0}\" below it.", {say(row_of(Action::add_branch).name)});
    if (session.plan().hung.empty()) return say("Nothing hangs yet. Drag a piece from the envelope to a branch.");
    const auto told = [&](const ChallengeLine& line) { return is_told(session.scene(), line, session.plan()); };
    const auto unmet = std::find_if(report.challenge.begin(), report.challenge.end(),
                                    [&](const ChallengeLine& line) { return line.met == false && told(line); });
    const bool all_judged = std::all_of(report.challenge.begin(), report.challenge.end(),
                                        [&](const ChallengeLine& line) { return line.met && told(line); });
    if (unmet == report.challenge.end())
        return all_judged ? say("Every piece that hangs counts, and the challenge is met.")
                          : say("Every piece that hangs counts, and so far nothing is missing.");
    return say("Every piece that hangs counts. Still to do: {0}.", {unmet->says});
}

/// The sentence as large as it fits the box, in its middle.
void write_sentence(const PixelBox& box, const std::string& words, Widgets& widgets, Colour colour) {
    const Lettering& lettering = widgets.lettering();
    for (const Face face : {Face::large, Face::body, Face::small}) {
        const double line = lettering.line_px(face);
        const auto most = static_cast<std::size_t>(std::max(1.0, (box.height + line * 0.2) / line));
        const Lines lines = lettering.lines(words, face, box.width, most);
        if (lines.shortened && face != Face::small) continue;
        if (lines.shortened) widgets.fitted(words, face, 0);  // noted as such
        double y = box.y + (box.height - line * static_cast<double>(lines.words.size() - 1)) / 2;
        for (const std::string& one : lines.words) {
            widgets.write({box.x, y}, one, face, colour);
            y += line;
        }
        return;
    }
}

/// For the back of the room, where the sentence needs the width: one below the other.
double draw_projector_buttons(const Session& session, const PixelBox& box, const std::string& next, Widgets& widgets,
                              Commands& commands) {
    const std::string show = session.lens() ? say("hide") : say("show");
    const double height = widgets.px(palette::target_px);
    const double gap = widgets.px(6);
    const auto width_of = [&](const std::string& words) { return widgets.lettering().width_px(words, Face::body); };
    PixelBox button{0, box.y + (box.height - 2 * height - gap) / 2,
                    std::max(width_of(show), width_of(next)) + widgets.px(36), height};
    button.x = box.x + box.width - widgets.px(12) - button.width;
    command_button(session, widgets, commands, Action::show_finding, button, show);
    button.y += height + gap;
    command_button(session, widgets, commands, Action::next_finding, button, next);
    return button.x;
}

/// From the right end to the left; gives back where the room for the sentence ends.
double draw_buttons(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::string which = std::to_string(session.finding_index() + 1);
    const std::string count = std::to_string(session.report().findings.size());
    const std::string next = say("next {0} of {1}", {which, count});
    if (session.projector()) return draw_projector_buttons(session, box, next, widgets, commands);

    const double gap = widgets.px(8);
    PixelBox button{box.x + box.width - widgets.px(16), box.y + (box.height - widgets.px(palette::target_px)) / 2, 0,
                    widgets.px(palette::target_px)};
    const auto place = [&](Action action, const std::string& words, Tone tone) {
        // A long move is said in two lines, so that the sentence has room too.
        button.width = std::min(widgets.lettering().width_px(words, Face::body) + widgets.px(36), box.width * 0.3);
        button.x -= button.width;
        command_button(session, widgets, commands, action, button, words, tone);
        button.x -= gap;
    };
    place(Action::next_finding, next, Tone::quiet);
    if (const Remedy* remedy = session.finding_remedy())
        place(Action::fix_finding, fix_words(*session.finding(), *remedy), Tone::strong);
    place(Action::show_finding, session.lens() ? say("hide") : say("show"), Tone::quiet);
    return button.x;
}

}  // namespace

std::string referee_words(const Session& session) {
    if (session.problem()) return in_words(*session.problem());
    const std::vector<ChallengeLine>& lines = session.report().challenge;
    if (session.pointed_line() && *session.pointed_line() < lines.size()) {
        const ChallengeLine& line = lines[*session.pointed_line()];
        return say("{0}. Now: {1}.", {capitalised(line.asks), line.says});
    }
    if (const Finding* finding = session.finding()) return finding->says + way_out_words(session.report(), *finding);
    return calm_words(session);
}

void draw_referee(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const PixelBox& box = layout.referee;
    widgets.sheet(box, palette::paper);
    widgets.outline(box, session.problem() ? palette::unmet : palette::ink, 2 * widgets.scale(), widgets.px(10));

    double end = box.x + box.width - widgets.px(16);
    if (session.finding() && !session.problem()) end = draw_buttons(session, box, widgets, commands);
    const double left = box.x + widgets.px(20);
    write_sentence({left, box.y + widgets.px(4), end - left - widgets.px(12), box.height - widgets.px(8)},
                   referee_words(session), widgets, session.problem() ? palette::unmet : palette::ink);
}

}  // namespace boughwork
