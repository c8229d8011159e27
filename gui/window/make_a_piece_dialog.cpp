// SPDX-License-Identifier: MIT
#include "gui/window/make_a_piece_dialog.h"

#include <cassert>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/session/other_pieces.h"
#include "gui/session/work.h"
#include "gui/window/typed_piece_panel.h"

namespace boughwork {
namespace {

struct WayRow {
    Way way;
    const char* name;
};

constexpr WayRow ways[] = {
    {Way::three_sides, phrase("three sides")},
    {Way::angle_between, phrase("two sides and the angle between")},
    {Way::two_angles, phrase("a side and its two angles")},
    {Way::angle_opposite, phrase("two sides and an angle opposite one")},
    {Way::corners, phrase("pull its corners")},
    {Way::ready, phrase("ready pieces")},
    {Way::file, phrase("from another file")},
};

bool makes_one(Way way) { return way != Way::ready && way != Way::file; }

}  // namespace

MakeAPieceDialog::MakeAPieceDialog(const Session& session, For purpose) : other_file_(session) {
    const Challenge& challenge = session.scene().challenge;
    draft_ = new_draft(challenge);
    if (purpose == For::new_piece) return;
    assert(session.chosen_piece() && "the row of change_piece asks for a chosen triangle");
    changes_ = session.chosen_piece();
    draft_ = draft_of(std::get<Triangle>(find_piece(session.scene(), *changes_)->shape), challenge);
}

bool MakeAPieceDialog::follow_arrow(Vec2 arrow) {
    if (draft_.way != Way::corners) return false;
    pulled_.follow_arrow(arrow);
    return true;
}

void MakeAPieceDialog::draw_ways(const Session& session, const PixelBox& box, Widgets& widgets) {
    PixelBox button{box.x, box.y, box.width, widgets.px(palette::target_px + 6)};
    for (const WayRow& row : ways) {
        if (changes_ && !makes_one(row.way)) continue;
        const bool now = draft_.way == row.way;
        if (widgets.button(row.name, say(row.name), button, Tone::tab)) {
            if (!now) draft_ = turned_to(draft_, row.way, session.scene().challenge);
            widgets.drop_focus();  // so that the first field has the keys
        }
        if (now) widgets.outline(button, palette::ink, widgets.px(3), widgets.px(10));
        button.y += button.height + widgets.px(8);
    }
}

void MakeAPieceDialog::finish(const Session& session, const Triangle& triangle, Commands& commands) const {
    if (changes_)
        commands.push_back(reshaped(session.scene(), session.report(), *changes_, triangle));
    else
        commands.push_back(Wish{AddPiece{triangle, ""}});
    commands.push_back(CloseDialog{});
}

void MakeAPieceDialog::draw_foot(const Session& session, const PixelBox& box, bool entered, Widgets& widgets,
                                 Commands& commands) {
    Foot foot(box, widgets);
    if (draft_.way == Way::ready) {
        if (foot.button(phrase("close"), Tone::strong)) commands.push_back(CloseDialog{});
        return;
    }
    if (draft_.way == Way::file) {
        const std::vector<Piece> ticked = other_file_.ticked();
        if (foot.button(phrase("bring them in"), Tone::strong, !ticked.empty())) {
            commands.push_back(brought_in(ticked));
            commands.push_back(CloseDialog{});
        }
        if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
        return;
    }
    const std::optional<Triangle> triangle = chosen_triangle(draft_, session.scene().challenge);
    const bool make =
        foot.button(changes_ ? phrase("change it") : phrase("make it"), Tone::strong, triangle.has_value());
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
    if (triangle && (make || entered)) {
        finish(session, *triangle, commands);
    } else if (entered) {
        widgets.move_focus(1);
    }
}

void MakeAPieceDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    if (changes_ && !find_piece(session.scene(), *changes_)) return commands.push_back(CloseDialog{});
    const std::string named = std::to_string(number(session).value);
    const DialogCard card = draw_dialog_card(
        layout, widgets, changes_ ? say("Change piece {0}", {named}) : say("Make piece {0}", {named}), 960, 640);
    const double ways_width = widgets.px(214);
    const double left = card.inside.x + ways_width + widgets.px(18);
    const PixelBox panel{left, card.inside.y, card.inside.x + card.inside.width - left, card.inside.height};
    draw_ways(session, {card.inside.x, card.inside.y, ways_width, card.inside.height}, widgets);
    bool entered = false;
    switch (draft_.way) {
        case Way::corners: pulled_.draw(session, number(session), panel, draft_, widgets); break;
        case Way::ready: ready_.draw(session, panel, widgets, commands); break;
        case Way::file: other_file_.draw(session, panel, widgets); break;
        default: entered = draw_typed_piece(session, number(session), panel, draft_, widgets); break;
    }
    draw_foot(session, card.foot, entered, widgets, commands);
}

}  // namespace boughwork
