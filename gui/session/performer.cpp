// SPDX-License-Identifier: MIT
// Every Command but Press, each handed to the part of the session that can do it.
#include <iterator>
#include <type_traits>
#include <utility>

#include "gui/session/session.h"

namespace boughwork {

struct Session::Performer {
    Session& session;

    void operator()(const Press& press) const { session.press(press.action); }

    void operator()(const Wish& wish) const {
        if (const auto* set = std::get_if<SetLesson>(&wish.edit)) return session.set_lesson(set->lesson);
        const PieceNumber fresh = next_number(session.document_.scene());
        if (!session.wish({wish.edit})) return;
        if (std::holds_alternative<AddPiece>(wish.edit)) session.choose(PickedPiece{fresh});
        if (std::holds_alternative<AddBranch>(wish.edit))
            session.choose(PickedBranch{session.plan().tree.branches.size() - 1});
        if (std::holds_alternative<RenamePlan>(wish.edit) && session.dialog_ == Dialog::rename_plan)
            session.close_dialog();
    }

    void operator()(const Wishes& wishes) const {
        const PieceNumber fresh = next_number(session.document_.scene());
        if (!session.wish(wishes.edits, wishes.label) || wishes.edits.empty()) return;
        if (std::holds_alternative<AddPiece>(wishes.edits.front())) session.choose(PickedPiece{fresh});
    }

    void operator()(const Choose& choose) const { session.choose(choose.what); }

    void operator()(const Grab& grab) const {
        if (session.held_) return;  // one thing at a time
        session.choose(grab.what);
        auto held = grabbed(session.scene(), session.report(), grab.what, grab.at_mm);
        if (!held) return;
        if (const auto piece = session.chosen_piece()) {
            const std::vector<PieceNumber> all = session.moved_with(*piece);
            held->company.assign(std::next(all.begin()), all.end());
            held->stops_at_neighbours = session.stops_at_neighbours_;
        }
        session.hold(std::move(*held));
    }

    void operator()(const HoldAt& at) const {
        if (!session.held_) return;
        session.hold(held_at(session.document_.scene(), *session.held_, at, session.reach_mm()));
    }

    void operator()(const LetGo&) const { session.let_go(); }
    void operator()(const CancelHold&) const { session.drop_hold(); }
    void operator()(const AskForFile& ask) const { session.files_.ask_for_file(ask.ending); }
    void operator()(const OpenFile& file) const { session.open(file.path, file.as_new); }
    void operator()(const SaveFile& file) const { session.save(file.path, file.replace); }
    void operator()(const SaveForClass& file) const { session.save_for_class(file.path, file.replace); }
    void operator()(const TakeChallenge& file) const { session.take_challenge(file.path); }
    void operator()(const SetGravitySpeed& set) const { session.gravity_.set_speed(set.speed); }
    void operator()(const BreakSeal&) const { session.seal(false); }
    void operator()(const Recover& recover) const { session.recover(recover.take); }
    void operator()(const Leave& leave) const { session.leave(leave.anyway); }
    void operator()(const ShowFinding& show) const { session.verdict_.show(session.scene(), show.index); }

    void operator()(const PointAtLine& point) const {
        const bool there = point.line && *point.line < session.report().challenge.size();
        session.pointed_line_ = there ? point.line : std::nullopt;
    }

    void operator()(const LookFrom& look) const {
        session.camera_ = zoomed(session.camera_, look.factor, look.fixed_px);
    }
    void operator()(const Pan& pan) const { session.camera_ = panned(session.camera_, pan.by_px); }
    void operator()(const CloseDialog&) const { session.close_dialog(); }

    void operator()(const SortTable& sort) const { session.table_order_ = pressed(session.table_order_, sort.column); }
    void operator()(const Ask& what) const { session.ask(what); }
    void operator()(const SaveTable& file) const { session.save_table(file.path, file.replace); }
    void operator()(const TakeInTable& file) const { session.take_in_table(file.path); }
};

void Session::perform(const Command& command) {
    // These come by the dozen, or follow another in the same breath: what was said stays readable.
    const bool quiet = std::visit(
        [](const auto& c) {
            using C = std::decay_t<decltype(c)>;
            return std::is_same_v<C, HoldAt> || std::is_same_v<C, LookFrom> || std::is_same_v<C, Pan> ||
                   std::is_same_v<C, CloseDialog>;
        },
        command);
    if (!quiet) {
        problem_.reset();
        word_.clear();
        to_clipboard_.reset();
    }
    std::visit(Performer{*this}, command);
    if (tries_hands()) tried_hands_.look_at(scene(), plan());
    if (page_ == Page::gravity)
        gravity_.look_at(scene(), plan());
    else
        gravity_.pause();
}

}  // namespace boughwork
