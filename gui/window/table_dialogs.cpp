// SPDX-License-Identifier: MIT
#include "gui/window/table_dialogs.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

std::string verdict_words(AnswerIs judged) {
    switch (judged) {
        case AnswerIs::right: return say("yes");
        case AnswerIs::nearly: return say("nearly");
        case AnswerIs::not_yet: return say("not yet");
    }
    return "";
}

/// Paragraphs one below the other, in a box that scrolls.
void draw_paragraphs(const std::string& label, const std::vector<std::string>& paragraphs, const PixelBox& box,
                     Widgets& widgets) {
    const double line = widgets.lettering().line_px(Face::body);
    const double room = box.width - widgets.px(20);
    std::vector<std::string> lines;
    for (const std::string& paragraph : paragraphs)
        for (const std::string& words : widgets.lettering().lines(paragraph, Face::body, room, 20).words)
            lines.push_back(words);
    const Vec2 start = widgets.begin_scroll(label, box, static_cast<double>(lines.size()) * line);
    double y = start.y + line / 2;
    for (const std::string& words : lines) {
        widgets.write({start.x, y}, words, Face::body, palette::ink);
        y += line;
    }
    widgets.end_scroll();
}

}  // namespace

void draw_answers_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const std::vector<GivenAnswer> given = given_answers(session.scene(), session.report());
    const auto right = std::count_if(given.begin(), given.end(), [](const GivenAnswer& answer) {
        return answer.judgement.judged == AnswerIs::right;
    });
    const DialogCard card = draw_dialog_card(
        layout, widgets, say("Answers: {0} of {1} are correct", {std::to_string(right), std::to_string(given.size())}),
        720, 560);
    if (given.empty()) {
        widgets.write_lines(card.inside, say("Nobody has answered anything yet."), Face::body, palette::quiet_text);
    } else {
        const double row = widgets.px(36);
        const Vec2 start =
            widgets.begin_scroll("list of answers", card.inside, row * static_cast<double>(given.size()));
        double y = start.y + row / 2;
        const double width = card.inside.width - widgets.px(20);
        for (const GivenAnswer& answer : given) {
            widgets.write({start.x, y}, in_words(answer.piece), Face::body, palette::ink);
            widgets.write({start.x + 0.18 * width, y}, words_for(answer.about), Face::body, palette::quiet_text);
            widgets.write({start.x + 0.45 * width, y}, answer.answer, Face::body, palette::ink);
            const AnswerIs judged = answer.judgement.judged;
            widgets.write({start.x + 0.75 * width, y}, verdict_words(judged), Face::body,
                          judged == AnswerIs::right ? palette::met : palette::ink);
            const double foot = y + row / 2;
            widgets.draw({Stroke{{{start.x, foot}, {start.x + width, foot}}, palette::squared_line, widgets.scale()}});
            y += row;
        }
        widgets.end_scroll();
    }
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
}

void draw_taken_in_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const TakenIn& taken = session.taken_in();
    const DialogCard card = draw_dialog_card(layout, widgets, say("The table was taken in"), 720, 520);
    std::vector<std::string> paragraphs;
    if (taken.taken.empty()) paragraphs.push_back(say("It brought nothing new."));
    paragraphs.insert(paragraphs.end(), taken.taken.begin(), taken.taken.end());
    if (!taken.left.empty()) {
        paragraphs.push_back(" ");
        paragraphs.push_back(say("Not taken:"));
        paragraphs.insert(paragraphs.end(), taken.left.begin(), taken.left.end());
    }
    draw_paragraphs("what was taken in", paragraphs, card.inside, widgets);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
}

void draw_replace_table_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("There is a file of that name"), 600, 280);
    widgets.write_lines(card.inside,
                        say("{0} is there already. Shall this table take its place? What the file holds now would be "
                            "lost.",
                            {session.replace_path()}),
                        Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("replace it"))) commands.push_back(SaveTable{session.replace_path(), true});
    if (foot.button(phrase("another name"), Tone::strong)) commands.push_back(Press{Action::save_table});
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
}

}  // namespace boughwork
