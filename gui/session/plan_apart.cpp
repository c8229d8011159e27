// SPDX-License-Identifier: MIT
#include "gui/session/plan_apart.h"

namespace boughwork {

bool PlanApart::take(const Scene& scene, const Plan& plan) {
    if (is_there() && scene_.plans.front() == plan && scene_.challenge == scene.challenge &&
        scene_.pieces == scene.pieces && scene_.paper == scene.paper && scene_.hands == scene.hands)
        return false;
    scene_.challenge = scene.challenge;
    scene_.pieces = scene.pieces;
    scene_.paper = scene.paper;
    scene_.hands = scene.hands;
    scene_.plans = {plan};
    return true;
}

}  // namespace boughwork
