// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cassert>

#include "engine/geometry/mirroring.h"
#include "engine/geometry/shape.h"
#include "engine/words/say.h"
#include "gui/session/command.h"
#include "gui/session/session.h"
#include "rules/built_tree.h"

namespace boughwork {
namespace {

bool always(const Session&) { return true; }
bool hand_is_empty(const Session& s) { return !s.held(); }
bool can_undo(const Session& s) { return !s.held() && s.history().can_undo(); }
bool can_redo(const Session& s) { return !s.held() && s.history().can_redo(); }

/// What works on the tree needs the tree in sight.
bool on_tree(const Session& s) { return s.page() == Page::tree; }
bool hand_is_empty_on_tree(const Session& s) { return on_tree(s) && !s.held(); }

bool piece_chosen(const Session& s) { return on_tree(s) && !s.held() && s.chosen_piece(); }
const Shape& chosen_shape(const Session& s) { return find_piece(s.scene(), *s.chosen_piece())->shape; }
bool triangle_chosen(const Session& s) { return piece_chosen(s) && std::holds_alternative<Triangle>(chosen_shape(s)); }
bool has_mirror_image(const Session& s) { return piece_chosen(s) && mirror_image(chosen_shape(s)).has_value(); }
bool piece_hung(const Session& s) { return piece_chosen(s) && find_hung(s.plan(), *s.chosen_piece()); }
/// Hung, or held in the hand.
bool piece_in_plan(const Session& s) {
    return piece_hung(s) || (s.held() && std::holds_alternative<PickedPiece>(s.held()->what));
}
bool has_other_side(const Session& s) {
    return piece_in_plan(s) && hanging_sides(find_piece(s.scene(), *s.chosen_piece())->shape) > 1;
}
bool can_be_nudged(const Session& s) {
    if (!on_tree(s) || s.held() || std::holds_alternative<std::monostate>(s.chosen()) ||
        std::holds_alternative<PickedTrunk>(s.chosen()))
        return false;
    return !s.chosen_piece() || piece_hung(s);
}

bool phase_there(const Session& s) { return !s.held() && phase_on(s.scene().lesson); }
bool some_to_judge(const Session& s) { return s.page() == Page::built && left_to_judge(s.plan()) > 0; }
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

}  // namespace

const std::vector<CommandRow>& command_table() {
    using enum Action;
    static const std::vector<CommandRow> table = {
        {tree_page, "Tree", {"1"}, "Turns to the tree.", always},
        {built_page, "Built tree", {"3"}, "Turns to the tree that stands on the table.", always},
        {lesson_page, "Lesson", {"5"}, "Turns to the clock, the bell and the tour.", always},
        {challenge_page, phrase("Challenge"), {"4"}, phrase("Turns to all that the challenge asks."), always, {"t"}},

        {next_side, "next side", {"s"}, "Hangs the piece by its next side.", has_other_side},
        {mirror_image, "mirror image", {"m"}, "Turns the piece over.", piece_in_plan},
        {next_span, "next branch", {"n"}, "Hangs the piece from the next branch, where there is room.", piece_chosen},
        {nudge_left, "left", {"left"}, "Moves it one step to the left; a hanging piece slides along.", can_be_nudged},
        {nudge_right,
         "right",
         {"right"},
         "Moves it one step to the right; a hanging piece slides along.",
         can_be_nudged},
        {nudge_up, "up", {"up"}, "Moves it one step up.", can_be_nudged},
        {nudge_down, "down", {"down"}, "Moves it one step down.", can_be_nudged},
        {turn_left, "turn left", {"q"}, "Turns the piece a little, against the clock.", piece_hung},
        {turn_right, "turn right", {"w"}, "Turns the piece a little, with the clock.", piece_hung},
        {take_down, "take down", {"e"}, "Puts the piece, and what hangs from it, back into the envelope.", piece_hung},
        {throw_away, "throw away", {"delete"}, "Throws the piece away, from every plan.", piece_chosen},
        {make_a_piece, "make a piece", {"a"}, "Makes a new piece for the envelope.", hand_is_empty},
        {change_piece,
         phrase("change"),
         {"x"},
         phrase("Gives the chosen triangle other sides; its number stays."),
         triangle_chosen},
        {copy_piece,
         phrase("copy the piece"),
         {"k"},
         phrase("Makes a piece of the same shape for the envelope."),
         piece_chosen},
        {mirrored_copy,
         phrase("mirrored copy"),
         {"k", false, true},
         phrase("Makes a piece of the mirrored shape for the envelope."),
         has_mirror_image},

        {choose_next, "choose next", {"d"}, "Chooses the next piece, branch or bend.", hand_is_empty_on_tree},
        {choose_previous,
         "choose the one before",
         {"d", false, true},
         "Chooses the piece, branch or bend before.",
         hand_is_empty_on_tree},
        {choose_nothing,
         "let be",
         {"escape"},
         "Drops what is held as if it had not been touched; chooses nothing.",
         something_chosen},

        {next_finding, "next", {"r"}, "The referee says the next thing.", more_findings},
        {show_finding, "show", {"l"}, "Looks closer at what the referee says.", finding_there},
        {fix_finding, "fix", {"f"}, "Makes the smallest move that puts it right.", fix_there},

        {add_branch, "add a branch", {"b"}, "Adds a branch to the tree.", hand_is_empty_on_tree},
        {remove_branch,
         "take off the branch",
         {"b", false, true},
         "Takes the chosen branch off the tree.",
         branch_chosen},
        {add_bend, "add a bend", {"v"}, "Gives the chosen branch one more bend.", branch_chosen},
        {remove_bend, "take out the bend", {"v", false, true}, "Takes the chosen bend out of its branch.", bend_can_go},

        {next_plan, "next plan", {"p"}, "Goes to the next plan.", more_plans},
        {copy_plan, "copy plan", {"c"}, "Makes a copy of this plan, to try something else.", hand_is_empty},
        {new_plan, "new plan", {"c", false, true}, "Makes a plan with the same tree and nothing hung.", hand_is_empty},
        {rename_plan, "rename plan", {"p", false, true}, "Gives this plan another name.", hand_is_empty},
        {remove_plan,
         "throw this plan away",
         {"delete", false, true},
         "Throws this plan away; its pieces stay.",
         more_plans},

        {rest_as_planned,
         "the rest is as planned",
         {"3", false, true},
         "Judges every planned piece that nobody has looked at as planned.",
         some_to_judge},
        {run_clock, "start or stop the clock", {"k"}, "Starts the lesson's clock, or stops it.", phase_there},
        {next_phase, "next phase", {"k", false, true}, "Goes on to the next phase of the lesson.", phase_there},
        {ring_bell, "ring the bell", {"j"}, "Keeps every plan as it is now, with its score.", hand_is_empty},
        {end_lesson,
         "the lesson is over",
         {"j", false, true},
         "Shows what was kept back until after the lesson, or hides it again.",
         hand_is_empty},
        {projector, "projector", {"x"}, "Shows the tree and the referee alone, twice as large.", hand_is_empty},
        {tour, "tour of the rules", {"g"}, "Shows each rule, broken and kept.", hand_is_empty},
        {next_stop, "next rule", {"x", false, true}, "Goes on to the next rule of the tour.", on_tour},
        {stop_before, "the rule before", {"g", false, true}, "Goes back to the rule before.", on_tour},

        {zoom_in, "closer", {"+"}, "Shows everything larger.", on_tree},
        {zoom_out, "farther", {"-"}, "Shows everything smaller.", on_tree},
        {show_all, "show all", {"0"}, "Shows the whole tree.", on_tree},

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
         {"u"},
         phrase("Seals the challenge: it is shown and cannot be changed."),
         not_sealed},
        {break_seal,
         phrase("break the seal"),
         {"u", false, true},
         phrase("Asks whether the challenge may be changed again."),
         sealed},

        {undo, "undo", {"z", true}, "Takes back the last change.", can_undo},
        {redo, "redo", {"y", true}, "Makes the change again that was taken back.", can_redo, {"z", true, true}},
        {save, "save", {"s", true}, "Saves to the file.", always},
        {save_as, "save as", {"s", true, true}, "Saves under another name.", hand_is_empty},
        {open, "open", {"o", true}, "Opens a file.", hand_is_empty},
        {new_tree, "new tree", {"n", true}, "Starts a new tree.", hand_is_empty},
        {help, "help", {"F1"}, "Shows all keys.", always},
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
    std::string name = keys.key;
    if (name.empty()) return "";
    name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
    return std::string(keys.ctrl ? "Ctrl+" : "") + (keys.shift ? "Shift+" : "") + name;
}

}  // namespace boughwork
