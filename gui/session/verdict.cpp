// SPDX-License-Identifier: MIT
#include "gui/session/verdict.h"

#include <algorithm>

#include "rules/check.h"

namespace boughwork {

void Verdict::look_at(const Scene& scene, std::optional<PieceNumber> about, bool in_hand) {
    const std::optional<Finding> shown = finding() ? std::optional<Finding>(*finding()) : std::nullopt;
    report_ = checker_.check(scene, current_plan(scene));
    in_hand_ = in_hand;
    score_all(scene);

    const std::vector<Finding>& findings = report_.findings;
    const auto same = std::find_if(findings.begin(), findings.end(), [&](const Finding& finding) {
        return shown && finding.rule == shown->rule && finding.pieces == shown->pieces;
    });
    if (same != findings.end())
        index_ = static_cast<std::size_t>(same - findings.begin());
    else
        index_ = findings.empty() ? 0 : std::min(index_, findings.size() - 1);
    if (about) index_ = first_about(*about).value_or(index_);
    search_remedy(scene);
}

void Verdict::show(const Scene& scene, std::size_t index) {
    const std::size_t last = report_.findings.empty() ? 0 : report_.findings.size() - 1;
    if (std::min(index, last) == index_) return;
    index_ = std::min(index, last);
    search_remedy(scene);
}

void Verdict::show_about(const Scene& scene, PieceNumber piece) {
    if (const auto index = first_about(piece)) show(scene, *index);
}

std::optional<std::size_t> Verdict::first_about(PieceNumber piece) const {
    const auto about = [&](const Finding& finding) {
        return std::find(finding.pieces.begin(), finding.pieces.end(), piece) != finding.pieces.end();
    };
    // Stay with the one shown when it is about the piece already.
    if (finding() && about(*finding())) return index_;
    const auto found = std::find_if(report_.findings.begin(), report_.findings.end(), about);
    if (found == report_.findings.end()) return std::nullopt;
    return static_cast<std::size_t>(found - report_.findings.begin());
}

void Verdict::search_remedy(const Scene& scene) {
    remedy_.reset();
    if (finding() && !in_hand_) remedy_ = boughwork::remedy(scene, current_plan(scene), report_, *finding());
}

void Verdict::score_all(const Scene& scene) {
    if (scored_pieces_ != scene.pieces || scored_challenge_ != scene.challenge) {
        scored_pieces_ = scene.pieces;
        scored_challenge_ = scene.challenge;
        scored_plans_.clear();
    }
    std::map<std::string, double> scores;
    std::map<std::string, Plan> plans;
    for (const Plan& plan : scene.plans) {
        if (plan.name == scene.current) {
            scores[plan.name] = report_.score;  // compared again when another plan becomes current
            continue;
        }
        const auto known = scored_plans_.find(plan.name);
        const bool same = known != scored_plans_.end() && known->second == plan;
        scores[plan.name] = same ? scores_[plan.name] : check(scene, plan).score;
        plans.emplace(plan.name, same ? std::move(known->second) : Plan(plan));
    }
    scores_ = std::move(scores);
    scored_plans_ = std::move(plans);
}

}  // namespace boughwork
