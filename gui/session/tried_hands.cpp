// SPDX-License-Identifier: MIT
#include "gui/session/tried_hands.h"

#include <algorithm>
#include <chrono>

namespace boughwork {

void TriedHands::look_at(const Scene& scene, const Plan& plan) {
    if (seen_.take(scene, plan)) begin_anew();
}

void TriedHands::begin_anew() {
    report_.reset();
    hands_.reset();
    to_help_.clear();
    search_.reset();
    rooms_.clear();
    if (seen_.is_there() && seen_.plan().hung.size() <= most_tried_pieces) hands_.emplace(seen_.scene(), seen_.plan());
}

bool TriedHands::tick() {
    if (is_done()) return false;
    const auto until = std::chrono::steady_clock::now() + work_a_frame;
    const auto time_is_left = [&] { return std::chrono::steady_clock::now() < until; };
    if (hands_->builds() >= most_builds) {
        do { help_the_next(); } while (!to_help_.empty() && time_is_left());
        return true;
    }
    do { hands_->build(1); } while (hands_->builds() < most_builds && time_is_left());
    report_ = hands_->report();
    if (hands_->builds() == most_builds && report_->pieces.size() <= most_helped_pieces) {
        to_help_ = in_need_of_room(*report_);
        std::reverse(to_help_.begin(), to_help_.end());
    }
    return true;
}

void TriedHands::help_the_next() {
    if (!search_) search_.emplace(seen_.scene(), seen_.plan(), to_help_.back(), builds_for_room(*report_));
    search_->step();
    if (!search_->is_done()) return;
    if (search_->found()) rooms_.push_back(*search_->found());
    search_.reset();
    to_help_.pop_back();
}

const ShakyPiece* TriedHands::report(PieceNumber piece) const {
    if (!report_) return nullptr;
    const auto found = std::find_if(report_->pieces.begin(), report_->pieces.end(),
                                    [&](const ShakyPiece& p) { return p.number == piece; });
    return found == report_->pieces.end() ? nullptr : &*found;
}

const MoreRoom* TriedHands::room_for(PieceNumber piece) const {
    const auto found = std::find_if(rooms_.begin(), rooms_.end(), [&](const MoreRoom& r) { return r.piece == piece; });
    return found == rooms_.end() ? nullptr : &*found;
}

}  // namespace boughwork
