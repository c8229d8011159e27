// SPDX-License-Identifier: MIT
#include "gui/window/dialogs.h"

#include "gui/window/help_dialog.h"
#include "gui/window/table_dialogs.h"
#include "gui/window/tour_dialog.h"

namespace boughwork {

void Dialogs::begin(const Session& session) {
    shown_ = session.dialog();
    switch (shown_) {
        case Dialog::make_a_piece: own_ = MakeAPieceDialog(session, MakeAPieceDialog::For::new_piece); break;
        case Dialog::change_piece: own_ = MakeAPieceDialog(session, MakeAPieceDialog::For::chosen_piece); break;
        case Dialog::open: own_ = FileDialog(session, FileDialog::For::open); break;
        case Dialog::save_as: own_ = FileDialog(session, FileDialog::For::save); break;
        case Dialog::save_for_class: own_ = FileDialog(session, FileDialog::For::save_for_class); break;
        case Dialog::take_challenge: own_ = FileDialog(session, FileDialog::For::take_challenge); break;
        case Dialog::rename_plan: own_ = RenameDialog(session); break;
        case Dialog::guide: own_ = GuideDialog{}; break;
        case Dialog::answer: own_ = AnswerDialog(session); break;
        case Dialog::save_table: own_ = FileDialog(session, FileDialog::For::save_table); break;
        case Dialog::take_in_table: own_ = FileDialog(session, FileDialog::For::take_in_table); break;
        default: own_ = {}; break;
    }
}

bool Dialogs::follow_arrow(Vec2 arrow) {
    auto* make = std::get_if<MakeAPieceDialog>(&own_);
    return make && make->follow_arrow(arrow);
}

void Dialogs::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    if (shown_ != session.dialog()) {
        begin(session);
        widgets.drop_focus();
    }
    switch (shown_) {
        case Dialog::none: return;
        case Dialog::break_seal: return draw_break_seal_dialog(session, layout, widgets, commands);
        case Dialog::help: return draw_help_dialog(session, layout, widgets, commands);
        case Dialog::recover: return draw_recover_dialog(session, layout, widgets, commands);
        case Dialog::replace_file: return draw_replace_dialog(session, layout, widgets, commands);
        case Dialog::tour: return draw_tour(session, layout, widgets, commands);
        case Dialog::leave: return draw_leave_dialog(session, layout, widgets, commands);
        case Dialog::answers: return draw_answers_dialog(session, layout, widgets, commands);
        case Dialog::table_taken_in: return draw_taken_in_dialog(session, layout, widgets, commands);
        case Dialog::replace_table: return draw_replace_table_dialog(session, layout, widgets, commands);
        default: break;
    }
    if (auto* make = std::get_if<MakeAPieceDialog>(&own_)) make->draw(session, layout, widgets, commands);
    if (auto* file = std::get_if<FileDialog>(&own_)) file->draw(session, layout, widgets, commands);
    if (auto* answer = std::get_if<AnswerDialog>(&own_)) answer->draw(session, layout, widgets, commands);
    if (auto* guide = std::get_if<GuideDialog>(&own_)) guide->draw(session, layout, widgets, commands);
    if (auto* rename = std::get_if<RenameDialog>(&own_)) rename->draw(session, layout, widgets, commands);
}

}  // namespace boughwork
