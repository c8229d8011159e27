// SPDX-License-Identifier: MIT
#include "gui/window/folder_list.h"

#include <filesystem>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

namespace paths = std::filesystem;  // for taking paths apart; the disk is reached through Files

bool ends_in(const std::string& name, const std::string& ending) {
    return name.size() > ending.size() && name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

/// Of a folder that is named from where the program stands ("." or "..") as well as of one from the root.
std::string folder_above(const std::string& folder) {
    const paths::path above = (paths::path(folder) / "..").lexically_normal();
    return above.empty() ? "." : above.string();
}

}  // namespace

void FolderList::enter(const Session& session, const std::string& folder) {
    folder_ = folder;
    entries_ = session.files().list(folder);
}

std::string FolderList::path_of(const std::string& name) const {
    return (paths::path(folder_) / name).lexically_normal().string();
}

std::optional<std::string> FolderList::draw(const Session& session, const PixelBox& box, const std::string& chosen,
                                            Widgets& widgets) {
    if (session.files().asks_for_files()) return draw_entries(session, box, chosen, widgets);  // one place, no folders
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(10);
    const double up_width = widgets.px(150);
    const PixelBox up{box.x + box.width - up_width, box.y, up_width, row};
    const double room = box.width - up_width - gap;
    widgets.write({box.x, up.y + row / 2}, widgets.fitted(say("in {0}", {folder_}), Face::small, room), Face::small,
                  palette::quiet_text);
    if (widgets.button("one folder up", say("one folder up"), up)) enter(session, folder_above(folder_));
    const double top = up.y + row + gap;
    return draw_entries(session, {box.x, top, box.width, box.y + box.height - top}, chosen, widgets);
}

std::optional<std::string> FolderList::draw_entries(const Session& session, const PixelBox& box,
                                                    const std::string& chosen, Widgets& widgets) {
    widgets.outline(box, palette::squared_line_bold, 1.5 * widgets.scale(), widgets.px(8));
    const PixelBox inside = inset(box, widgets.px(6));
    if (!entries_) {
        write_problem(entries_.problem(), inside, widgets);
        return std::nullopt;
    }
    std::vector<Files::Entry> shown;
    for (const Files::Entry& entry : *entries_)
        if (entry.folder || ends_in(entry.name, ending_)) shown.push_back(entry);
    if (shown.empty()) {
        const std::string none = ending_ == ".csv" ? say("No tables here.") : say("No plan files here.");
        widgets.write_lines(inset(inside, widgets.px(8)), none, Face::small, palette::quiet_text);
        return std::nullopt;
    }
    const double row = widgets.px(palette::target_px);
    const Vec2 start = widgets.begin_scroll("file list", inside, row * static_cast<double>(shown.size()));
    PixelBox line{start.x, start.y, inside.width - widgets.px(18), row};
    std::optional<std::string> pressed;
    for (const Files::Entry& entry : shown) {
        const std::string words = entry.folder ? say("folder  {0}", {entry.name}) : entry.name;
        if (!entry.folder && entry.name == chosen) widgets.sheet(line, palette::tab, widgets.px(8));
        if (widgets.button("file " + entry.name, words, line, Tone::entry)) {
            if (entry.folder) {
                enter(session, path_of(entry.name));
                break;  // the list is another one now
            }
            pressed = entry.name;
        }
        line.y += row;
    }
    widgets.end_scroll();
    return pressed;
}

std::string folder_of_open_file(const Session& session) {
    const paths::path open_file(session.path());
    return open_file.has_parent_path() ? open_file.parent_path().string() : ".";
}

}  // namespace boughwork
