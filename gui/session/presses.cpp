// SPDX-License-Identifier: MIT
// What each Action does: the commands that need no more than their name.
#include <algorithm>
#include <iterator>
#include <utility>

#include "engine/words/say.h"
#include "gui/session/chosen_language.h"
#include "gui/session/letter_size.h"
#include "gui/session/pulling.h"
#include "gui/session/session.h"
#include "gui/session/spreading.h"
#include "gui/session/work.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

constexpr double zoom_step = 1.25;

Vec2 middle_of(const PixelBox& view) { return {view.x + view.width / 2, view.y + view.height / 2}; }

const std::string& name_of_next_plan(const Scene& scene) {
    const auto now = std::find_if(scene.plans.begin(), scene.plans.end(),
                                  [&](const Plan& plan) { return plan.name == scene.current; });
    const auto next = std::next(now);
    return next == scene.plans.end() ? scene.plans.front().name : next->name;
}

}  // namespace

void Session::press(Action action) {
    if (!row_of(action).possible(*this)) return;
    switch (action) {
        case Action::undo: travel(true); break;
        case Action::redo: travel(false); break;
        case Action::save: save(path(), false); break;
        case Action::new_tree: start_new(); break;

        case Action::tree_page: turn_to(Page::tree); break;
        case Action::built_page: turn_to(Page::built); break;
        case Action::lesson_page: turn_to(Page::lesson); break;
        case Action::gravity_page: turn_to(Page::gravity); break;
        case Action::run_gravity: gravity_.runs() ? gravity_.pause() : gravity_.run(); break;
        case Action::gravity_step: gravity_.step(); break;
        case Action::gravity_back: gravity_.back(); break;
        case Action::gravity_start: gravity_.to_the_start(); break;

        case Action::run_clock:
        case Action::next_phase:
        case Action::ring_bell:
        case Action::end_lesson:
        case Action::projector:
        case Action::tour:
        case Action::next_stop:
        case Action::stop_before: press_about_lesson(action); break;
        case Action::rest_as_planned: judge_the_rest(); break;
        case Action::challenge_page: turn_to(Page::challenge); break;
        case Action::table_page: turn_to(Page::table); break;

        case Action::save_as: dialog_ = Dialog::save_as; break;
        case Action::open: dialog_ = Dialog::open; break;
        case Action::make_a_piece: dialog_ = Dialog::make_a_piece; break;
        case Action::change_piece: dialog_ = Dialog::change_piece; break;
        case Action::rename_plan: dialog_ = Dialog::rename_plan; break;
        case Action::save_for_class: dialog_ = Dialog::save_for_class; break;
        case Action::take_challenge: dialog_ = Dialog::take_challenge; break;
        case Action::seal_challenge: seal(true); break;
        case Action::break_seal: dialog_ = Dialog::break_seal; break;
        case Action::help: dialog_ = Dialog::help; break;
        case Action::guide: dialog_ = Dialog::guide; break;
        case Action::larger_letters: resize_letters(+1); break;
        case Action::smaller_letters: resize_letters(-1); break;
        case Action::other_language: speak_other_language(); break;
        case Action::save_table: dialog_ = Dialog::save_table; break;
        case Action::take_in_table: dialog_ = Dialog::take_in_table; break;
        case Action::list_answers: dialog_ = Dialog::answers; break;
        case Action::copy_table:
            to_clipboard_ = table_csv();
            word_ = say("copied");
            break;

        case Action::next_side:
        case Action::mirror_image:
        case Action::next_span:
        case Action::take_down:
        case Action::throw_away:
        case Action::turn_left:
        case Action::turn_right:
        case Action::nudge_left:
        case Action::nudge_right:
        case Action::nudge_up:
        case Action::nudge_down:
        case Action::remove_branch:
        case Action::add_bend:
        case Action::remove_bend: work(action); break;
        case Action::spread_out: spread(); break;
        case Action::gather: gather(); break;
        case Action::gather_row: gather_row(); break;
        case Action::chances: shows_chances_ = !shows_chances_; break;
        case Action::stop_at_neighbours: stops_at_neighbours_ = !stops_at_neighbours_; break;
        case Action::slide_left: slide(false); break;
        case Action::slide_right: slide(true); break;
        case Action::add_branch: perform(Wish{AddBranch{next_branch(plan().tree)}}); break;

        case Action::copy_piece: perform(copied(scene(), *chosen_piece())); break;
        case Action::mirrored_copy: perform(copied_mirrored(scene(), *chosen_piece())); break;

        case Action::choose_next: choose_in_turn(true); break;
        case Action::choose_previous: choose_in_turn(false); break;
        case Action::choose_nothing: held_ ? drop_hold() : choose({}); break;

        case Action::show_finding: lens_ = !lens_; break;
        case Action::fix_finding: fix_finding(); break;
        case Action::next_finding: verdict_.show(scene(), (finding_index() + 1) % report().findings.size()); break;

        case Action::copy_plan: wish({CopyPlan{free_plan_name(scene())}}); break;
        case Action::new_plan: wish({AddPlan{free_plan_name(scene())}}); break;
        case Action::remove_plan: wish({RemovePlan{}}); break;
        case Action::next_plan: wish({ChoosePlan{name_of_next_plan(scene())}}); break;

        case Action::zoom_in: camera_ = zoomed(camera_, zoom_step, middle_of(camera_.view)); break;
        case Action::zoom_out: camera_ = zoomed(camera_, 1 / zoom_step, middle_of(camera_.view)); break;
        case Action::show_all: show_all(); break;
    }
}

void Session::spread() {
    const std::vector<Edit> edits = spread_out(scene(), report(), *chosen_piece());
    if (edits.empty())
        problem_ = Problem{say("There is no room to spread them."), say("The pieces stay where they are."),
                           say("Take one down first.")};
    else
        wish(edits, say("spread evenly"));
}

void Session::slide(bool to_the_right) {
    const std::vector<Edit> edits = slid(scene(), report(), moved_with(*chosen_piece()), to_the_right);
    if (edits.empty())
        problem_ = Problem{say("There is no room on that side."), say("The piece stays where it is."),
                           say("Move its neighbour first, or take the piece down.")};
    else
        wish(edits);
}

void Session::gather() {
    const PieceNumber piece = *chosen_piece();
    if (is_gathered(piece))
        gathered_.erase(std::find(gathered_.begin(), gathered_.end(), piece));
    else
        gathered_.push_back(piece);
    say_what_is_gathered();
}

void Session::gather_row() {
    std::vector<PieceNumber> row;
    const std::optional<Support> support = find_piece(report(), *chosen_piece())->hangs_from;
    for (const PieceReport& piece : report().pieces)
        if (piece.hangs_from == support) row.push_back(piece.number);
    const bool all = std::all_of(row.begin(), row.end(), [&](PieceNumber piece) { return is_gathered(piece); });
    for (const PieceNumber piece : row) {
        if (all)
            gathered_.erase(std::find(gathered_.begin(), gathered_.end(), piece));
        else if (!is_gathered(piece))
            gathered_.push_back(piece);
    }
    say_what_is_gathered();
}

void Session::say_what_is_gathered() {
    word_ = counted(static_cast<long long>(gathered_.size()), phrase("{0} piece is gathered"),
                    phrase("{0} pieces are gathered"));
}

void Session::work(Action action) {
    if (held_) {
        const Scene& before = document_.scene();
        hold(action == Action::next_side ? held_by_next_side(before, *held_, reach_mm())
                                         : held_mirrored(before, *held_, reach_mm()));
        return;
    }
    const std::optional<PieceNumber> piece = chosen_piece();
    const std::vector<Edit> edits = piece ? work_on_piece(scene(), report(), moved_with(*piece), action)
                                          : work_on_tree(scene(), report(), chosen_, action);
    if (edits.empty()) {
        problem_ = Problem{say("There is no branch to hang from."), say("The piece stays where it is."),
                           say("Add a branch first.")};
        return;
    }
    // The bend that is taken out leaves its place to another.
    const std::optional<std::size_t> branch = chosen_branch();
    if (!wish(edits)) return;
    if (piece) verdict_.show_about(scene(), *piece);
    if (action == Action::remove_bend) choose(PickedBranch{*branch});
}

void Session::speak_other_language() {
    speak(spoken() == Language::english ? Language::spanish : Language::english);
    keep_language(files_, kept_in_);
    look_again();  // the report's sentences are made where the plan is judged
    gravity_.say_again();
    tried_hands_.begin_anew();
}

void Session::resize_letters(int by_quarters) {
    quarters_larger_ += by_quarters;
    shows_all_ = true;  // in a view of another size
    keep_quarters_larger(files_, kept_in_, quarters_larger_);
}

void Session::choose_in_turn(bool forward) {
    const std::vector<Picked> all = all_in_turn(scene());
    const auto now = std::find(all.begin(), all.end(), chosen_);
    if (now == all.end()) return choose(forward ? all.front() : all.back());
    const auto index = static_cast<std::size_t>(now - all.begin()) + (forward ? 1 : all.size() - 1);
    choose(all[index % all.size()]);
}

void Session::fix_finding() {
    const Remedy fix = *finding_remedy();
    chosen_ = PickedPiece{fix.piece};
    wish(put_right(plan(), fix), say("fix: {0}", {fix.says}));
}

void Session::seal(bool sealed) {
    Challenge challenge = document_.scene().challenge;
    if (challenge.sealed == sealed) return;
    challenge.sealed = sealed;
    if (wish({SetChallenge{std::move(challenge)}}, sealed ? say("seal the challenge") : say("break the seal")))
        close_dialog();
}

}  // namespace boughwork
