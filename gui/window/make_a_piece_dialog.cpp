// SPDX-License-Identifier: MIT
#include "gui/window/make_a_piece_dialog.h"

#include "engine/geometry/shape.h"
#include "engine/typed_length.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/window/dialog_card.h"
#include "rules/description.h"
#include "rules/measure.h"

namespace boughwork {
namespace {

/// The triangle of the typed sides, or the first thing that stands in its way.
Result<Triangle> triangle_of(const std::array<std::string, 3>& typed, Unit unit) {
    Triangle triangle;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        const Result<Length> side = parse_length(typed[i], unit);
        if (!side) return side.problem();
        triangle.sides[i] = *side;
    }
    if (const Result<Done> can_be = possible(triangle); !can_be) return can_be.problem();
    return triangle;
}

std::string first_empty(const std::array<std::string, 3>& typed) {
    for (std::size_t i = 0; i < typed.size(); ++i)
        if (typed[i].empty()) return "side " + std::to_string(i + 1);
    return "";
}

void draw_triangle(const Session& session, const Triangle& triangle, const PixelBox& box, Widgets& widgets) {
    const PieceReport report{.number = next_number(session.scene()),
                             .measures = measure(triangle, session.scene().challenge)};
    const Description told = describe(triangle, report.measures, session.scene().challenge);
    const double words_height = widgets.lettering().line_px(Face::body);
    const double notes_height = widgets.lettering().line_px(Face::small) * 3;
    const PixelBox picture = inset({box.x, box.y, box.width, box.height - words_height - notes_height}, widgets.px(14));
    widgets.draw(piece_card(triangle, report, picture, widgets.scale()));

    double top = box.y + box.height - words_height - notes_height;
    widgets.write({box.x + box.width / 2, top + words_height / 2}, told.name, Face::body, palette::ink,
                  TextAlign::centre);
    top += words_height;
    std::string notes;
    if (report.measures.kinds && report.measures.kinds->close_call) notes = "A close call: nearly a right angle.";
    for (const std::string& note : told.notes) notes += (notes.empty() ? "" : " ") + note + ".";
    widgets.write_lines({box.x + widgets.px(12), top, box.width - widgets.px(24), notes_height}, notes, Face::small,
                        palette::quiet_text);
}

}  // namespace

void MakeAPieceDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const Unit unit = session.scene().challenge.units;
    const DialogCard card = draw_dialog_card(layout, widgets, "Make a piece", 720, 430);

    const double row = widgets.px(palette::target_px);
    const double left_width = widgets.px(264);
    PixelBox field{card.inside.x + widgets.px(76), card.inside.y + widgets.px(6), widgets.px(140), row};
    bool entered = false;
    for (std::size_t i = 0; i < typed_.size(); ++i) {
        const std::string label = "side " + std::to_string(i + 1);
        widgets.write({card.inside.x, field.y + row / 2}, label, Face::body, palette::ink);
        entered = widgets.text_field(label, typed_[i], field, i == 0) || entered;
        widgets.write({field.x + field.width + widgets.px(10), field.y + row / 2}, symbol_of(unit), Face::body,
                      palette::ink);
        field.y += row + widgets.px(14);
    }
    const std::string example = unit == Unit::in ? "Such as 3, 2 1/2 or 2.5." : "Such as 8 or 7.5.";
    widgets.write_lines({card.inside.x, field.y, left_width, row}, example, Face::small, palette::quiet_text);

    const PixelBox picture{card.inside.x + left_width + widgets.px(16), card.inside.y,
                           card.inside.width - left_width - widgets.px(16), card.inside.height};
    widgets.outline(picture, palette::squared_line_bold, 1.5 * widgets.scale(), widgets.px(10));
    const std::string missing = first_empty(typed_);
    const Result<Triangle> triangle = triangle_of(typed_, unit);
    if (triangle) {
        draw_triangle(session, *triangle, picture, widgets);
    } else if (missing.empty()) {
        write_problem(triangle.problem(), inset(picture, widgets.px(18)), widgets);
    } else {
        widgets.write_lines(inset(picture, widgets.px(18)), "Type three sides, and the triangle is drawn here.",
                            Face::small, palette::quiet_text);
    }

    Foot foot(card.foot, widgets);
    const bool make = foot.button("make it", Tone::strong, static_cast<bool>(triangle));
    if (foot.button("never mind")) commands.push_back(CloseDialog{});
    if (triangle && (make || entered)) {
        commands.push_back(Wish{AddPiece{*triangle}});
        commands.push_back(CloseDialog{});
    } else if (entered) {
        widgets.move_focus(1);
    }
}

}  // namespace boughwork
