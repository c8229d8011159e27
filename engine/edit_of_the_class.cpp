// SPDX-License-Identifier: MIT
#include "engine/edit_of_the_class.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <utility>

#include "engine/edit_checks.h"
#include "engine/geometry/shape.h"
#include "engine/limits.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

bool can_be_measured(const std::optional<Length>& length) {
    return !length || (length->half_um > 0 && within_limits(*length));
}

Result<Done> check(const HandMeasured& by_hand, const Shape& shape) {
    const std::size_t sides = by_hand.sides.size();
    if (sides != 0 && sides != corner_count(shape))
        return cannot(say("The piece has {0} sides.", {std::to_string(corner_count(shape))}),
                      say("Measure each of them."));
    if (!std::all_of(by_hand.sides.begin(), by_hand.sides.end(), can_be_measured))
        return cannot(say("No side is as long as that."), say("Look at the ruler again."));
    return check_text(by_hand.by);
}

Result<Done> check(const Answers& answers) {
    if (!can_be_measured(answers.perimeter) || (answers.points && !within_limits(*answers.points)))
        return cannot(say("That is no such number."), say("Work it out again."));
    return Done{};
}

Result<Done> check(const Built& built) {
    return built.ruling ? check_text(built.ruling->reason) : Result<Done>(Done{});
}

Result<Done> check(const Lesson& lesson) {
    for (const Phase& phase : lesson.phases) {
        if (const Result<Done> can = check_text(phase.name); !can) return can;
        if (phase.minutes < 1 || phase.minutes > most_minutes)
            return cannot(say("A phase lasts from 1 to {0} minutes.", {std::to_string(most_minutes)}),
                          say("Write another number."));
    }
    if (lesson.phases.size() > most_phases)
        return cannot(say("There are too many phases."), say("Take one out first."));
    const bool there = lesson.phase >= 0 && static_cast<std::size_t>(lesson.phase) <= lesson.phases.size();
    if (!there || lesson.spent_s < 0 || lesson.spent_s > greatest_count)
        return cannot(say("There is no such phase."), say("Choose another one."));
    return Done{};
}

/// Without the seal.
Challenge opened(Challenge challenge) {
    challenge.sealed = false;
    return challenge;
}

bool has_bell(const Scene& scene, const std::string& name) {
    return std::any_of(scene.bells.begin(), scene.bells.end(), [&](const Bell& bell) { return bell.name == name; });
}

std::string free_bell_name(const Scene& scene) {
    for (std::size_t i = 1;; ++i)
        if (std::string name = say("Bell {0}", {std::to_string(i)}); !has_bell(scene, name)) return name;
}

}  // namespace

Result<Scene> carried_out(Scene scene, const ReshapePiece& wish) {
    Piece* piece = piece_in(scene, wish.piece);
    if (!piece) return no_piece(wish.piece);
    if (const Result<Done> can = check(wish.shape); !can) return can.problem();
    if (piece->shape == wish.shape) return scene;
    piece->shape = wish.shape;
    piece->by_hand = {};
    piece->answers = {};
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetHandMeasured& wish) {
    Piece* piece = piece_in(scene, wish.piece);
    if (!piece) return no_piece(wish.piece);
    if (const Result<Done> can = check(wish.by_hand, piece->shape); !can) return can.problem();
    std::string unknown_fields = std::move(piece->by_hand.unknown_fields);
    piece->by_hand = wish.by_hand;
    piece->by_hand.unknown_fields = std::move(unknown_fields);
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetAnswers& wish) {
    Piece* piece = piece_in(scene, wish.piece);
    if (!piece) return no_piece(wish.piece);
    if (const Result<Done> can = check(wish.answers); !can) return can.problem();
    std::string unknown_fields = std::move(piece->answers.unknown_fields);
    piece->answers = wish.answers;
    piece->answers.unknown_fields = std::move(unknown_fields);
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetChallenge& wish) {
    if (scene.challenge.sealed && opened(wish.challenge) != opened(scene.challenge))
        return cannot(say("The challenge is sealed."), say("Break the seal first, if it is yours to break."));
    if (const Result<Done> can = possible(wish.challenge); !can)
        return cannot(can.problem().found, can.problem().to_do);
    for (const Plan& plan : scene.plans)
        for (const Branch& branch : plan.tree.branches)
            if (const Result<Done> can = check(branch, wish.challenge.tolerance_mm); !can)
                return cannot(say("With that tolerance branch {0} of {1} can't be.", {branch.name, plan.name}),
                              say("Straighten the branch first, or choose another tolerance."));
    scene.challenge = wish.challenge;
    Step& step = scene.challenge.step;
    const std::int64_t common = std::gcd(step.numerator, step.denominator);
    step.numerator /= common;
    step.denominator /= common;
    return scene;
}

Result<Scene> carried_out(Scene scene, const JudgeBuilt& wish) {
    if (!find_piece(scene, wish.built.piece)) return no_piece(wish.built.piece);
    if (const Result<Done> can = check(wish.built); !can) return can.problem();
    std::vector<Built>& all = current_plan_in(scene).built;
    if (Built* built = find_in(all, [&](const Built& b) { return b.piece == wish.built.piece; })) {
        std::string unknown_fields = std::move(built->unknown_fields);
        *built = wish.built;
        built->unknown_fields = std::move(unknown_fields);
    } else {
        all.push_back(wish.built);
    }
    return scene;
}

Result<Scene> carried_out(Scene scene, const ForgetBuilt& wish) {
    if (!find_piece(scene, wish.piece)) return no_piece(wish.piece);
    std::vector<Built>& all = current_plan_in(scene).built;
    all.erase(std::remove_if(all.begin(), all.end(), [&](const Built& b) { return b.piece == wish.piece; }), all.end());
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetLesson& wish) {
    if (const Result<Done> can = check(wish.lesson); !can) return can.problem();
    std::string unknown_fields = std::move(scene.lesson.unknown_fields);
    scene.lesson = wish.lesson;
    scene.lesson.unknown_fields = std::move(unknown_fields);
    return scene;
}

Result<Scene> carried_out(Scene scene, const RingBell& wish) {
    if (const Result<Done> can = check_room(scene.bells.size(), most_bells); !can) return can.problem();
    const std::string name = wish.name.empty() ? free_bell_name(scene) : wish.name;
    if (const Result<Done> can = check_name(name); !can) return can.problem();
    if (has_bell(scene, name)) return cannot(say("There is a bell {0} already.", {name}), say("Choose another name."));
    scene.bells.push_back({.name = name, .challenge = scene.challenge, .pieces = scene.pieces, .plans = {}});
    for (const Plan& plan : scene.plans) {
        const auto* scored =
            find_in(wish.plans, [&](const RingBell::Scored& entry) { return entry.plan == plan.name; });
        if (!scored || !within_limits(scored->score) || scored->counting < 0 || scored->counting > greatest_count)
            return cannot(say("A plan has no score."), say("Ring again."));
        scene.bells.back().plans.push_back({.plan = plan, .score = scored->score, .counting = scored->counting});
    }
    return scene;
}

}  // namespace boughwork
