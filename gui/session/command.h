// SPDX-License-Identifier: MIT
#pragma once
// What a person can ask of the program. Panels append Commands; the session performs them at the
// end of the frame. Those that need no more than their name stand in one table, from which buttons,
// keys and the help page are made.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/edit.h"
#include "gui/session/gravity.h"
#include "gui/session/picking.h"
#include "gui/session/table_order.h"
#include "rules/answers.h"

namespace boughwork {

class Session;

/// The pages of one file.
enum class Page { tree, table, built, challenge, lesson, gravity };

enum class Action {
    tree_page,
    table_page,
    built_page,
    lesson_page,
    gravity_page,
    run_gravity,
    gravity_step,
    gravity_back,
    gravity_start,
    run_clock,
    next_phase,
    ring_bell,
    end_lesson,
    projector,
    tour,
    next_stop,
    stop_before,
    rest_as_planned,
    challenge_page,
    undo,
    redo,
    save,
    save_as,
    open,
    new_tree,
    next_side,
    mirror_image,
    spread_out,
    gather,
    gather_row,
    stop_at_neighbours,
    chances,
    slide_left,
    slide_right,
    next_span,
    take_down,
    throw_away,
    nudge_left,
    nudge_right,
    nudge_up,
    nudge_down,
    turn_left,
    turn_right,
    choose_next,
    choose_previous,
    choose_nothing,
    show_finding,
    fix_finding,
    next_finding,
    zoom_in,
    zoom_out,
    show_all,
    copy_plan,
    new_plan,
    rename_plan,
    remove_plan,
    next_plan,
    make_a_piece,
    change_piece,
    copy_piece,
    mirrored_copy,
    add_branch,
    remove_branch,
    add_bend,
    remove_bend,
    save_for_class,
    take_challenge,
    seal_challenge,
    break_seal,
    copy_table,
    save_table,
    take_in_table,
    list_answers,
    larger_letters,
    smaller_letters,
    other_language,
    guide,
    help,
};

struct Press {
    Action action;
};
/// An edit, recorded under its own words.
struct Wish {
    Edit edit;
};
/// Edits that are one step together, recorded under these words, or those of the first.
struct Wishes {
    std::vector<Edit> edits;
    std::string label;
};
/// Chosen: a piece, a branch, the trunk, or nothing.
struct Choose {
    Picked what;
};
/// A hand takes hold of a piece (hung or in the envelope), a bend, a branch or the trunk.
struct Grab {
    Picked what;
    Vec2 at_mm;
};
/// The hand is there now. `free`: no snapping (a piece held apart from every branch by will).
/// Off the paper a piece does not hang.
struct HoldAt {
    Vec2 at_mm;
    bool free = false;
    bool on_paper = true;
};
/// Let go: what was seen is recorded.
struct LetGo {};
/// Escape: as if nothing had been grabbed.
struct CancelHold {};
/// `as_new`: as a new tree, so that a save asks for a name; the file is only looked at.
struct OpenFile {
    std::string path;
    bool as_new = false;
};
/// The person is to hand over a file that ends so (Files::asks_for_files).
struct AskForFile {
    std::string ending;
};
/// `replace`: the person was asked about what is there.
struct SaveFile {
    std::string path;
    bool replace = false;
};
/// What a class begins with, as a file of its own; the open plan and its file stay as they are.
struct SaveForClass {
    std::string path;
    bool replace = false;
};
/// The challenge of that plan file becomes the open plan's.
struct TakeChallenge {
    std::string path;
};
/// The answer to whether the challenge may be changed again: it may.
struct BreakSeal {};
/// The answer to what a crash left behind: take it, or throw it away.
struct Recover {
    bool take = true;
};
/// The program shall end. What is not saved is kept; where it cannot be, that is asked about, unless `anyway`.
struct Leave {
    bool anyway = false;
};
struct ShowFinding {
    std::size_t index = 0;
};
struct PointAtLine {
    std::optional<std::size_t> line;
};  ///< A picture card was pressed: show what it is about.
struct LookFrom {
    double factor = 1;
    Vec2 fixed_px;
};  ///< Zoom about a place.
struct Pan {
    Vec2 by_px;
};
struct CloseDialog {};
/// How fast gravity is shown at work.
struct SetGravitySpeed {
    GravitySpeed speed = GravitySpeed::as_it_is;
};
/// By that column of the data table; once more: the other way.
struct SortTable {
    Column column = Column::number;
};
/// A pupil wants to answer that about a piece.
struct Ask {
    PieceNumber piece;
    Asked about = Asked::by_sides;
};
/// The data table as CSV; `replace`: the person was asked about what is there.
struct SaveTable {
    std::string path;
    bool replace = false;
};
/// What a CSV holds of hand-measured sides, notes and new pieces.
struct TakeInTable {
    std::string path;
};

using Command = std::variant<Press, Wish, Wishes, Choose, Grab, HoldAt, LetGo, CancelHold, OpenFile, AskForFile,
                             SaveFile, SaveForClass, TakeChallenge, BreakSeal, Recover, Leave, ShowFinding, PointAtLine,
                             LookFrom, Pan, CloseDialog, SortTable, Ask, SaveTable, TakeInTable, SetGravitySpeed>;

/// A key with its companions. `key` is a lower-case letter, a digit or one of "left", "right", "up",
/// "down", "escape", "delete", "tab", "space", "enter", "+", "-", "F1"; empty: none.
struct Keys {
    const char* key = "";
    bool ctrl = false;
    bool shift = false;
};

/// One row of the command table.
struct CommandRow {
    Action action;
    const char* name;  ///< A phrase, as on buttons: "next side".
    Keys keys;
    const char* help;  ///< A phrase, one sentence for the help page.
    bool (*possible)(const Session&);
    Keys also = {};  ///< A second key for the same.
};

/// Every action once, in the order of the help page.
const std::vector<CommandRow>& command_table();
const CommandRow& row_of(Action action);
/// "Ctrl+Z", for the help page and buttons; empty when it has no key.
std::string key_name(const Keys& keys);

}  // namespace boughwork
