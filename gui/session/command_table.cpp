// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cassert>

#include "engine/geometry/mirroring.h"
#include "engine/geometry/shape.h"
#include "engine/words/say.h"
#include "gui/session/command.h"
#include "gui/session/letter_size.h"
#include "gui/session/session.h"
#include "rules/built_tree.h"

namespace boughwork {
namespace {

bool always(const Session&) { return true; }
bool letters_can_grow(const Session& s) { return s.quarters_larger() < most_quarters_larger; }
bool letters_are_larger(const Session& s) { return s.quarters_larger() > 0; }
bool hand_is_empty(const Session& s) { return !s.held(); }
bool can_undo(const Session& s) { return !s.held() && s.history().can_undo(); }
bool can_redo(const Session& s) { return !s.held() && s.history().can_redo(); }

/// What works on the tree needs the tree in sight.
bool on_tree(const Session& s) { return s.page() == Page::tree; }
bool on_table(const Session& s) { return s.page() == Page::table; }
bool hand_is_empty_on_tree(const Session& s) { return on_tree(s) && !s.held(); }

bool piece_chosen(const Session& s) { return on_tree(s) && !s.held() && s.chosen_piece(); }
const Shape& chosen_shape(const Session& s) { return find_piece(s.scene(), *s.chosen_piece())->shape; }
bool triangle_chosen(const Session& s) { return piece_chosen(s) && std::holds_alternative<Triangle>(chosen_shape(s)); }
bool has_mirror_image(const Session& s) { return piece_chosen(s) && mirror_image(chosen_shape(s)).has_value(); }
bool piece_hung(const Session& s) { return piece_chosen(s) && find_hung(s.plan(), *s.chosen_piece()); }
/// By the referee's word.
bool piece_hangs(const Session& s) { return piece_hung(s) && find_piece(s.report(), *s.chosen_piece())->hangs_from; }
/// Hung, or held in the hand.
bool piece_in_plan(const Session& s) {
    return piece_hung(s) || (s.held() && std::holds_alternative<PickedPiece>(s.held()->what));
}
/// Held alone, or chosen.
bool alone(const Session& s) { return !s.held() || s.held()->company.empty(); }
bool has_other_side(const Session& s) {
    return piece_in_plan(s) && alone(s) && hanging_sides(find_piece(s.scene(), *s.chosen_piece())->shape) > 1;
}
bool piece_to_turn_over(const Session& s) { return piece_in_plan(s) && alone(s); }
bool can_be_nudged(const Session& s) {
    if (!on_tree(s) || s.held() || std::holds_alternative<std::monostate>(s.chosen()) ||
        std::holds_alternative<PickedTrunk>(s.chosen()))
        return false;
    return !s.chosen_piece() || piece_hung(s);
}

bool phase_there(const Session& s) { return !s.held() && phase_on(s.scene().lesson); }
bool some_to_judge(const Session& s) { return s.page() == Page::built && left_to_judge(s.plan()) > 0; }
bool gravity_can_go_on(const Session& s) { return s.page() == Page::gravity && s.gravity().can_go_on(); }
bool gravity_can_go_back(const Session& s) { return s.page() == Page::gravity && s.gravity().can_go_back(); }
bool on_tour(const Session& s) { return s.dialog() == Dialog::tour; }

bool branch_chosen(const Session& s) { return on_tree(s) && !s.held() && s.chosen_branch(); }
bool bend_can_go(const Session& s) {
    return branch_chosen(s) && std::holds_alternative<PickedBend>(s.chosen()) &&
           s.plan().tree.branches[*s.chosen_branch()].path_mm.size() > 2;
}

bool something_chosen(const Session& s) { return s.held() || !std::holds_alternative<std::monostate>(s.chosen()); }
bool finding_there(const Session& s) { return on_tree(s) && s.finding(); }
bool fix_there(const Session& s) { return on_tree(s) && !s.held() && s.finding_remedy(); }
bool more_findings(const Session& s) { return on_tree(s) && s.report().findings.size() > 1; }

/// What concerns the challenge needs it in sight.
bool on_challenge(const Session& s) { return s.page() == Page::challenge; }
bool sealed(const Session& s) { return on_challenge(s) && s.scene().challenge.sealed; }
bool not_sealed(const Session& s) { return on_challenge(s) && !s.scene().challenge.sealed; }

bool more_plans(const Session& s) { return !s.held() && s.scene().plans.size() > 1; }

/// As keyboards of the language have it.
std::string cap_of(const std::string& key) {
    if (key == "left") return say("Left");
    if (key == "right") return say("Right");
    if (key == "up") return say("Up");
    if (key == "down") return say("Down");
    if (key == "escape") return say("Escape");
    if (key == "delete") return say("Delete");
    std::string cap = key;
    for (char& c : cap) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return cap;
}

}  // namespace

const std::vector<CommandRow>& command_table() {
    using enum Action;
    static const std::vector<CommandRow> table = {
        {tree_page, phrase("Tree"), {"1"}, phrase("Turns to the tree."), always},
        {table_page, phrase("Data table"), {"2"}, phrase("Turns to the table of all pieces."), always},
        {built_page, phrase("Built tree"), {"3"}, phrase("Turns to the tree that stands on the table."), always},
        {challenge_page, phrase("Challenge"), {"4"}, phrase("Turns to all that the challenge asks."), always, {"t"}},
        {lesson_page, phrase("Lesson"), {"5"}, phrase("Turns to the clock, the bell and the tour."), always},
        {gravity_page,
         phrase("Gravity"),
         {"6"},
         phrase("Turns to the tree stood up: what sags, swings, falls or tips."),
         always},

        {next_side, phrase("next side"), {"s"}, phrase("Hangs the piece by its next side."), has_other_side},
        {mirror_image, phrase("mirror image"), {"m"}, phrase("Turns the piece over."), piece_to_turn_over},
        {spread_out,
         phrase("spread evenly"),
         {"y"},
         phrase("Gives all that hang there the same gap between them."),
         piece_hangs},
        {gather,
         phrase("gather"),
         {"z"},
         phrase("Moves the chosen piece together with others that are gathered; once more: alone again."),
         piece_hung},
        {gather_row,
         phrase("gather the row"),
         {"z", false, true},
         phrase("Gathers all that hang from the same branch; once more: lets them go."),
         piece_hangs},
        {stop_at_neighbours,
         phrase("stop at neighbours"),
         {"s", false, true},
         phrase("A piece that is dragged along a branch stops before it comes too near; once more: it does not."),
         on_tree},
        {chances,
         phrase("chances"),
         {"w", false, true},
         phrase(
             "Builds the plan many times as hands do that err a little, and writes how often each shaky piece holds; "
             "once more: no longer."),
         on_tree},
        {slide_left,
         phrase("slide to the left"),
         {"left", false, true},
         phrase("Slides the piece to the left, up to its neighbour or the end."),
         piece_hangs},
        {slide_right,
         phrase("slide to the right"),
         {"right", false, true},
         phrase("Slides the piece to the right, up to its neighbour or the end."),
         piece_hangs},
        {next_span,
         phrase("next branch"),
         {"n"},
         phrase("Hangs the piece from the next branch, where there is room."),
         piece_chosen},
        {nudge_left,
         phrase("to the left"),
         {"left"},
         phrase("Moves it one step to the left; a hanging piece slides along."),
         can_be_nudged},
        {nudge_right,
         phrase("to the right"),
         {"right"},
         phrase("Moves it one step to the right; a hanging piece slides along."),
         can_be_nudged},
        {nudge_up, phrase("up"), {"up"}, phrase("Moves it one step up."), can_be_nudged},
        {nudge_down, phrase("down"), {"down"}, phrase("Moves it one step down."), can_be_nudged},
        {turn_left, phrase("turn left"), {"q"}, phrase("Turns the piece a little, against the clock."), piece_hung},
        {turn_right, phrase("turn right"), {"w"}, phrase("Turns the piece a little, with the clock."), piece_hung},
        {take_down,
         phrase("take down"),
         {"e"},
         phrase("Puts the piece, and what hangs from it, back into the envelope."),
         piece_hung},
        {throw_away, phrase("throw away"), {"delete"}, phrase("Throws the piece away, from every plan."), piece_chosen},
        {make_a_piece, phrase("make a piece"), {"a"}, phrase("Makes a new piece for the envelope."), hand_is_empty},
        {change_piece,
         phrase("change"),
         {"h"},
         phrase("Gives the chosen triangle other sides; its number stays."),
         triangle_chosen},
        {copy_piece,
         phrase("copy the piece"),
         {"u"},
         phrase("Makes a piece of the same shape for the envelope."),
         piece_chosen},
        {mirrored_copy,
         phrase("mirrored copy"),
         {"u", false, true},
         phrase("Makes a piece of the mirrored shape for the envelope."),
         has_mirror_image},

        {choose_next,
         phrase("choose next"),
         {"d"},
         phrase("Chooses the next piece, branch or bend."),
         hand_is_empty_on_tree},
        {choose_previous,
         phrase("choose the one before"),
         {"d", false, true},
         phrase("Chooses the piece, branch or bend before."),
         hand_is_empty_on_tree},
        {choose_nothing,
         phrase("let be"),
         {"escape"},
         phrase("Drops what is held as if it had not been touched; chooses nothing."),
         something_chosen},

        {next_finding, phrase("next"), {"r"}, phrase("The referee says the next thing."), more_findings},
        {show_finding, phrase("show"), {"l"}, phrase("Looks closer at what the referee says."), finding_there},
        {fix_finding, phrase("fix"), {"f"}, phrase("Makes the smallest move that puts it right."), fix_there},

        {add_branch, phrase("add a branch"), {"b"}, phrase("Adds a branch to the tree."), hand_is_empty_on_tree},
        {remove_branch,
         phrase("take off the branch"),
         {"b", false, true},
         phrase("Takes the chosen branch off the tree."),
         branch_chosen},
        {add_bend, phrase("add a bend"), {"v"}, phrase("Gives the chosen branch one more bend."), branch_chosen},
        {remove_bend,
         phrase("take out the bend"),
         {"v", false, true},
         phrase("Takes the chosen bend out of its branch."),
         bend_can_go},

        {copy_table, phrase("copy as CSV"), {"c", true}, phrase("Copies the table, to paste it elsewhere."), on_table},
        {save_table, phrase("save as CSV"), {"e", true}, phrase("Writes the table into a file."), on_table},
        {take_in_table,
         phrase("take in a CSV"),
         {"i", true},
         phrase("Takes measured sides, notes and new pieces from a file."),
         on_table},
        {list_answers, phrase("answers"), {"r", true}, phrase("Lists what pupils answered."), on_table},

        {next_plan, phrase("next plan"), {"p"}, phrase("Goes to the next plan."), more_plans},
        {copy_plan,
         phrase("copy plan"),
         {"c"},
         phrase("Makes a copy of this plan, to try something else."),
         hand_is_empty},
        {new_plan,
         phrase("new plan"),
         {"c", false, true},
         phrase("Makes a plan with the same tree and nothing hung."),
         hand_is_empty},
        {rename_plan,
         phrase("rename plan"),
         {"p", false, true},
         phrase("Gives this plan another name."),
         hand_is_empty},
        {remove_plan,
         phrase("throw this plan away"),
         {"delete", false, true},
         phrase("Throws this plan away; its pieces stay."),
         more_plans},

        {rest_as_planned,
         phrase("the rest is as planned"),
         {"3", false, true},
         phrase("Judges every planned piece that nobody has looked at as planned."),
         some_to_judge},
        {run_gravity,
         phrase("let go, or hold"),
         {"r", false, true},
         phrase("Lets gravity work on the tree that is stood up, or holds it."),
         gravity_can_go_on},
        {gravity_step,
         phrase("a moment on"),
         {"t", false, true},
         phrase("Goes on by a tenth of a second."),
         gravity_can_go_on},
        {gravity_back,
         phrase("a moment back"),
         {"a", false, true},
         phrase("Goes back by a tenth of a second."),
         gravity_can_go_back},
        {gravity_start,
         phrase("as on the flat"),
         {"h", false, true},
         phrase("Goes back to how the plan lies flat."),
         gravity_can_go_back},
        {run_clock,
         phrase("start or stop the clock"),
         {"k"},
         phrase("Starts the lesson's clock, or stops it."),
         phase_there},
        {next_phase,
         phrase("next phase"),
         {"k", false, true},
         phrase("Goes on to the next phase of the lesson."),
         phase_there},
        {ring_bell,
         phrase("ring the bell"),
         {"j"},
         phrase("Keeps every plan as it is now, with its score."),
         hand_is_empty},
        {end_lesson,
         phrase("the lesson is over"),
         {"j", false, true},
         phrase("Shows what was kept back until after the lesson, or hides it again."),
         hand_is_empty},
        {projector,
         phrase("projector"),
         {"x"},
         phrase("Shows the tree and the referee alone, twice as large."),
         hand_is_empty},
        {tour, phrase("tour of the rules"), {"g"}, phrase("Shows each rule, broken and kept."), hand_is_empty},
        {next_stop, phrase("next rule"), {"x", false, true}, phrase("Goes on to the next rule of the tour."), on_tour},
        {stop_before, phrase("the rule before"), {"g", false, true}, phrase("Goes back to the rule before."), on_tour},

        {zoom_in, phrase("closer"), {"+"}, phrase("Shows everything larger."), on_tree},
        {zoom_out, phrase("farther"), {"-"}, phrase("Shows everything smaller."), on_tree},
        {show_all, phrase("show all"), {"0"}, phrase("Shows the whole tree."), on_tree},

        {save_for_class,
         phrase("save for the class"),
         {"i"},
         phrase("Saves the challenge, sealed, with this tree and no pieces, as a file for the class."),
         on_challenge},
        {take_challenge,
         phrase("take from a file"),
         {"i", false, true},
         phrase("Takes the challenge of another file for this plan."),
         not_sealed},
        {seal_challenge,
         phrase("seal it"),
         {"o"},
         phrase("Seals the challenge: it is shown and cannot be changed."),
         not_sealed},
        {break_seal,
         phrase("break the seal"),
         {"o", false, true},
         phrase("Asks whether the challenge may be changed again."),
         sealed},

        {undo, phrase("undo"), {"z", true}, phrase("Takes back the last change."), can_undo},
        {redo,
         phrase("redo"),
         {"y", true},
         phrase("Makes the change again that was taken back."),
         can_redo,
         {"z", true, true}},
        {save, phrase("save"), {"s", true}, phrase("Saves to the file."), always},
        {save_as, phrase("save as"), {"s", true, true}, phrase("Saves under another name."), hand_is_empty},
        {open, phrase("open"), {"o", true}, phrase("Opens a file."), hand_is_empty},
        {new_tree, phrase("new tree"), {"n", true}, phrase("Starts a new tree."), hand_is_empty},
        // The name of the language to come, in that language: in Spanish it is said "English".
        {other_language, phrase("español"), {"l", true}, phrase("Says everything in Spanish."), hand_is_empty},
        {larger_letters,
         phrase("larger letters"),
         {"+", true},
         phrase("Draws all words and marks larger; the window then shows the part where the pointer is."),
         letters_can_grow},
        {smaller_letters,
         phrase("smaller letters"),
         {"-", true},
         phrase("Draws all words and marks smaller again."),
         letters_are_larger},
        {guide, phrase("first steps"), {"f", false, true}, phrase("Shows the first four steps."), always},
        {help, phrase("help"), {"F1"}, phrase("Shows all keys."), always},
    };
    return table;
}

const CommandRow& row_of(Action action) {
    const std::vector<CommandRow>& table = command_table();
    const auto row = std::find_if(table.begin(), table.end(), [&](const CommandRow& r) { return r.action == action; });
    assert(row != table.end() && "every action has a row");
    return *row;
}

std::string key_name(const Keys& keys) {
    const std::string cap = cap_of(keys.key);
    if (cap.empty()) return "";
    return (keys.ctrl ? "Ctrl+" : "") + (keys.shift ? say("Shift") + "+" : "") + cap;
}

}  // namespace boughwork
