// SPDX-License-Identifier: MIT
#include "gui/picture/report_words.h"

#include <algorithm>
#include <cstdio>

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
    std::string words = counted(how_many(PieceState::counts), "piece counts", "pieces count");
    if (const auto do_not = how_many(PieceState::does_not_count)) words += ", " + counted(do_not, "does not", "do not");
    if (const auto wait = how_many(PieceState::in_the_envelope))
        words += ", " + counted(wait, "is", "are") + " in the envelope";
    return words + ".";
}

std::string score_words(double score) {
    const std::string number = number_in_words(score);
    return number + (number == "1" ? " point" : " points");
}

std::string kinds_words(const Challenge& challenge) {
    const std::string degrees = number_in_words(challenge.right_within_deg);
    return std::string(challenge.equilateral_is_isosceles
                           ? "Here, an isosceles triangle has at least two equal sides."
                           : "Here, an isosceles triangle has exactly two equal sides.") +
           " Right means within " + degrees + (degrees == "1" ? " degree" : " degrees") + " of 90.";
}

}  // namespace boughwork
