// SPDX-License-Identifier: MIT
#include "rules/told.h"

#include <algorithm>
#include <string>

#include "engine/geometry/shape.h"
#include "rules/hand_measured.h"

namespace boughwork {
namespace {

Shows setting(const Shown& shown, Mathematics what) {
    switch (what) {
        case Mathematics::lengths: return shown.lengths;
        case Mathematics::kinds: return shown.kinds;
        case Mathematics::sums: return shown.sums;
        case Mathematics::points: return shown.points;
    }
    return Shows::always;
}

/// Lengths only once all of them fit: beside a slip of the ruler they would give the answer away.
bool is_answered(const Piece& piece, Mathematics what, const Challenge& challenge) {
    const Answers& answers = piece.answers;
    switch (what) {
        case Mathematics::lengths: {
            const std::vector<Reading> readings = readings_of(piece, challenge);
            return std::all_of(readings.begin(), readings.end(), [](Reading r) { return r == Reading::fits; });
        }
        case Mathematics::kinds: return answers.by_sides && answers.by_angles;
        case Mathematics::sums: return answers.perimeter.has_value();
        case Mathematics::points: return answers.points.has_value();
    }
    return true;
}

bool has_it(const Piece& piece, Mathematics what) {
    return what != Mathematics::kinds || (corner_count(piece.shape) == 3 && !std::holds_alternative<Cone>(piece.shape));
}

}  // namespace

bool is_told(const Scene& scene, Mathematics what, const Piece& piece) {
    switch (setting(scene.challenge.shown, what)) {
        case Shows::always: return true;
        case Shows::after_an_answer:
            return scene.lesson.over || !has_it(piece, what) || is_answered(piece, what, scene.challenge);
        case Shows::after_the_lesson: return scene.lesson.over || !has_it(piece, what);
    }
    return true;
}

bool is_told(const Scene& scene, Mathematics what, const Plan& plan) {
    return setting(scene.challenge.shown, what) == Shows::always ||
           std::all_of(plan.hung.begin(), plan.hung.end(),
                       [&](const Hung& hung) { return is_told(scene, what, *find_piece(scene, hung.piece)); });
}

bool is_told(const Scene& scene, const ChallengeLine& line, const Plan& plan) {
    const std::vector<Criterion>& criteria = scene.challenge.criteria;
    for (std::size_t i = 0; i < criteria.size(); ++i)
        if (line.about == "criteria/" + std::to_string(i) && !std::holds_alternative<NoTwoAlike>(criteria[i].asks))
            return is_told(scene, Mathematics::kinds, plan);
    return true;
}

}  // namespace boughwork
