// SPDX-License-Identifier: MIT
#include "gui/window/small_dialogs.h"

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

struct ReplaceWords {
    std::string title;
    std::string asks;  ///< After the file's path.
    std::string yes;
};

ReplaceWords words_for(InTheWay found) {
    switch (found) {
        case InTheWay::changed:
            return {"The file has changed",
                    " holds something else than when you opened or saved it: somebody saved it from another window or "
                    "program. Nothing was written. Shall this tree take its place? What the file holds now would be "
                    "lost.",
                    "replace it"};
        case InTheWay::gone:
            return {"The file is gone",
                    " is not there any more. Perhaps it was moved, or its stick was pulled out. Your tree is still "
                    "here. Shall the file be made again?",
                    "make it again"};
        default:
            return {"There is a file of that name",
                    " is there already. Shall this tree take its place? What the file holds now would be lost.",
                    "replace it"};
    }
}

}  // namespace

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
    const ReplaceWords words = words_for(session.in_the_way());
    const DialogCard card = draw_dialog_card(layout, widgets, words.title, 600, 280);
    widgets.write_lines(card.inside, session.replace_path() + words.asks, Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    const bool for_class = session.replaces_for_class();
    if (foot.button(words.yes)) {
        if (for_class)
            commands.push_back(SaveForClass{session.replace_path(), true});
        else
            commands.push_back(SaveFile{session.replace_path(), true});
    }
    if (foot.button("another name", Tone::strong))
        commands.push_back(Press{for_class ? Action::save_for_class : Action::save_as});
    if (foot.button("never mind")) commands.push_back(CloseDialog{});
}

void draw_break_seal_dialog(const Session&, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("Break the seal?"), 600, 280);
    widgets.write_lines(
        card.inside,
        say("This is the class's challenge. With the seal broken it can be changed. Once it is changed, its "
            "fingerprint is another one: that tells."),
        Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("break it"))) commands.push_back(BreakSeal{});
    if (foot.button(phrase("keep the seal"), Tone::strong)) commands.push_back(CloseDialog{});
}

void draw_leave_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, "Not everything is saved", 620, 320);
    PixelBox words = card.inside;
    words.height /= 2;
    widgets.write_lines(words, "If the program ends now, the changes since the last save are lost.", Face::body,
                        palette::ink);
    words.y += words.height;
    if (session.problem()) write_problem(*session.problem(), words, widgets);
    Foot foot(card.foot, widgets);
    if (foot.button("end and lose them")) commands.push_back(Leave{true});
    if (foot.button("save as", Tone::strong)) commands.push_back(Press{Action::save_as});
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
