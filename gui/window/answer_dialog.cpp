// SPDX-License-Identifier: MIT
#include "gui/window/answer_dialog.h"

#include <array>

#include "engine/typed_length.h"
#include "engine/typed_number.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

std::string question(Asked about, const std::string& number) {
    switch (about) {
        case Asked::by_sides: return say("Piece {0}: what is it by its sides?", {number});
        case Asked::by_angles: return say("Piece {0}: what is it by its angles?", {number});
        case Asked::perimeter: return say("Piece {0}: how long is the way around it?", {number});
        case Asked::points: return say("Piece {0}: how many points does it score?", {number});
    }
    return "";
}

std::array<Kind, 3> kinds_of(Asked about) {
    return about == Asked::by_sides ? std::array{Kind::equilateral, Kind::isosceles, Kind::scalene}
                                    : std::array{Kind::acute, Kind::right, Kind::obtuse};
}

}  // namespace

AnswerDialog::AnswerDialog(const Session& session) {
    const Piece* piece = find_piece(session.scene(), session.asked().piece);
    if (!piece) return;
    const Answers& answers = piece->answers;
    if (session.asked().about == Asked::perimeter && answers.perimeter)
        typed_ = length_number(*answers.perimeter, session.scene().challenge.units);
    if (session.asked().about == Asked::points && answers.points) typed_ = number_in_words(*answers.points);
}

void AnswerDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const Asked about = session.asked().about;
    const Piece* piece = find_piece(session.scene(), session.asked().piece);
    const PieceReport* report = find_piece(session.report(), session.asked().piece);
    const DialogCard card =
        draw_dialog_card(layout, widgets, question(about, std::to_string(session.asked().piece.value)), 640, 330);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
    if (!piece || !report) return;

    // The drawing keeps its kind to itself: no marks, no colour.
    PieceReport bare = *report;
    bare.measures.kinds.reset();
    bare.state = PieceState::counts;
    const double picture = widgets.px(170);
    widgets.draw(
        piece_card(piece->shape, bare, {card.inside.x, card.inside.y, picture, card.inside.height}, widgets.scale()));

    const double left = card.inside.x + picture + widgets.px(18);
    PixelBox rest{left, card.inside.y + widgets.px(8), card.inside.x + card.inside.width - left, card.inside.height};
    const bool kinds = about == Asked::by_sides || about == Asked::by_angles;
    const double used = kinds ? draw_kinds(*piece, about, rest, widgets, commands)
                              : draw_number(session, *piece, about, rest, widgets, commands);
    rest.y += used + widgets.px(16);
    rest.height -= used + widgets.px(24);
    if (problem_)
        write_problem(*problem_, rest, widgets);
    else if (const auto judgement = judged(session.scene().challenge, *piece, *report, about))
        widgets.write_lines(rest, judgement->says, Face::body,
                            judgement->judged == AnswerIs::right ? palette::met : palette::ink);
}

double AnswerDialog::draw_kinds(const Piece& piece, Asked about, const PixelBox& box, Widgets& widgets,
                                Commands& commands) {
    const std::optional<Kind>& now = about == Asked::by_sides ? piece.answers.by_sides : piece.answers.by_angles;
    const double gap = widgets.px(8);
    PixelBox button{box.x, box.y, (box.width - 2 * gap) / 3, widgets.px(palette::target_px)};
    for (const Kind kind : kinds_of(about)) {
        const Tone tone = now == kind ? Tone::strong : Tone::quiet;
        if (widgets.button(std::string("answer ") + name_of(kind), say(name_of(kind)), button, tone)) {
            Answers answers = piece.answers;
            (about == Asked::by_sides ? answers.by_sides : answers.by_angles) = kind;
            commands.push_back(Wish{SetAnswers{piece.number, answers}});
        }
        button.x += button.width + gap;
    }
    return button.height;
}

double AnswerDialog::draw_number(const Session& session, const Piece& piece, Asked about, const PixelBox& box,
                                 Widgets& widgets, Commands& commands) {
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(10);
    const PixelBox field{box.x, box.y, widgets.px(130), row};
    const bool entered = widgets.text_field("answer", typed_, field, true);
    const std::string unit =
        about == Asked::perimeter ? symbol_of(session.scene().challenge.units) : std::string(say("points"));
    widgets.write({field.x + field.width + gap, field.y + row / 2}, unit, Face::body, palette::ink);
    const double after = field.x + field.width + widgets.px(80);
    const PixelBox button{after, box.y, box.x + box.width - after, row};
    if (widgets.button("answer it", say("that is it"), button, Tone::quiet, !typed_.empty()) || entered)
        answer_number(session, piece, about, widgets, commands);
    return row;
}

void AnswerDialog::answer_number(const Session& session, const Piece& piece, Asked about, Widgets& widgets,
                                 Commands& commands) {
    Answers answers = piece.answers;
    problem_.reset();
    if (about == Asked::perimeter) {
        const Result<Length> length = parse_length(typed_, session.scene().challenge.units);
        if (length)
            answers.perimeter = *length;
        else
            problem_ = length.problem();
    } else {
        const Result<double> points = parse_number(typed_);
        if (points)
            answers.points = *points;
        else
            problem_ = points.problem();
    }
    // So that one can go on writing, or close by the next Enter.
    widgets.move_focus_to(problem_ ? "answer" : "close");
    if (!problem_) commands.push_back(Wish{SetAnswers{piece.number, answers}});
}

}  // namespace boughwork
