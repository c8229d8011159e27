// SPDX-License-Identifier: MIT
#include "gui/session/gravity.h"

#include <algorithm>
#include <chrono>

namespace boughwork {
namespace {

constexpr double slow_motion = 0.25;
/// After a pause of the program nothing is caught up.
constexpr double longest_gap_s = 0.1;

}  // namespace

void Gravity::look_at(const Scene& scene, const Plan& plan) {
    if (stood_.take(scene, plan)) begin_anew();
}

void Gravity::begin_anew() {
    tree_.emplace(stood_.scene(), stood_.plan());
    moments_ = {stood_.plan()};
    plan_ = moments_.front();
    seen_.reset();
    settled_.reset();
    runs_ = false;
    owed_s_ = 0;
}

bool Gravity::can_go_on() const { return seen_ || (tree_ && tree_->state() == Settling::State::moving); }

double Gravity::seconds() const {
    if (seen_) return static_cast<double>(*seen_) * steps_a_moment * Settling::step_s;
    return tree_ ? tree_->steps() * Settling::step_s : 0;
}

void Gravity::run() {
    // From an earlier moment on it goes the same way again.
    if (seen_) {
        const int steps = static_cast<int>(*seen_) * steps_a_moment;
        begin_anew();
        go_on(steps);
        show_now();
    }
    runs_ = can_go_on();
    owed_s_ = 0;
    last_s_ = -1;
}

void Gravity::go_on(int steps) {
    for (; steps > 0 && tree_->state() == Settling::State::moving; --steps) {
        tree_->step();
        if (tree_->steps() % steps_a_moment == 0) moments_.push_back(tree_->plan());
    }
    if (tree_->state() == Settling::State::moving) return;
    runs_ = false;
    settled_ = tree_->look();
}

void Gravity::show_now() {
    seen_.reset();
    plan_ = tree_->plan();
}

void Gravity::show_moment(std::size_t moment) {
    runs_ = false;
    seen_ = moment;
    plan_ = moments_[moment];
}

void Gravity::step() {
    runs_ = false;
    if (seen_ && *seen_ + 1 < moments_.size()) return show_moment(*seen_ + 1);
    if (!seen_) go_on(steps_a_moment - tree_->steps() % steps_a_moment);
    show_now();
}

void Gravity::back() {
    if (!can_go_back()) return;
    const std::size_t now = seen_ ? *seen_ : moments_.size() - (tree_->steps() % steps_a_moment == 0 ? 1 : 0);
    show_moment(now > 0 ? now - 1 : 0);
}

void Gravity::to_the_start() {
    if (tree_) begin_anew();
}

bool Gravity::tick(double now_s) {
    const double gone_s = last_s_ < 0 ? 0 : std::min(now_s - last_s_, longest_gap_s);
    last_s_ = now_s;
    if (!runs_) return false;
    const auto until = std::chrono::steady_clock::now() + work_a_frame;
    owed_s_ += gone_s * (speed_ == GravitySpeed::slow ? slow_motion : 1);
    while (runs_ && (speed_ == GravitySpeed::at_once || owed_s_ >= Settling::step_s)) {
        go_on(1);
        owed_s_ = std::max(0.0, owed_s_ - Settling::step_s);
        if (std::chrono::steady_clock::now() >= until) {
            owed_s_ = 0;
            break;
        }
    }
    show_now();
    return true;
}

}  // namespace boughwork
