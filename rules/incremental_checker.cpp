// SPDX-License-Identifier: MIT
#include "rules/incremental_checker.h"

#include <algorithm>

#include "rules/judge.h"

namespace boughwork {
namespace {

/// Past this share of the pieces it is sooner to begin anew than to move one after the other.
constexpr std::size_t one_in = 8;

/// The places in Plan::hung where only the pose differs; nothing when the plans differ otherwise.
std::optional<std::vector<std::size_t>> moved(const Plan& before, const Plan& after) {
    if (before.tree != after.tree || before.hung.size() != after.hung.size()) return std::nullopt;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < after.hung.size(); ++i) {
        if (before.hung[i].piece != after.hung[i].piece) return std::nullopt;
        if (before.hung[i].pose != after.hung[i].pose) places.push_back(i);
    }
    return places;
}

}  // namespace

Report IncrementalChecker::check(const Scene& scene, const Plan& plan) {
    measure_changed(scene);
    arrange_changed(plan);
    return judge(scene, plan, measured_, *arrangement_, find_hanging(*arrangement_));
}

void IncrementalChecker::measure_changed(const Scene& scene) {
    if (seen_.challenge == scene.challenge && seen_.pieces == scene.pieces) return;
    arrangement_.reset();
    seen_.challenge = scene.challenge;
    seen_.pieces = scene.pieces;
    measured_ = measured_pieces(seen_);
}

void IncrementalChecker::arrange_changed(const Plan& plan) {
    const auto places = moved(seen_plan_, plan);
    if (!arrangement_ || !places || places->size() > 1 + plan.hung.size() / one_in) {
        seen_plan_ = plan;
        arrangement_.emplace(arrange(seen_, seen_plan_));
        return;
    }
    for (const std::size_t i : *places) {
        seen_plan_.hung[i].pose = plan.hung[i].pose;
        move_piece(*arrangement_, place_of(*arrangement_, plan.hung[i].piece), plan.hung[i].pose);
    }
}

}  // namespace boughwork
