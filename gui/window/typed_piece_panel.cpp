// SPDX-License-Identifier: MIT
#include "gui/window/typed_piece_panel.h"

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"
#include "gui/window/layout.h"
#include "gui/window/tick_box.h"

namespace boughwork {
namespace {

std::string label_of(PieceField field) {
    switch (field) {
        case PieceField::side_1: return "side 1";
        case PieceField::side_2: return "side 2";
        case PieceField::side_3: return "side 3";
        case PieceField::angle_between: return "angle between";
        case PieceField::angle_1: return "angle 1";
        case PieceField::angle_2: return "angle 2";
        case PieceField::angle_opposite: return "angle opposite";
    }
    return "";
}

std::string words_for(PieceField field) {
    switch (field) {
        case PieceField::side_1: return say("side {0}", {"1"});
        case PieceField::side_2: return say("side {0}", {"2"});
        case PieceField::side_3: return say("side {0}", {"3"});
        case PieceField::angle_between: return say("angle between");
        case PieceField::angle_1: return say("angle {0}", {"1"});
        case PieceField::angle_2: return say("angle {0}", {"2"});
        case PieceField::angle_opposite: return say("angle opposite side 1");
    }
    return "";
}

/// Of a drawn triangle: what was typed, and where it is.
PartNames names_for(Way way) {
    PartNames names;
    for (const PieceField field : fields_of(way)) {
        switch (field) {
            case PieceField::side_1: names.sides[0] = words_for(field); break;
            case PieceField::side_2: names.sides[1] = words_for(field); break;
            case PieceField::side_3: names.sides[2] = words_for(field); break;
            case PieceField::angle_1: names.corners[0] = words_for(field); break;
            case PieceField::angle_2: names.corners[1] = words_for(field); break;
            case PieceField::angle_between: names.corners[1] = say("angle"); break;
            case PieceField::angle_opposite: names.corners[2] = say("angle"); break;
        }
    }
    return names;
}

bool draw_fields(const Session& session, const PixelBox& box, PieceDraft& draft, Widgets& widgets) {
    const Unit unit = session.scene().challenge.units;
    const double line = widgets.lettering().line_px(Face::body);
    const double row = widgets.px(palette::target_px);
    double top = box.y;
    bool entered = false;
    bool first = true;
    for (const PieceField field : fields_of(draft.way)) {
        const std::string words = widgets.fitted(words_for(field), Face::body, box.width);
        widgets.write({box.x, top + line / 2}, words, Face::body, palette::ink);
        top += line;
        const PixelBox typed{box.x, top, widgets.px(130), row};
        entered = widgets.text_field(label_of(field), draft.text(field), typed, first) || entered;
        first = false;
        widgets.write({typed.x + typed.width + widgets.px(10), top + row / 2}, is_angle(field) ? "°" : symbol_of(unit),
                      Face::body, palette::ink);
        top += row + widgets.px(10);
    }
    if (draft.way != Way::three_sides) {
        const PixelBox exact{box.x, top, box.width, row};
        if (tick_box(widgets, "exact lengths", exact_in_words(session.scene().challenge), draft.exact, exact))
            draft.exact = !draft.exact;
        top += row + widgets.px(6);
    }
    const std::string example = unit == Unit::in ? say("Such as 3, 2 1/2 or 2.5.") : say("Such as 8 or 7.5.");
    widgets.write_lines({box.x, top, box.width, box.y + box.height - top}, example, Face::small, palette::quiet_text);
    return entered;
}

/// Side by side; the chosen one has a thick outline and a tick.
void draw_two(const Session& session, const std::vector<Triangle>& two, PieceNumber number, const PixelBox& box,
              PieceDraft& draft, Widgets& widgets) {
    const double line = widgets.lettering().line_px(Face::body);
    widgets.write_lines({box.x + widgets.px(12), box.y, box.width - widgets.px(24), 2 * line},
                        say("There are two such triangles. Choose one."), Face::body, palette::ink);
    const double gap = widgets.px(12);
    const double top = box.y + 2 * line + gap;
    const double width = (box.width - 3 * gap) / 2;
    const char* const labels[] = {"the first", "the second"};
    for (std::size_t i = 0; i < 2; ++i) {
        const PixelBox card{box.x + gap + static_cast<double>(i) * (width + gap), top, width,
                            box.y + box.height - gap - top};
        const bool chosen = draft.choice == i;
        if (widgets.area(labels[i], card).pressed) draft.choice = i;
        widgets.outline(card, palette::ink, chosen ? widgets.px(3) : widgets.scale(), widgets.px(8));
        const PixelBox below = inset(card, widgets.px(6));
        draw_tick(widgets, {below.x + widgets.px(16), below.y + widgets.px(16)}, widgets.px(24), chosen);
        draw_drafted(session, {two[i], number, names_for(draft.way), rounding_note(draft, two[i]), two[1 - i]}, below,
                     widgets);
    }
}

void draw_picture(const Session& session, PieceNumber number, const PixelBox& box, PieceDraft& draft,
                  Widgets& widgets) {
    widgets.outline(box, palette::squared_line_bold, 1.5 * widgets.scale(), widgets.px(10));
    const PixelBox inside = inset(box, widgets.px(12));
    const double line = widgets.lettering().line_px(Face::small);
    const auto triangles = triangles_of(draft, session.scene().challenge);
    if (triangles && triangles->size() == 2)
        return draw_two(session, *triangles, number, inset(box, widgets.px(6)), draft, widgets);
    if (triangles)
        return draw_drafted(
            session, {triangles->front(), number, names_for(draft.way), rounding_note(draft, triangles->front())},
            inside, widgets);
    draw_sample(names_for(draft.way), {inside.x, inside.y, inside.width, inside.height - 5 * line}, widgets);
    const PixelBox below{inside.x, inside.y + inside.height - 5 * line, inside.width, 5 * line};
    if (first_empty(draft))
        widgets.write_lines(below, say("Type all three, and the triangle is drawn here."), Face::small,
                            palette::quiet_text);
    else
        write_problem(triangles.problem(), below, widgets);
}

}  // namespace

bool draw_typed_piece(const Session& session, PieceNumber number, const PixelBox& box, PieceDraft& draft,
                      Widgets& widgets) {
    const double fields_width = widgets.px(224);
    const double gap = widgets.px(16);
    const bool entered = draw_fields(session, {box.x, box.y, fields_width, box.height}, draft, widgets);
    const double left = box.x + fields_width + gap;
    draw_picture(session, number, {left, box.y, box.x + box.width - left, box.height}, draft, widgets);
    return entered;
}

}  // namespace boughwork
