// SPDX-License-Identifier: MIT
#include "gui/window/file_dialog.h"

#include <filesystem>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

namespace paths = std::filesystem;  // for taking paths apart; the disk is reached through Files

/// "Fair tree, table 4" -> "fair_tree_table_4.bough.json".
std::string file_name_of(const std::string& title, const std::string& ending = ".bough.json") {
    std::string name;
    for (const char c : title) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (letter)
            name += c;
        else if (c >= 'A' && c <= 'Z')
            name += static_cast<char>(c - 'A' + 'a');
        else if (!name.empty() && name.back() != '_')
            name += '_';
    }
    while (!name.empty() && name.back() == '_') name.pop_back();
    return (name.empty() ? "tree" : name) + ending;
}

std::string title_of(FileDialog::For purpose) {
    switch (purpose) {
        case FileDialog::For::open: return say("Open a file");
        case FileDialog::For::save: return say("Save as");
        case FileDialog::For::save_for_class: return say("Save for the class");
        case FileDialog::For::take_challenge: return say("Take the challenge of a file");
        case FileDialog::For::save_table: return say("Save the table as CSV");
        case FileDialog::For::take_in_table: return say("Take in a CSV");
    }
    return "";
}

const char* button_of(FileDialog::For purpose) {
    switch (purpose) {
        case FileDialog::For::open: return phrase("open");
        case FileDialog::For::take_in_table:
        case FileDialog::For::take_challenge: return phrase("take it");
        default: return phrase("save");
    }
}

}  // namespace

FileDialog::FileDialog(const Session& session, For purpose)
    : purpose_(purpose), list_(session, folder_of_open_file(session), is_about_tables() ? ".csv" : ".json") {
    if (purpose == For::save)
        name_ = session.path().empty() ? file_name_of(session.scene().title)
                                       : paths::path(session.path()).filename().string();
    if (purpose == For::save_for_class) name_ = file_name_of(for_the_class(session.scene()).title + " class");
    if (purpose == For::save_table) name_ = file_name_of(session.scene().title, ".csv");
}

void FileDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, title_of(purpose_), 760, 540);
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(10);

    const double bottom = card.inside.y + card.inside.height;
    const double words = session.problem() ? widgets.px(78) : 0;  // what went wrong takes three lines
    const PixelBox name{card.inside.x, bottom - row - words, card.inside.width, row};
    const PixelBox list{card.inside.x, card.inside.y, card.inside.width, name.y - gap - card.inside.y};
    if (session.problem())
        write_problem(*session.problem(), {name.x, bottom - words + gap, name.width, words}, widgets);
    const bool entered = widgets.text_field("file name", name_, name, true);
    if (const auto pressed = list_.draw(session, list, name_, widgets)) {
        name_ = *pressed;
        if (reads()) commands.push_back(with(name_));
    }

    Foot foot(card.foot, widgets);
    const bool pressed = foot.button(button_of(purpose_), Tone::strong, !name_.empty());
    if (reads() && session.files().asks_for_files() && foot.button(phrase("from this computer")))
        commands.push_back(AskForFile{is_about_tables() ? ".csv" : ".json"});
    if (foot.button(phrase("never mind"))) commands.push_back(CloseDialog{});
    if ((pressed || entered) && !name_.empty()) commands.push_back(with(name_));
}

Command FileDialog::with(const std::string& name) const {
    switch (purpose_) {
        case For::open: return OpenFile{list_.path_of(name)};
        case For::save: return SaveFile{list_.path_of(name)};
        case For::save_for_class: return SaveForClass{list_.path_of(name)};
        case For::take_challenge: return TakeChallenge{list_.path_of(name)};
        case For::save_table: return SaveTable{list_.path_of(name)};
        case For::take_in_table: return TakeInTable{list_.path_of(name)};
    }
    return CloseDialog{};
}

}  // namespace boughwork
