// SPDX-License-Identifier: MIT
#include "gui/picture/report_words.h"

#include <algorithm>
#include <cstdio>

#include "engine/words/say.h"
#include "rules/measure.h"
#include "rules/wording.h"

namespace boughwork {

std::string measured_words(std::int64_t steps, const Challenge& challenge) {
    const Step& step = challenge.step;
    if (challenge.units == Unit::in && step.unit == Unit::in)
        return mixed_fraction(steps * step.numerator, step.denominator);
    char text[64];
    std::snprintf(text, sizeof text, "%.10g", in_units(steps, step, challenge.units));
    return text;
}

std::string counts_words(const Report& report) {
    const auto how_many = [&](PieceState state) {
        return std::count_if(report.pieces.begin(), report.pieces.end(),
                             [&](const PieceReport& piece) { return piece.state == state; });
    };
    std::string words = counted(how_many(PieceState::counts), phrase("{0} piece counts"), phrase("{0} pieces count"));
    if (const auto do_not = how_many(PieceState::does_not_count))
        words += ", " + counted(do_not, phrase("{0} does not"), phrase("{0} do not"));
    if (const auto wait = how_many(PieceState::in_the_envelope))
        words += ", " + counted(wait, phrase("{0} is in the envelope"), phrase("{0} are in the envelope"));
    return words + ".";
}

std::string score_words(double score) {
    const std::string number = number_in_words(score);
    return say(number == "1" ? phrase("{0} point") : phrase("{0} points"), {number});
}

}  // namespace boughwork
