// SPDX-License-Identifier: MIT
#include "rules/answers.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numeric>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "rules/measure.h"
#include "rules/tally.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// Points are written with two decimals at most: who rounds alike is right.
constexpr double point_rounding = 0.005 + 1e-9;

Judgement right(std::string says) { return {AnswerIs::right, std::move(says)}; }
Judgement nearly(std::string says) { return {AnswerIs::nearly, std::move(says)}; }
Judgement not_yet(std::string says) { return {AnswerIs::not_yet, std::move(says)}; }

Judgement by_sides(const Challenge& challenge, Kind answer, const TriangleKinds& kinds) {
    if (answer == kinds.by_sides) return right(say("Yes, that is what its sides say."));
    if (answer == Kind::isosceles && kinds.by_sides == Kind::equilateral)
        return challenge.equilateral_is_isosceles ? right(say("Yes, and even three of its sides are equal."))
                                                  : nearly(say("Nearly: even three of its sides are equal."));
    return not_yet(say("Not yet. Measure the three sides once more: which of them are equally long?"));
}

Judgement by_angles(const Shape& shape, Kind answer, const TriangleKinds& kinds) {
    if (answer == kinds.by_angles) return right(say("Yes, that is what its largest angle says."));
    // A protractor may read such an angle as a right one, or as what it truly is.
    if (kinds.close_call && (answer == Kind::right || answer == kind_by_angles(shape, 0)))
        return right(say("Yes, a protractor may say so. It is a close call."));
    return not_yet(say("Not yet. Hold the corner of a card into its largest angle."));
}

/// What the pupil's own lengths add up to, when every side was measured.
std::optional<std::int64_t> perimeter_by_hand(const Piece& piece, const PieceReport& report, const Step& step) {
    const std::optional<Measures> by_hand = with_hand_lengths(report.measures, piece.by_hand, step);
    return by_hand ? std::optional(by_hand->perimeter_in_steps) : std::nullopt;
}

Judgement perimeter(const Challenge& challenge, const Piece& piece, const PieceReport& report, Length answer) {
    const std::int64_t steps = measured_length(answer, challenge.step);
    std::vector<std::int64_t> sums{report.measures.perimeter_in_steps};
    if (const auto own = perimeter_by_hand(piece, report, challenge.step)) sums.push_back(*own);
    const auto any = [&](auto fits) { return std::any_of(sums.begin(), sums.end(), fits); };
    if (any([&](std::int64_t sum) { return steps == sum; })) return right(say("Yes, the sides add up to that."));
    if (any([&](std::int64_t sum) { return std::abs(steps - sum) == 1; }))
        return nearly(say("Nearly: a single step of the ruler is between. Add once more."));
    if (any([&](std::int64_t sum) { return steps == 10 * sum || 10 * steps == sum; }))
        return not_yet(say("Not yet. Look which unit it is in."));
    return not_yet(say("Not yet. Add up all the sides, one after the other."));
}

Judgement points(const Challenge& challenge, const PieceReport& report, double answer) {
    const auto is = [&](double value) { return std::abs(answer - value) <= point_rounding; };
    if (is(report.points)) return right(say("Yes, that is what it scores."));
    const std::int64_t all = worth(scored(report), challenge.score);
    if (report.state == PieceState::does_not_count)
        return is(boughwork::points(all, challenge)) ? nearly(say("Nearly: that is its worth. But does it count?"))
                                                     : not_yet(say("Not yet. Does the piece count?"));
    if (is(boughwork::points(all + 1, challenge)) || is(boughwork::points(all - 1, challenge)))
        return nearly(say("Nearly: a single step of the ruler is between. Reckon once more."));
    switch (challenge.score.by) {
        case ScoreBy::longest_side: return not_yet(say("Not yet. Here the longest side scores."));
        case ScoreBy::perimeter: return not_yet(say("Not yet. Here the perimeter scores."));
        case ScoreBy::area: break;
    }
    return not_yet(say("Not yet. Here the area scores: half of the longest side times its height."));
}

}  // namespace

bool can_be_asked(Asked what, const PieceReport& report) {
    switch (what) {
        case Asked::by_sides:
        case Asked::by_angles: return report.measures.kinds.has_value();
        case Asked::perimeter: return true;
        case Asked::points: return report.state != PieceState::in_the_envelope;
    }
    return false;
}

bool is_answered(Asked what, const Answers& answers) {
    switch (what) {
        case Asked::by_sides: return answers.by_sides.has_value();
        case Asked::by_angles: return answers.by_angles.has_value();
        case Asked::perimeter: return answers.perimeter.has_value();
        case Asked::points: return answers.points.has_value();
    }
    return false;
}

bool is_told(const Scene& scene, Asked what, const Piece& piece) {
    switch (what) {
        case Asked::by_sides:
        case Asked::by_angles: return is_told(scene, Mathematics::kinds, piece);
        case Asked::perimeter: return is_told(scene, Mathematics::sums, piece);
        case Asked::points: return is_told(scene, Mathematics::points, piece);
    }
    return true;
}

std::optional<Judgement> judged(const Challenge& challenge, const Piece& piece, const PieceReport& report, Asked what) {
    const Answers& answers = piece.answers;
    if (!can_be_asked(what, report) || !is_answered(what, answers)) return std::nullopt;
    switch (what) {
        case Asked::by_sides: return by_sides(challenge, *answers.by_sides, *report.measures.kinds);
        case Asked::by_angles: return by_angles(piece.shape, *answers.by_angles, *report.measures.kinds);
        case Asked::perimeter: return perimeter(challenge, piece, report, *answers.perimeter);
        case Asked::points: return points(challenge, report, *answers.points);
    }
    return std::nullopt;
}

std::string words_for(Asked what) {
    switch (what) {
        case Asked::by_sides: return say("by sides");
        case Asked::by_angles: return say("by angles");
        case Asked::perimeter: return say("perimeter");
        case Asked::points: return say("points");
    }
    return "";
}

std::string answer_words(const Challenge& challenge, const Answers& answers, Asked what) {
    if (!is_answered(what, answers)) return "";
    switch (what) {
        case Asked::by_sides: return say(name_of(*answers.by_sides));
        case Asked::by_angles: return say(name_of(*answers.by_angles));
        case Asked::perimeter: return length_words(*answers.perimeter, challenge.units);
        case Asked::points: return number_in_words(*answers.points);
    }
    return "";
}

std::vector<GivenAnswer> given_answers(const Scene& scene, const Report& report) {
    std::vector<GivenAnswer> given;
    for (const PieceReport& reported : report.pieces) {
        const Piece& piece = *find_piece(scene, reported.number);
        for (const Asked what : all_asked)
            if (const auto judgement = judged(scene.challenge, piece, reported, what))
                given.push_back({piece.number, what, answer_words(scene.challenge, piece.answers, what), *judgement});
    }
    return given;
}

}  // namespace boughwork
