// SPDX-License-Identifier: MIT
#include "gui/session/session.h"

#include <algorithm>
#include <utility>

#include "engine/geometry/extent.h"
#include "engine/words/say.h"
#include "gui/session/chain.h"
#include "gui/session/letter_size.h"
#include "gui/session/work.h"

namespace boughwork {
namespace {

/// So that the outermost lines do not lie on the edge of the view.
constexpr double margin_px = 24;

}  // namespace

Session::Session(Files& files, std::string autosave_folder)
    : files_(files), kept_in_(autosave_folder), document_(files, std::move(autosave_folder)) {
    quarters_larger_ = chosen_quarters_larger(files_, kept_in_);
    begin_again();
}

std::optional<PieceNumber> Session::chosen_piece() const {
    const auto* piece = std::get_if<PickedPiece>(&chosen_);
    return piece ? std::optional(piece->piece) : std::nullopt;
}

std::optional<std::size_t> Session::chosen_branch() const {
    if (const auto* branch = std::get_if<PickedBranch>(&chosen_)) return branch->branch;
    if (const auto* bend = std::get_if<PickedBend>(&chosen_)) return bend->branch;
    return std::nullopt;
}

bool Session::is_gathered(PieceNumber piece) const {
    return std::find(gathered_.begin(), gathered_.end(), piece) != gathered_.end();
}

std::vector<PieceNumber> Session::moved_with(PieceNumber piece) const {
    std::vector<PieceNumber> pieces = {piece};
    if (!is_gathered(piece)) return pieces;
    for (const PieceNumber other : gathered_)
        if (other != piece) pieces.push_back(other);
    return pieces;
}

bool Session::trunk_chosen() const {
    return std::holds_alternative<PickedTrunk>(chosen_) || std::holds_alternative<PickedTrunkTop>(chosen_) ||
           std::holds_alternative<PickedTrunkFoot>(chosen_);
}

void Session::set_view(const PixelBox& view) {
    if (view == camera_.view) return;
    camera_.view = view;
    if (std::exchange(shows_all_, false)) show_all();
}

void Session::turn_to(Page page) {
    drop_hold();
    page_ = page;
}

void Session::show_all() { camera_ = showing(extent_mm(scene(), plan()), camera_.view, margin_px); }

void Session::look_again(std::optional<PieceNumber> about) {
    if (!is_there(scene(), chosen_)) chosen_ = {};
    const auto comes_down = [&](PieceNumber piece) { return !find_hung(plan(), piece); };
    // While they are held over the envelope they may yet come back.
    if (!held_) gathered_.erase(std::remove_if(gathered_.begin(), gathered_.end(), comes_down), gathered_.end());
    verdict_.look_at(scene(), about, held_.has_value());
    after_settling_.look_at(scene(), plan());
    if (after_settling_.settled()) verdict_.take(*after_settling_.settled());
}

bool Session::fix_is_told() const {
    switch (scene().challenge.shown.fixes) {
        case Shows::always: return true;
        case Shows::after_an_answer: return scene().lesson.over || tries_.tried(*finding());
        case Shows::after_the_lesson: return scene().lesson.over;
    }
    return true;
}

bool Session::wish(const std::vector<Edit>& edits, std::string label) {
    drop_hold();
    if (edits.empty()) return true;
    Result<Scene> result = apply_all(document_.scene(), edits);
    if (!result) {
        problem_ = result.problem();
        return false;
    }
    if (label.empty()) label = in_words(edits.front());
    // A branch is chosen by its place in the tree, which may be another one's now.
    const bool same_tree = result->current == document_.scene().current &&
                           current_plan(*result).tree.branches.size() == plan().tree.branches.size();
    if (!same_tree && !chosen_piece()) chosen_ = {};
    tries_.note(report(), plan(), current_plan(*result));
    document_.record(std::move(result).value(), std::move(label), chosen_piece());
    look_again();
    return true;
}

void Session::choose(const Picked& what) {
    drop_hold();
    chosen_ = is_there(scene(), what) ? what : Picked{};
    if (std::holds_alternative<std::monostate>(chosen_)) gathered_.clear();
    if (chosen_piece()) verdict_.show_about(scene(), *chosen_piece());
}

double Session::reach_mm() const { return std::max(snap_reach_mm, snap_reach_px / camera_.px_per_mm); }

void Session::hold(Held held) {
    held_ = std::move(held);
    const std::vector<Edit> edits = wishes_of(document_.scene(), *held_);
    Result<Scene> result = apply_all(document_.scene(), edits);
    if (!result || *result == scene()) return;  // an impossible shape: the last possible one stays
    if (edits.empty())
        preview_.reset();
    else
        preview_ = std::move(result).value();
    look_again(chosen_piece());
}

void Session::drop_hold() {
    held_.reset();
    if (!preview_) return;
    preview_.reset();
    look_again();
}

void Session::let_go() {
    if (!held_) return;
    if (preview_) {
        const std::vector<Edit> edits = wishes_of(document_.scene(), *held_);
        tries_.note(held_->before, current_plan(document_.scene()), current_plan(*preview_));
        document_.record(*preview_, edits.empty() ? "" : in_words(edits.front()), chosen_piece());
        preview_.reset();
    }
    held_.reset();
    look_again(chosen_piece());
}

void Session::travel(bool back) {
    drop_hold();
    const std::string label = back ? history().undo_label() : history().redo_label();
    // The piece that the step was about: chosen when its later scene was recorded.
    const std::optional<PieceNumber> undone = history().selection();
    back ? document_.undo() : document_.redo();
    const std::optional<PieceNumber> piece = back ? undone : history().selection();
    if (piece && find_piece(document_.scene(), *piece)) chosen_ = PickedPiece{*piece};
    look_again();
    word_ = say(back ? phrase("taken back: {0}") : phrase("done again: {0}"), {label});
}

}  // namespace boughwork
