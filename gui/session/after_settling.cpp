// SPDX-License-Identifier: MIT
#include "gui/session/after_settling.h"

#include <chrono>

namespace boughwork {

void AfterSettling::look_at(const Scene& scene, const Plan& plan) {
    if (!scene.challenge.holds_after_settling) {
        *this = {};
        return;
    }
    if (!seen_.take(scene, plan)) return;
    waiting_ = true;
    tree_.reset();
    settled_.reset();
}

bool AfterSettling::tick() {
    if (!waiting_) return false;
    const auto until = std::chrono::steady_clock::now() + work_a_frame;
    if (!tree_) tree_.emplace(seen_.scene(), seen_.plan());
    while (tree_->state() == Settling::State::moving) {
        if (std::chrono::steady_clock::now() >= until) return false;
        tree_->step();
    }
    settled_ = tree_->look();
    tree_.reset();
    waiting_ = false;
    return true;
}

}  // namespace boughwork
