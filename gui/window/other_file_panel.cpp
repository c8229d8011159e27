// SPDX-License-Identifier: MIT
#include "gui/window/other_file_panel.h"

#include <cmath>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/session/other_pieces.h"
#include "gui/window/dialog_card.h"
#include "gui/window/drafted_triangle.h"
#include "gui/window/tick_box.h"

namespace boughwork {
namespace {

constexpr std::size_t in_a_row = 4;
constexpr double px_per_mm_on_cards = 1.1;

bool draw_card(const Session& session, const Piece& piece, bool ticked, const PixelBox& card, Widgets& widgets) {
    const bool pressed = widgets.area("bring in piece " + std::to_string(piece.number.value), card).pressed;
    widgets.sheet(card, palette::paper, widgets.px(8));
    widgets.outline(card, ticked ? palette::ink : palette::squared_line_bold,
                    ticked ? widgets.px(3) : 1.5 * widgets.scale(), widgets.px(8));
    const double line = widgets.lettering().line_px(Face::small);
    const double tick = widgets.px(24);
    const PixelBox picture = inset({card.x, card.y + tick, card.width, card.height - tick - 2 * line}, widgets.px(4));
    widgets.draw(piece_card(piece.shape, report_of_draft(session, piece.shape, piece.number), picture, widgets.scale(),
                            px_per_mm_on_cards * widgets.scale()));
    draw_tick(widgets, {card.x + widgets.px(20), card.y + widgets.px(20)}, tick, ticked);
    double top = card.y + card.height - 2 * line - widgets.px(3);
    for (const std::string& words : {sides_of_draft(session, piece.shape), piece.note}) {
        widgets.write({card.x + card.width / 2, top + line / 2},
                      widgets.fitted(words, Face::small, card.width - widgets.px(8)), Face::small, palette::ink,
                      TextAlign::centre);
        top += line;
    }
    return pressed;
}

}  // namespace

std::vector<Piece> OtherFilePanel::ticked() const {
    std::vector<Piece> chosen;
    for (std::size_t i = 0; i < ticked_.size(); ++i)
        if (ticked_[i]) chosen.push_back(pieces_->value()[i]);
    return chosen;
}

void OtherFilePanel::choose_file(const Session& session, const std::string& name) {
    name_ = name;
    pieces_ = pieces_of_file(session.files(), list_.path_of(name));
    ticked_.assign(*pieces_ ? pieces_->value().size() : 0, false);
}

void OtherFilePanel::draw(const Session& session, const PixelBox& box, Widgets& widgets) {
    if (pieces_) return draw_pieces(session, box, widgets);
    const double line = widgets.lettering().line_px(Face::small);
    widgets.write_lines({box.x, box.y, box.width, line}, say("Choose a plan file, and its pieces are shown here."),
                        Face::small, palette::ink);
    const double top = line + widgets.px(8);
    const PixelBox list{box.x, box.y + top, box.width, box.height - top};
    if (const auto name = list_.draw(session, list, name_, widgets)) choose_file(session, *name);
}

void OtherFilePanel::draw_pieces(const Session& session, const PixelBox& box, Widgets& widgets) {
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(10);
    PixelBox button{box.x + box.width, box.y, widgets.px(150), row};
    const auto pressed = [&](const char* label) {
        button.x -= button.width + (button.x < box.x + box.width ? gap : 0);
        return widgets.button(label, say(label), button);
    };
    const bool other = pressed(phrase("another file"));
    const bool any = *pieces_ && !ticked_.empty();
    if (any && pressed(phrase("tick all"))) ticked_.assign(ticked_.size(), true);
    const double room = button.x - gap - box.x;
    widgets.write({box.x, box.y + row / 2}, widgets.fitted(name_, Face::body, room), Face::body, palette::ink);
    const double top = box.y + row + gap;
    const PixelBox list{box.x, top, box.width, box.y + box.height - top};
    if (!*pieces_) {
        write_problem(pieces_->problem(), list, widgets);
    } else if (ticked_.empty()) {
        widgets.write_lines(list, say("There are no pieces in this file."), Face::body, palette::ink);
    } else {
        const std::vector<Piece>& pieces = pieces_->value();
        const double ring = widgets.px(6);
        const double height = widgets.px(160);
        const auto rows = std::ceil(static_cast<double>(pieces.size()) / in_a_row);
        const Vec2 start = widgets.begin_scroll("pieces of the file", list, rows * (height + gap) + ring);
        const double width = (list.width - widgets.px(18) - ring - in_a_row * gap) / in_a_row;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const PixelBox card{start.x + ring + static_cast<double>(i % in_a_row) * (width + gap),
                                start.y + ring + static_cast<double>(i / in_a_row) * (height + gap), width, height};
            if (draw_card(session, pieces[i], ticked_[i], card, widgets)) ticked_[i] = !ticked_[i];
        }
        widgets.end_scroll();
    }
    if (other) pieces_.reset();
    if (other) ticked_.clear();
}

}  // namespace boughwork
