// SPDX-License-Identifier: MIT
#include "gui/window/small_dialogs.h"

#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"
#include "rules/wording.h"

namespace boughwork {

void RenameDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, "Another name for this plan", 520, 250);
    PixelBox field = card.inside;
    field.height = widgets.px(palette::target_px);
    const bool entered = widgets.text_field("plan name", name_, field, true);
    const double below = field.y + field.height + widgets.px(8);
    if (session.problem())
        write_problem(*session.problem(), {field.x, below, field.width, card.inside.y + card.inside.height - below},
                      widgets);

    Foot foot(card.foot, widgets);
    const bool pressed = foot.button("rename", Tone::strong, !name_.empty());
    if (foot.button("never mind")) commands.push_back(CloseDialog{});
    // The session closes the dialog when the name could be given.
    if ((pressed || entered) && !name_.empty()) commands.push_back(Wish{RenamePlan{name_}});
}

void draw_replace_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, "There is a file of that name", 560, 260);
    widgets.write_lines(card.inside,
                        session.replace_path() +
                            " is there already. Shall this tree take its place? What the file "
                            "holds now would be lost.",
                        Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    if (foot.button("replace it")) commands.push_back(SaveFile{session.replace_path(), true});
    if (foot.button("another name", Tone::strong)) commands.push_back(Press{Action::save_as});
    if (foot.button("never mind")) commands.push_back(CloseDialog{});
}

void draw_recover_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, "A copy from before was found", 600, 280);
    const std::string title = session.recovered() ? session.recovered()->title : "";
    const std::size_t pieces = session.recovered() ? session.recovered()->pieces.size() : 0;
    widgets.write_lines(card.inside,
                        "Last time, \"" + title + "\" (" + counted(static_cast<long long>(pieces), "piece", "pieces") +
                            ") was not saved before the program ended. A copy was kept. Shall it be taken back?",
                        Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    if (foot.button("take it back", Tone::strong)) commands.push_back(Recover{true});
    if (foot.button("throw it away")) commands.push_back(Recover{false});
}

}  // namespace boughwork
