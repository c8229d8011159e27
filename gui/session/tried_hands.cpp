// SPDX-License-Identifier: MIT
#include "gui/session/tried_hands.h"

#include <chrono>

namespace boughwork {
namespace {

constexpr std::chrono::milliseconds longest_tick{8};

}  // namespace

void TriedHands::look_at(const Scene& scene, const Plan& plan) {
    if (!scene_.plans.empty() && scene_.challenge == scene.challenge && scene_.pieces == scene.pieces &&
        scene_.hands == scene.hands && scene_.plans.front() == plan)
        return;
    scene_.challenge = scene.challenge;
    scene_.pieces = scene.pieces;
    scene_.hands = scene.hands;
    scene_.plans = {plan};
    report_.reset();
    hands_.reset();
    if (plan.hung.size() <= most_tried_pieces) hands_.emplace(scene_, scene_.plans.front());
}

bool TriedHands::tick() {
    if (is_done()) return false;
    const auto until = std::chrono::steady_clock::now() + longest_tick;
    do { hands_->build(1); } while (!is_done() && std::chrono::steady_clock::now() < until);
    report_ = hands_->report();
    return true;
}

}  // namespace boughwork
