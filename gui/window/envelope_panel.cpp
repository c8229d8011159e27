// SPDX-License-Identifier: MIT
#include "gui/window/envelope_panel.h"

#include <cmath>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/picture/report_words.h"
#include "gui/picture/told_report.h"

namespace boughwork {
namespace {

/// Pieces of usual sizes are drawn alike large, so that they can be compared; longer ones give way.
constexpr double px_per_mm_on_cards = 1.1;

void draw_envelope(const PixelBox& box, Widgets& widgets) {
    widgets.sheet(box, palette::envelope);
    const double flap = widgets.px(40);
    widgets.draw({Stroke{
        .points = {{box.x + 2, box.y + 2}, {box.x + box.width / 2, box.y + flap}, {box.x + box.width - 2, box.y + 2}},
        .colour = palette::envelope_line,
        .width = 2 * widgets.scale()}});
    widgets.write({box.x + box.width / 2, box.y + widgets.px(17)}, say("Envelope"), Face::small, palette::ink,
                  TextAlign::centre);
}

}  // namespace

std::string sides_in_words(const PieceReport& piece, const Challenge& challenge) {
    std::string words;
    for (const std::int64_t steps : piece.measures.sides_in_steps)
        words += (words.empty() ? "" : " · ") + measured_words(steps, challenge);
    return words + " " + symbol_of(challenge.units);
}

void EnvelopePanel::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const PixelBox& box = layout.envelope;
    draw_envelope(box, widgets);
    const double pad = widgets.px(14);
    const PixelBox make{box.x + pad, box.y + widgets.px(48), box.width - 2 * pad, widgets.px(palette::target_px)};
    command_button(session, widgets, commands, Action::make_a_piece, make);

    if (!session.held()) taken_.reset();
    std::vector<const PieceReport*> waiting;
    for (const PieceReport& piece : session.report().pieces)
        if (piece.state == PieceState::in_the_envelope || piece.number == taken_) waiting.push_back(&piece);

    const double top = make.y + make.height + widgets.px(12);
    const PixelBox list{make.x - widgets.px(6), top, make.width + widgets.px(12), box.y + box.height - pad - top};
    if (waiting.empty()) {
        widgets.write_lines({make.x, top + widgets.px(8), make.width, list.height}, say("Nothing waits here."),
                            Face::small, palette::ink);
        return;
    }
    const double pitch = widgets.px(122);
    const double ring = widgets.px(6);  // room around a card for the ring of what has the keys
    const Vec2 start = widgets.begin_scroll("envelope", list, static_cast<double>(waiting.size()) * pitch + ring);
    PixelBox card{start.x + ring, start.y + ring, list.width - widgets.px(22), pitch - widgets.px(10)};
    for (const PieceReport* piece : waiting) {
        const Handling touch = widgets.area("envelope piece " + std::to_string(piece->number.value), card);
        follow_hand(session, layout, piece->number, touch, widgets, commands);
        draw_card(session, *piece, card, widgets);
        if (chosen_ != session.chosen_piece() && piece->number == session.chosen_piece()) widgets.scroll_to(card);
        card.y += pitch;
    }
    widgets.end_scroll();
    chosen_ = session.chosen_piece();
}

void EnvelopePanel::draw_card(const Session& session, const PieceReport& piece, const PixelBox& box, Widgets& widgets) {
    if (piece.number == taken_) {
        widgets.outline(box, palette::envelope_line, 1.5 * widgets.scale(), widgets.px(8));
        return;
    }
    widgets.sheet(box, palette::paper, widgets.px(8));
    if (session.chosen_piece() == piece.number) widgets.outline(box, palette::ink, widgets.px(3), widgets.px(8));
    const double words_height = widgets.px(26);
    const PixelBox picture = inset({box.x, box.y, box.width, box.height - words_height}, widgets.px(8));
    const Piece& made = *find_piece(session.scene(), piece.number);
    widgets.draw(piece_card(made.shape, as_told(session.scene(), made, piece), picture, widgets.scale(),
                            px_per_mm_on_cards * widgets.scale()));
    const double pad = widgets.px(12);
    if (!is_told(session.scene(), Mathematics::lengths, made)) return;
    const std::string sides =
        widgets.fitted(sides_in_words(piece, session.scene().challenge), Face::small, box.width - 2 * pad);
    widgets.write({box.x + box.width - pad, box.y + box.height - words_height / 2}, sides, Face::small, palette::ink,
                  TextAlign::right);
}

void EnvelopePanel::follow_hand(const Session& session, const Layout& layout, PieceNumber piece, const Handling& touch,
                                Widgets& widgets, Commands& commands) {
    const Vec2 pointer = widgets.pointer_px();
    const Camera& camera = session.camera();
    if (touch.began) {
        hand_.come_down(pointer);
        pulled_out_ = false;
    }
    if (touch.pressed && !(touch.ended && hand_.moving())) commands.push_back(Choose{PickedPiece{piece}});
    if (!touch.held && !touch.ended) return;

    const Vec2 by = hand_.move_to(pointer, layout.scale);
    if (touch.held && hand_.moving() && !pulled_out_) {
        pulled_out_ = true;
        taken_ = piece;
        commands.push_back(Grab{PickedPiece{piece}, to_mm(camera, pointer)});
    }
    if (taken_ != piece) return;
    const bool on_paper = contains(layout.paper, pointer);
    if (by != Vec2{}) commands.push_back(HoldAt{to_mm(camera, pointer), widgets.shift_down(), on_paper});
    if (touch.ended) commands.push_back(LetGo{});
}

}  // namespace boughwork
