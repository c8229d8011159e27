// SPDX-License-Identifier: MIT
#include "engine/storage/challenge_reader.h"

#include "engine/storage/step_value.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

void read(Fields fields, Step& step) {
    fields.word("unit", step.unit, unit_words);
    if (fields.has("value")) {
        const Fields::NumberOrText said = fields.number_or_text("value", positive_mm);
        std::optional<Fraction> value;
        if (said.text) value = fraction_from(*said.text);
        if (said.number) value = fraction_from(*said.number);
        if (!value)
            fields.refuse("value", say("this is no step."),
                          say("Write a number such as 0.5, or a fraction such as \"1/4\"."));
        const Fraction fraction = value.value_or(Fraction{});
        step.numerator = fraction.numerator;
        step.denominator = fraction.denominator;
    }
    const std::int64_t half_um = step.numerator * length_of(step.unit).half_um;
    if (half_um < finest_step_half_um * step.denominator || half_um > coarsest_step_half_um * step.denominator)
        fields.refuse("value", say("a step must be from 0.001 mm to 1000000 mm."), say("Choose another step."));
    step.unknown_fields = fields.unknown();
}

void read(Fields fields, Limits& limits) {
    fields.range("pieces", limits.pieces);
    fields.range("pieces_per_branch", limits.pieces_per_branch);
    fields.range("branches", limits.branches);
    fields.whole_or_null("sheets", limits.sheets, any_count);
    fields.range("side_mm", limits.side);
    fields.length_or_null("least_height_mm", limits.least_height);
    limits.unknown_fields = fields.unknown();
}

NoTwoAlike no_two_alike(Fields& fields) {
    NoTwoAlike asks;
    fields.whole("no_two_alike", asks.pieces, any_count);
    fields.not_beside("kind", "no_two_alike");
    fields.not_beside("of", "no_two_alike");
    return asks;
}

KindAppears kind_appears(Fields& fields) {
    KindAppears asks;
    fields.require("kind");
    fields.word("kind", asks.kind, kind_words);
    fields.whole("at_least", asks.at_least, any_count);
    fields.not_beside("of", "at_least");
    return asks;
}

KindShare kind_share(Fields& fields, const std::string& per_cent_name) {
    KindShare asks{.at_most = per_cent_name == "at_most_percent"};
    fields.require("kind");
    fields.word("kind", asks.kind, kind_words);
    fields.number(asks.at_most ? "at_most_percent" : "share_percent", asks.percent, per_cent);
    fields.word("of", asks.of, share_words);
    return asks;
}

void read(Fields fields, Criterion& criterion) {
    const std::string asked = fields.one_of({"no_two_alike", "at_least", "share_percent", "at_most_percent"});
    if (asked.empty()) return;
    if (asked == "no_two_alike") {
        criterion.asks = no_two_alike(fields);
    } else if (asked == "at_least") {
        criterion.asks = kind_appears(fields);
    } else {
        criterion.asks = kind_share(fields, asked);
    }
    criterion.unknown_fields = fields.unknown();
}

void read(Fields fields, std::size_t criteria, Bonus& bonus) {
    const std::string rewarded = fields.one_of({"per_piece", "per_depth", "if_met", "words"});
    if (rewarded == "per_piece") {
        PerPiece reward;
        fields.word("per_piece", reward.kind, kind_words);
        bonus.for_what = reward;
    } else if (rewarded == "per_depth") {
        PerDepth reward;
        fields.whole("per_depth", reward.depth, one_or_more);
        bonus.for_what = reward;
    } else if (rewarded == "if_met") {
        IfMet reward;
        fields.whole("if_met", reward.criterion, any_count);
        if (static_cast<std::size_t>(reward.criterion) >= criteria)
            fields.refuse("if_met", say("there is no criterion {0}.", {std::to_string(reward.criterion)}),
                          say("Criteria are counted from 0; name one that is there, or take the bonus out."));
        bonus.for_what = reward;
    } else {
        InWords reward;
        fields.text("words", reward.words);
        bonus.for_what = reward;
    }
    fields.number("points", bonus.points, any_points);
    bonus.unknown_fields = fields.unknown();
}

void read(Fields fields, std::size_t criteria, Scoring& score) {
    fields.word("by", score.by, score_words);
    if (fields.has("unit")) fields.word("unit", score.unit.emplace(), unit_words);
    for (const Fields& item : fields.objects("bonuses", most_asked)) read(item, criteria, score.bonuses.emplace_back());
    score.unknown_fields = fields.unknown();
}

void read(Fields fields, Shown& shown) {
    fields.word("lengths", shown.lengths, shows_words);
    fields.word("kinds", shown.kinds, shows_words);
    fields.word("sums", shown.sums, shows_words);
    fields.word("points", shown.points, shows_words);
    fields.word("fixes", shown.fixes, shows_words);
    shown.unknown_fields = fields.unknown();
}

}  // namespace

void read_challenge(Fields fields, Challenge& challenge) {
    fields.text("name", challenge.name);
    fields.word("units", challenge.units, unit_words);
    read(fields.object("step"), challenge.step);
    fields.number("tolerance_mm", challenge.tolerance_mm, positive_mm);
    fields.number("right_within_deg", challenge.right_within_deg, right_angle_deg);
    fields.whole_or_null("depth_limit", challenge.depth_limit, one_or_more);
    fields.word("holds", challenge.holds, holds_words);
    fields.word("neighbours", challenge.neighbours, neighbours_words);
    fields.word("at_fault", challenge.at_fault, at_fault_words);
    fields.word("over_limit", challenge.over_limit, over_limit_words);
    fields.flag("equilateral_is_isosceles", challenge.equilateral_is_isosceles);
    read(fields.object("limits"), challenge.limits);
    for (const Fields& item : fields.objects("criteria", most_asked)) read(item, challenge.criteria.emplace_back());
    read(fields.object("score"), challenge.criteria.size(), challenge.score);
    read(fields.object("shown"), challenge.shown);
    fields.flag("hand_lengths_score", challenge.hand_lengths_score);
    fields.flag("holds_after_settling", challenge.holds_after_settling);
    fields.flag("sealed", challenge.sealed);
    challenge.unknown_fields = fields.unknown();
}

}  // namespace boughwork
