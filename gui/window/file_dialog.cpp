// SPDX-License-Identifier: MIT
#include "gui/window/file_dialog.h"

#include <filesystem>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

namespace paths = std::filesystem;  // for taking paths apart; the disk is reached through Files

bool is_plan_file(const std::string& name) {
    const std::string ending = ".json";
    return name.size() > ending.size() && name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

/// "Fair tree, table 4" -> "fair_tree_table_4.bough.json".
std::string file_name_of(const std::string& title) {
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
    return (name.empty() ? "tree" : name) + ".bough.json";
}

/// Of a folder that is named from where the program stands ("." or "..") as well as of one from the root.
std::string folder_above(const std::string& folder) {
    const paths::path above = (paths::path(folder) / "..").lexically_normal();
    return above.empty() ? "." : above.string();
}

std::string title_of(FileDialog::For purpose) {
    switch (purpose) {
        case FileDialog::For::open: return "Open a file";
        case FileDialog::For::save: return "Save as";
        case FileDialog::For::save_for_class: return say("Save for the class");
        case FileDialog::For::take_challenge: return say("Take the challenge of a file");
    }
    return "";
}

const char* button_of(FileDialog::For purpose) {
    switch (purpose) {
        case FileDialog::For::open: return "open";
        case FileDialog::For::take_challenge: return phrase("take it");
        default: return "save";
    }
}

}  // namespace

FileDialog::FileDialog(const Session& session, For purpose) : purpose_(purpose) {
    const paths::path open_file(session.path());
    if (purpose == For::save)
        name_ = session.path().empty() ? file_name_of(session.scene().title) : open_file.filename().string();
    if (purpose == For::save_for_class) name_ = file_name_of(for_the_class(session.scene()).title + " class");
    enter(session, open_file.has_parent_path() ? open_file.parent_path().string() : ".");
}

void FileDialog::enter(const Session& session, const std::string& folder) {
    folder_ = folder;
    entries_ = session.files().list(folder);
}

std::string FileDialog::path_of(const std::string& name) const {
    return (paths::path(folder_) / name).lexically_normal().string();
}

void FileDialog::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const DialogCard card = draw_dialog_card(layout, widgets, title_of(purpose_), 760, 540);
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(10);

    const double up_width = widgets.px(150);
    const PixelBox up{card.inside.x + card.inside.width - up_width, card.inside.y, up_width, row};
    const double room = card.inside.width - up_width - gap;
    widgets.write({card.inside.x, up.y + row / 2}, widgets.fitted("in " + folder_, Face::small, room), Face::small,
                  palette::quiet_text);
    if (widgets.button("one folder up", "one folder up", up)) enter(session, folder_above(folder_));

    const double bottom = card.inside.y + card.inside.height;
    const double words = session.problem() ? widgets.px(78) : 0;  // what went wrong takes three lines
    const PixelBox name{card.inside.x, bottom - row - words, card.inside.width, row};
    const PixelBox list{card.inside.x, up.y + row + gap, card.inside.width, name.y - gap - (up.y + row + gap)};
    if (session.problem())
        write_problem(*session.problem(), {name.x, bottom - words + gap, name.width, words}, widgets);
    const bool entered = widgets.text_field("file name", name_, name, true);
    draw_list(session, list, widgets, commands);

    Foot foot(card.foot, widgets);
    const bool pressed = foot.button(button_of(purpose_), Tone::strong, !name_.empty());
    if (foot.button("never mind")) commands.push_back(CloseDialog{});
    if ((pressed || entered) && !name_.empty()) commands.push_back(with(name_));
}

Command FileDialog::with(const std::string& name) const {
    switch (purpose_) {
        case For::open: return OpenFile{path_of(name)};
        case For::save: return SaveFile{path_of(name)};
        case For::save_for_class: return SaveForClass{path_of(name)};
        case For::take_challenge: return TakeChallenge{path_of(name)};
    }
    return CloseDialog{};
}

void FileDialog::draw_list(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    widgets.outline(box, palette::squared_line_bold, 1.5 * widgets.scale(), widgets.px(8));
    const PixelBox inside = inset(box, widgets.px(6));
    if (!entries_) {
        write_problem(entries_.problem(), inside, widgets);
        return;
    }
    std::vector<Files::Entry> shown;
    for (const Files::Entry& entry : *entries_)
        if (entry.folder || is_plan_file(entry.name)) shown.push_back(entry);
    if (shown.empty()) {
        widgets.write_lines(inset(inside, widgets.px(8)), "No plan files here.", Face::small, palette::quiet_text);
        return;
    }
    const double row = widgets.px(palette::target_px);
    const Vec2 start = widgets.begin_scroll("file list", inside, row * static_cast<double>(shown.size()));
    PixelBox line{start.x, start.y, inside.width - widgets.px(18), row};
    for (const Files::Entry& entry : shown) {
        const bool chosen = !entry.folder && entry.name == name_;
        const std::string words = entry.folder ? "folder  " + entry.name : entry.name;
        if (chosen) widgets.sheet(line, palette::tab, widgets.px(8));
        if (widgets.button("file " + entry.name, words, line, Tone::entry)) {
            if (entry.folder) {
                enter(session, path_of(entry.name));
                break;  // the list is another one now
            }
            name_ = entry.name;
            if (reads()) commands.push_back(with(name_));
        }
        line.y += row;
    }
    widgets.end_scroll();
}

}  // namespace boughwork
