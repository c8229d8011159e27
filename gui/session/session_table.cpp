// SPDX-License-Identifier: MIT
// What the session does for the data table.
#include "engine/storage/csv.h"
#include "engine/words/say.h"
#include "gui/session/session.h"
#include "gui/session/table_rows.h"

namespace boughwork {
namespace {

/// Far more than a table of pieces needs.
constexpr std::size_t largest_table_bytes = std::size_t{1} << 20;

std::string with_csv_ending(const std::string& path) {
    const std::size_t name = path.find_last_of('/') == std::string::npos ? 0 : path.find_last_of('/') + 1;
    return path.find('.', name) == std::string::npos ? path + ".csv" : path;
}

}  // namespace

std::string Session::table_csv() const {
    const SpeakingIn english(Language::english);  // other programs read it
    return csv_text(table_rows(scene(), plan(), report(), Telling::what_is_told));
}

void Session::save_table(const std::string& path, bool replace) {
    const std::string target = with_csv_ending(path);
    if (!replace && files_.exists(target)) {
        replace_path_ = target;
        dialog_ = Dialog::replace_table;
        return;
    }
    if (!went_well(files_.save(target, table_csv()))) return;
    close_dialog();
    word_ = say("The table is saved.");
}

void Session::take_in_table(const std::string& path) {
    drop_hold();
    const Result<std::string> csv = files_.read(path, largest_table_bytes);
    Result<TakenIn> taken = csv ? boughwork::taken_in(scene(), *csv) : csv.problem();
    if (!taken) {
        problem_ = taken.problem();
        return;
    }
    taken_in_ = std::move(taken).value();
    if (wish(taken_in_.edits, say("take in a table"))) dialog_ = Dialog::table_taken_in;
}

void Session::ask(const Ask& what) {
    const PieceReport* piece = find_piece(report(), what.piece);
    if (!piece || !can_be_asked(what.about, *piece)) return;
    asked_ = what;
    dialog_ = Dialog::answer;
}

}  // namespace boughwork
