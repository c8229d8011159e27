// SPDX-License-Identifier: MIT
#include "gui/window/ready_pieces_panel.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/window/drafted_triangle.h"
#include "gui/window/layout.h"
#include "rules/ready_pieces.h"

namespace boughwork {
namespace {

constexpr std::size_t sizes_in_a_row = 3;  // small, middle, large

std::string label_of(const ReadyPiece& piece) {
    static const char* const sizes[] = {"small", "middle", "large"};
    return std::string("ready ") + name_of(piece.by_sides) + " " + name_of(piece.by_angles) + " " +
           sizes[static_cast<std::size_t>(piece.size)];
}

/// At which all of them fit, so that sizes can be compared.
double px_per_mm_for_all(const std::vector<ReadyPiece>& pieces, const PixelBox& picture, double margin_px) {
    double least = 1e9;
    for (const ReadyPiece& piece : pieces) {
        const std::vector<Vec2> corners = corners_within(piece.triangle, picture, margin_px);
        least = std::min(least, distance(corners[0], corners[1]) / to_mm(piece.triangle.sides[0]));
    }
    return least;
}

bool draw_ready(const Session& session, const ReadyPiece& piece, const PixelBox& card, Widgets& widgets) {
    const bool pressed = widgets.area(label_of(piece), card).pressed;
    widgets.sheet(card, palette::paper, widgets.px(8));
    widgets.outline(card, palette::squared_line_bold, 1.5 * widgets.scale(), widgets.px(8));
    const double line = widgets.lettering().line_px(Face::small);
    const PixelBox picture = inset({card.x, card.y, card.width, card.height - line}, widgets.px(4));
    const std::vector<ReadyPiece>& all = ready_pieces(session.scene().challenge.units);
    widgets.draw(piece_card(piece.triangle, report_of_draft(session, piece.triangle, {}), picture, widgets.scale(),
                            px_per_mm_for_all(all, picture, widgets.px(8))));
    widgets.write({card.x + card.width / 2, card.y + card.height - line / 2 - widgets.px(3)},
                  widgets.fitted(sides_of_draft(session, piece.triangle), Face::small, card.width - widgets.px(8)),
                  Face::small, palette::ink, TextAlign::centre);
    return pressed;
}

}  // namespace

void ReadyPiecesPanel::draw(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const double line = widgets.lettering().line_px(Face::small);
    const std::string said = put_ && find_piece(session.scene(), *put_)
                                 ? say("Piece {0} lies in the envelope now.", {std::to_string(put_->value)})
                                 : say("Press a piece, and a copy of it goes into the envelope.");
    widgets.write_lines({box.x, box.y, box.width, 2 * line}, said, Face::small, palette::ink);

    const double top = box.y + 2 * line;
    const PixelBox list{box.x, top, box.width, box.y + box.height - top};
    const std::vector<ReadyPiece>& pieces = ready_pieces(session.scene().challenge.units);
    const double gap = widgets.px(10);
    const double ring = widgets.px(6);
    const double row = widgets.px(142);
    const double name_width = widgets.px(110);
    const auto rows = static_cast<double>(pieces.size() / sizes_in_a_row);
    const Vec2 start = widgets.begin_scroll("ready pieces", list, rows * (row + gap) + ring);
    const double width = (list.width - widgets.px(18) - name_width - ring - 3 * gap) / 3;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const double y = start.y + ring + static_cast<double>(i / sizes_in_a_row) * (row + gap);
        const double x = start.x + ring + name_width + static_cast<double>(i % sizes_in_a_row) * (width + gap);
        if (i % sizes_in_a_row == 0)
            widgets.write_lines({start.x + ring, y + row / 2 - line, name_width - gap, 3 * line},
                                words_on_draft(session, pieces[i].triangle).name, Face::small, palette::ink);
        if (!draw_ready(session, pieces[i], {x, y, width, row}, widgets)) continue;
        put_ = next_number(session.scene());
        commands.push_back(Wish{AddPiece{pieces[i].triangle, ""}});
    }
    widgets.end_scroll();
}

}  // namespace boughwork
