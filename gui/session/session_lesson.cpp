// SPDX-License-Identifier: MIT
// What the session does for the lesson: its clock, its bell, what the back of the room sees.
#include <algorithm>

#include "engine/words/say.h"
#include "gui/session/session.h"
#include "rules/built_tree.h"
#include "rules/check.h"
#include "rules/rule_words.h"

namespace boughwork {
namespace {

/// So that a crash costs no more of the clock.
constexpr int kept_every_s = 60;

}  // namespace

bool Session::tick(double now_s) {
    const std::string before = time_left_words(lesson());
    const bool problem_before = problem_.has_value();
    now_s_ = now_s;
    const bool moved = gravity_.tick(now_s);
    const bool settled = !held_ && after_settling_.tick();  // a drag stays smooth
    if (settled) verdict_.take(*after_settling_.settled());
    const bool tried = tries_hands() && !gravity_.runs() && tried_hands_.tick();  // one after the other
    if (!held_ && lesson().spent_s >= scene().lesson.spent_s + kept_every_s) keep_time();
    went_well(document_.tick(now_s, scene()));
    return moved || settled || tried || time_left_words(lesson()) != before || problem_.has_value() != problem_before;
}

void Session::keep_time() { set_lesson(clock_.take(scene().lesson, now_s_)); }

void Session::set_lesson(const Lesson& lesson) {
    if (lesson == document_.scene().lesson) return;
    Result<Scene> result = boughwork::apply(document_.scene(), SetLesson{lesson});
    if (!result) {
        problem_ = result.problem();
        return;
    }
    drop_hold();
    document_.amend(std::move(result).value());
    look_again();
}

void Session::ring_bell() {
    keep_time();
    RingBell ring;
    for (const Plan& plan : scene().plans) {
        const Report report = check(scene(), plan);
        const auto counting = std::count_if(report.pieces.begin(), report.pieces.end(),
                                            [](const PieceReport& piece) { return piece.state == PieceState::counts; });
        ring.plans.push_back({plan.name, report.score, static_cast<int>(counting)});
    }
    Result<Scene> result = boughwork::apply(document_.scene(), ring);
    if (!result) {
        problem_ = result.problem();
        return;
    }
    word_ = say("{0} has rung: every plan is kept as it is now", {result->bells.back().name});
    document_.amend(std::move(result).value());
    look_again();
}

void Session::judge_the_rest() {
    std::vector<Edit> edits;
    for (const Hung& hung : plan().hung)
        if (!find_built(plan(), hung.piece)) edits.push_back(JudgeBuilt{{.piece = hung.piece}});
    wish(edits, say("judge the rest"));
}

void Session::press_about_lesson(Action action) {
    keep_time();
    Lesson now = scene().lesson;
    switch (action) {
        case Action::run_clock: clock_.runs() ? clock_.stop() : clock_.start(now_s_); break;
        case Action::next_phase:
            set_lesson(in_next_phase(std::move(now)));
            if (!phase_on(scene().lesson))
                clock_.stop();
            else if (clock_.runs())
                clock_.start(now_s_);
            break;
        case Action::end_lesson:
            now.over = !now.over;
            set_lesson(now);
            break;
        case Action::ring_bell: ring_bell(); break;
        case Action::projector:
            projector_ = !projector_;
            shows_all_ = true;  // in a view of another size
            turn_to(Page::tree);
            break;
        case Action::tour:
            tour_stop_ = 0;
            dialog_ = Dialog::tour;
            break;
        case Action::next_stop: tour_stop_ = (tour_stop_ + 1) % rules_in_order().size(); break;
        case Action::stop_before:
            tour_stop_ = (tour_stop_ + rules_in_order().size() - 1) % rules_in_order().size();
            break;
        default: break;
    }
}

}  // namespace boughwork
