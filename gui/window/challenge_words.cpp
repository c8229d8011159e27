// SPDX-License-Identifier: MIT
#include "gui/window/challenge_words.h"

#include "engine/typed_length.h"
#include "gui/picture/report_words.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

std::string in_words(const Range<int>& range, const std::string& one, const std::string& several) {
    const int least = range.least.value_or(0);
    if (range.most && *range.most == least) return "Exactly " + counted(least, one, several) + ".";
    if (range.most && least > 0) return std::to_string(least) + " to " + counted(*range.most, one, several) + ".";
    if (range.most) return "At most " + counted(*range.most, one, several) + ".";
    return "At least " + counted(least, one, several) + ".";
}

bool asks_something(const Range<int>& range) { return range.most || range.least.value_or(0) > 0; }

std::string measuring(const Challenge& challenge) {
    const Step& step = challenge.step;
    const std::string finely =
        step.denominator == 1 ? std::to_string(step.numerator) : mixed_fraction(step.numerator, step.denominator);
    return "Sides are measured to the nearest " + finely + " " + symbol_of(step.unit) + " and shown in " +
           symbol_of(challenge.units) + ".";
}

std::string hanging(const Challenge& challenge) {
    const std::string whole = "A whole side of a piece lies on a branch";
    if (!challenge.depth_limit) return whole + ", or on a side of a piece that hangs; chains may be of any length.";
    if (*challenge.depth_limit == 1) return whole + "; pieces do not hang from pieces.";
    return whole + ", or on a side of a piece that hangs; at most " + std::to_string(*challenge.depth_limit) +
           " pieces in a chain.";
}

const char* in_words(Holds holds) {
    return holds == Holds::hanging ? "A piece that hangs holds its chain, even when it does not count itself."
                                   : "Only a piece that counts holds its chain.";
}

const char* in_words(Neighbours neighbours) {
    switch (neighbours) {
        case Neighbours::apart: return "Pieces may not touch each other.";
        case Neighbours::corner_to_corner: return "A corner may touch a corner; nothing else may touch.";
        case Neighbours::corners: return "A corner may touch a corner or a side; sides may not touch along each other.";
        case Neighbours::sides: return "Pieces may touch each other, and not overlap.";
    }
    return "";
}

const char* in_words(AtFault at_fault) {
    switch (at_fault) {
        case AtFault::both: return "Of two that come too near, neither counts.";
        case AtFault::higher_number: return "Of two that come too near, the higher number does not count.";
        case AtFault::fewest_points: return "Of those that come too near, the ones worth fewest points do not count.";
    }
    return "";
}

const char* in_words(OverLimit over) {
    return over == OverLimit::extras_do_not_count ? "When there are too many, the highest numbers do not count."
                                                  : "When there are too many, all count, and the line is not met.";
}

std::string sizes(const Challenge& challenge) {
    const auto length = [&](Length l) { return length_words(l, challenge.units); };
    const Limits& limits = challenge.limits;
    std::string words;
    if (limits.side.least) words += "Every side is at least " + length(*limits.side.least) + " long. ";
    if (limits.side.most) words += "No side is longer than " + length(*limits.side.most) + ". ";
    if (limits.least_height) words += "Every piece is at least " + length(*limits.least_height) + " high. ";
    if (!words.empty()) words.pop_back();
    return words;
}

struct CriterionWords {
    std::string operator()(const NoTwoAlike& asks) const {
        return "At least " + counted(asks.pieces, "piece", "pieces, no two of them alike") + ".";
    }
    std::string operator()(const KindAppears& asks) const {
        return "At least " +
               counted(asks.at_least, name_of(asks.kind) + std::string(" triangle"),
                       name_of(asks.kind) + std::string(" triangles")) +
               ".";
    }
    std::string operator()(const KindShare& asks) const {
        return std::string(asks.at_most ? "At most " : "At least ") + number_in_words(asks.percent) + " of 100 " +
               (asks.of == ShareOf::points ? "points are made by " : "triangles are ") + name_of(asks.kind) +
               (asks.of == ShareOf::points ? " triangles." : ".");
    }
};

struct BonusWords {
    const Challenge& challenge;

    std::string operator()(const PerPiece& bonus) const {
        return std::string("for each ") + name_of(bonus.kind) + " triangle that counts";
    }
    std::string operator()(const PerDepth& bonus) const {
        return "for each piece that counts at place " + std::to_string(bonus.depth) + " of its chain";
    }
    std::string operator()(const IfMet& bonus) const {
        const Criterion& criterion = challenge.criteria[static_cast<std::size_t>(bonus.criterion)];
        std::string asks = std::visit(CriterionWords{}, criterion.asks);
        asks.pop_back();
        return "once, if this is met: " + asks;
    }
    std::string operator()(const InWords& bonus) const { return "for: " + bonus.words; }
};

std::string scoring(const Challenge& challenge) {
    const std::string unit = name_of(score_unit(challenge));
    switch (challenge.score.by) {
        case ScoreBy::longest_side: return "One point for each " + unit + " of its longest side.";
        case ScoreBy::perimeter: return "One point for each " + unit + " around it (its perimeter).";
        case ScoreBy::area: return "One point for each square " + unit + " of its area.";
    }
    return "";
}

}  // namespace

std::vector<ChallengeSentence> challenge_words(const Challenge& challenge) {
    const Limits& limits = challenge.limits;
    std::vector<ChallengeSentence> words;
    words.push_back({"Hanging", hanging(challenge)});
    if (challenge.depth_limit != 1) words.push_back({"Chains", in_words(challenge.holds)});
    words.push_back({"Neighbours", in_words(challenge.neighbours)});
    words.push_back({"Too near", in_words(challenge.at_fault)});
    words.push_back({"Off the ground", "Pieces stay clear of the ground, the trunk and other branches."});
    if (const std::string size = sizes(challenge); !size.empty()) words.push_back({"Size", size});
    if (asks_something(limits.pieces))
        words.push_back({"Pieces", in_words(limits.pieces, "piece that counts", "pieces that count")});
    if (asks_something(limits.branches)) words.push_back({"Branches", in_words(limits.branches, "branch", "branches")});
    if (asks_something(limits.pieces_per_branch))
        words.push_back(
            {"On each branch", in_words(limits.pieces_per_branch, "piece that counts", "pieces that count")});
    if (limits.pieces.most || limits.pieces_per_branch.most)
        words.push_back({"Too many", in_words(challenge.over_limit)});
    if (limits.sheets)
        words.push_back({"Paper", "At most " + counted(*limits.sheets, "sheet", "sheets") + " of paper."});
    for (const Criterion& criterion : challenge.criteria)
        words.push_back({std::holds_alternative<NoTwoAlike>(criterion.asks) ? "Not alike" : "Kinds",
                         std::visit(CriterionWords{}, criterion.asks)});
    words.push_back({"Points", "Each piece that counts: " + scoring(challenge)});
    for (const Bonus& bonus : challenge.score.bonuses)
        words.push_back({"Bonus", number_in_words(bonus.points) + (bonus.points == 1 ? " point " : " points ") +
                                      std::visit(BonusWords{challenge}, bonus.for_what) + "."});
    words.push_back({"Measuring", measuring(challenge)});
    words.push_back({"Names", kinds_words(challenge) + " A ? beside a number is a close call: nearly a right angle."});
    words.push_back({"Nearness", "Within " + length_in_words(challenge.tolerance_mm, challenge.units, Rounding::up) +
                                     ", two things touch."});
    return words;
}

}  // namespace boughwork
