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
    std::string asks;
    const char* yes;  ///< A phrase.
};

ReplaceWords words_for(InTheWay found, const std::string& path) {
    switch (found) {
        case InTheWay::changed:
            return {say("The file has changed"),
                    say("{0} holds something else than when you opened or saved it: somebody saved it from another "
                        "window or program. Nothing was written. Shall this tree take its place? What the file holds "
                        "now would be lost.",
                        {path}),
                    phrase("replace it")};
        case InTheWay::gone:
            return {say("The file is gone"),
                    say("{0} is not there any more. Perhaps it was moved, or its stick was pulled out. Your tree is "
                        "still here. Shall the file be made again?",
                        {path}),
                    phrase("make it again")};
        default:
            return {say("There is a file of that name"),
                    say("{0} is there already. Shall this tree take its place? What the file holds now would be lost.",
                        {path}),
                    phrase("replace it")};
    }
}

}  // namespace

void RenameDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("Another name for this plan"), 520, 250);
    PixelBox field = card.inside;
    field.height = widgets.px(palette::target_px);
    const bool entered = widgets.text_field("plan name", name_, field, true);
    const double below = field.y + field.height + widgets.px(8);
    if (session.problem())
        write_problem(*session.problem(), {field.x, below, field.width, card.inside.y + card.inside.height - below},
                      widgets);

    Foot foot(card.foot, widgets);
    const bool pressed = foot.button(phrase("rename"), Tone::strong, !name_.empty());
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
    // The session closes the dialog when the name could be given.
    if ((pressed || entered) && !name_.empty()) commands.push_back(Wish{RenamePlan{name_}});
}

void draw_replace_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const ReplaceWords words = words_for(session.in_the_way(), session.replace_path());
    const DialogCard card = draw_dialog_card(layout, widgets, words.title, 600, 280);
    widgets.write_lines(card.inside, words.asks, Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    const bool for_class = session.replaces_for_class();
    if (foot.button(words.yes)) {
        if (for_class)
            commands.push_back(SaveForClass{session.replace_path(), true});
        else
            commands.push_back(SaveFile{session.replace_path(), true});
    }
    if (foot.button(phrase("another name"), Tone::strong))
        commands.push_back(Press{for_class ? Action::save_for_class : Action::save_as});
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
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
    const DialogCard card = draw_dialog_card(layout, widgets, say("Not everything is saved"), 620, 320);
    PixelBox words = card.inside;
    words.height /= 2;
    widgets.write_lines(words, say("If the program ends now, the changes since the last save are lost."), Face::body,
                        palette::ink);
    words.y += words.height;
    if (session.problem()) write_problem(*session.problem(), words, widgets);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("end and lose them"))) commands.push_back(Leave{true});
    if (foot.button(phrase("save as"), Tone::strong)) commands.push_back(Press{Action::save_as});
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
}

void draw_recover_dialog(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, say("A copy from before was found"), 600, 280);
    const std::string title = session.recovered() ? session.recovered()->title : "";
    const auto pieces = static_cast<long long>(session.recovered() ? session.recovered()->pieces.size() : 0);
    widgets.write_lines(card.inside,
                        say("Last time, \"{0}\" ({1}) was not saved before the program ended. A copy was kept. Shall "
                            "it be taken back?",
                            {title, counted(pieces, phrase("{0} piece"), phrase("{0} pieces"))}),
                        Face::body, palette::ink);
    Foot foot(card.foot, widgets);
    if (foot.button(phrase("take it back"), Tone::strong)) commands.push_back(Recover{true});
    if (foot.button(phrase("throw it away"))) commands.push_back(Recover{false});
}

}  // namespace boughwork
