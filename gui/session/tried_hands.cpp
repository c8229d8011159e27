// SPDX-License-Identifier: MIT
#include "gui/session/tried_hands.h"

#include <algorithm>
#include <chrono>

namespace boughwork {
namespace {

constexpr std::chrono::milliseconds longest_tick{8};
constexpr int builds_at_once = 20;

}  // namespace

void TriedHands::look_at(const Scene& scene, const Plan& plan) {
    if (hands_ && scene_.challenge == scene.challenge && scene_.pieces == scene.pieces && scene_.hands == scene.hands &&
        scene_.plans.front() == plan)
        return;
    scene_.challenge = scene.challenge;
    scene_.pieces = scene.pieces;
    scene_.hands = scene.hands;
    scene_.plans = {plan};
    hands_.emplace(scene_, scene_.plans.front());
    report_.reset();
}

bool TriedHands::tick() {
    if (is_done()) return false;
    const auto until = std::chrono::steady_clock::now() + longest_tick;
    do {
        hands_->build(std::min(builds_at_once, most_builds - hands_->builds()));
    } while (!is_done() && std::chrono::steady_clock::now() < until);
    report_ = hands_->report();
    return true;
}

}  // namespace boughwork
