// SPDX-License-Identifier: MIT
#include "gui/picture/challenge_words.h"

#include <cassert>

#include "engine/typed_length.h"
#include "engine/typed_number.h"
#include "engine/words/say.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// "at least 3", "3 to 5", "exactly 3", "at most 5", "any number".
std::string range_words(const std::optional<std::string>& least, const std::optional<std::string>& most) {
    if (least && most) return *least == *most ? say("exactly {0}", {*least}) : say("{0} to {1}", {*least, *most});
    if (least) return say("at least {0}", {*least});
    if (most) return say("at most {0}", {*most});
    return say("any number");
}

std::string range_words(const Range<int>& range) {
    // A least of nothing asks nothing.
    const bool least = range.least.value_or(0) > 0;
    return range_words(least ? std::optional(std::to_string(*range.least)) : std::nullopt,
                       range.most ? std::optional(std::to_string(*range.most)) : std::nullopt);
}

std::string range_words(const Range<Length>& range, Unit unit) {
    const auto words = [&](const std::optional<Length>& length) {
        return length ? std::optional(length_words(*length, unit)) : std::nullopt;
    };
    return range_words(words(range.least), words(range.most));
}

std::string depth_words(const std::optional<int>& limit) {
    if (!limit) return say("A whole side lies on a branch, or on a side of a hanging piece; chains may be long.");
    if (*limit == 1) return say("A whole side lies on a branch; no piece hangs from a piece.");
    return say("A whole side lies on a branch, or on a side of a hanging piece; a chain has at most {0} pieces.",
               {std::to_string(*limit)});
}

const char* words(Holds holds) {
    return holds == Holds::hanging ? phrase("A piece that hangs holds its chain, even when it does not count itself.")
                                   : phrase("Only a piece that counts holds its chain.");
}

const char* words(Neighbours neighbours) {
    switch (neighbours) {
        case Neighbours::apart: return phrase("Pieces may not touch each other.");
        case Neighbours::corner_to_corner: return phrase("A corner may touch a corner; nothing else may touch.");
        case Neighbours::corners: return phrase("A corner may touch a corner or a side; two sides may not touch.");
        case Neighbours::sides: return phrase("Pieces may touch each other, and not overlap.");
    }
    return "";
}

const char* words(AtFault at_fault) {
    switch (at_fault) {
        case AtFault::both: return phrase("Of two that come too near, neither counts.");
        case AtFault::higher_number: return phrase("Of two that come too near, the higher number does not count.");
        case AtFault::fewest_points: return phrase("Of those too near, the ones worth fewest points do not count.");
    }
    return "";
}

const char* words(ScoreBy by) {
    switch (by) {
        case ScoreBy::longest_side:
            return phrase("A piece that counts gives a point for each {0} of its longest side.");
        case ScoreBy::perimeter:
            return phrase("A piece that counts gives a point for each {0} around it: its perimeter.");
        case ScoreBy::area: return phrase("A piece that counts gives a point for each square {0} of its area.");
    }
    return "";
}

const char* words(Shows shows) {
    switch (shows) {
        case Shows::always: return phrase("{0}: shown at once.");
        case Shows::after_an_answer: return phrase("{0}: shown when a pupil has answered.");
        case Shows::after_the_lesson: return phrase("{0}: shown after the lesson.");
    }
    return "";
}

const char* name_of_shown(Setting setting) {
    switch (setting) {
        case Setting::shown_lengths: return phrase("Lengths of the sides");
        case Setting::shown_kinds: return phrase("Kinds of the triangles");
        case Setting::shown_sums: return phrase("Perimeter, height and area");
        case Setting::shown_points: return phrase("Points, and the score");
        default: return phrase("How to fix what is wrong");
    }
}

std::string degrees_words(double degrees) {
    return degrees == 1
               ? say("An angle is right when it is at most 1 degree away from 90.")
               : say("An angle is right when it is at most {0} degrees away from 90.", {typed_number(degrees)});
}

struct CriterionWords {
    std::string operator()(const NoTwoAlike& asks) const {
        return say("At least {0} pieces that count, no two of them alike.", {std::to_string(asks.pieces)});
    }
    std::string operator()(const KindAppears& asks) const {
        const std::string count = std::to_string(asks.at_least);
        return asks.at_least == 1 ? say("At least {0} {1} counts.", {count, triangle_words(asks.kind)})
                                  : say("At least {0} {1} count.", {count, triangles_in_words(asks.kind)});
    }
    std::string operator()(const KindShare& asks) const {
        const char* pieces = asks.at_most ? phrase("Of every 100 triangles that count, at most {0} are {1}.")
                                          : phrase("Of every 100 triangles that count, at least {0} are {1}.");
        const char* points = asks.at_most ? phrase("Of every 100 points, at most {0} come from {1}.")
                                          : phrase("Of every 100 points, at least {0} come from {1}.");
        return say(asks.of == ShareOf::pieces ? pieces : points,
                   {typed_number(asks.percent), triangles_in_words(asks.kind)});
    }
};

struct BonusWords {
    const Challenge& challenge;
    std::string points;

    std::string operator()(const PerPiece& bonus) const {
        return say("{0} for each {1} that counts.", {points, triangle_words(bonus.kind)});
    }
    std::string operator()(const PerDepth& bonus) const {
        return say("{0} for each piece that counts at place {1} of its chain.", {points, std::to_string(bonus.depth)});
    }
    std::string operator()(const IfMet& bonus) const {
        return say("{0} once, if this is met: {1}",
                   {points, says(challenge.criteria[static_cast<std::size_t>(bonus.criterion)])});
    }
    std::string operator()(const InWords& bonus) const {
        return bonus.words.empty() ? say("{0} for what the teacher names.", {points})
                                   : say("{0} for: {1}", {points, bonus.words});
    }
};

}  // namespace

std::string says(Setting setting, const Challenge& challenge) {
    const Limits& limits = challenge.limits;
    switch (setting) {
        case Setting::units: return say("Lengths are shown in {0}.", {said(challenge.units)});
        case Setting::step: return say("Sides are measured to the nearest {0}.", {step_words(challenge.step)});
        case Setting::tolerance: {
            const Unit unit = challenge.units == Unit::in ? Unit::in : Unit::mm;
            return say("Two things touch when they are {0} apart or less.",
                       {length_words(length_from_mm(challenge.tolerance_mm), unit)});
        }
        case Setting::right_angle: return degrees_words(challenge.right_within_deg);
        case Setting::isosceles:
            return challenge.equilateral_is_isosceles ? say("An isosceles triangle has at least two equal sides.")
                                                      : say("An isosceles triangle has exactly two equal sides.");
        case Setting::hand_lengths:
            return challenge.hand_lengths_score ? say("Lengths that were measured by hand score.")
                                                : say("The planned lengths score.");
        case Setting::depth: return depth_words(challenge.depth_limit);
        case Setting::holds: return say(words(challenge.holds));
        case Setting::neighbours: return say(words(challenge.neighbours));
        case Setting::at_fault: return say(words(challenge.at_fault));
        case Setting::clearance: return say("Pieces stay clear of the ground, the trunk and other branches.");
        case Setting::after_settling:
            return challenge.holds_after_settling
                       ? say("Gravity is reckoned with: after settling the tree stands, and every piece still counts.")
                       : say("Gravity is not reckoned with: the plan is judged as it lies flat.");
        case Setting::pieces: return say("Pieces that count: {0}.", {range_words(limits.pieces)});
        case Setting::pieces_per_branch:
            return say("Pieces that count on each branch: {0}.", {range_words(limits.pieces_per_branch)});
        case Setting::over_limit:
            return challenge.over_limit == OverLimit::extras_do_not_count
                       ? say("When there are too many, the highest numbers do not count.")
                       : say("When there are too many, all count, and the line is not met.");
        case Setting::branches: return say("Branches of the tree: {0}.", {range_words(limits.branches)});
        case Setting::sheets: return say("Sheets of paper: {0}.", {range_words({std::nullopt, limits.sheets})});
        case Setting::side:
            return limits.side.least || limits.side.most
                       ? say("Every side is {0} long.", {range_words(limits.side, challenge.units)})
                       : say("Sides may be of any length.");
        case Setting::least_height:
            return limits.least_height
                       ? say("Every piece is {0} high.", {range_words({limits.least_height, {}}, challenge.units)})
                       : say("Pieces may be of any height.");
        case Setting::score: return say(words(challenge.score.by), {said(score_unit(challenge))});
        default: break;
    }
    Shown shown = challenge.shown;
    return say(words(shows(shown, setting)), {say(name_of_shown(setting))});
}

std::string says(const Criterion& criterion) { return std::visit(CriterionWords{}, criterion.asks); }

std::string says(const Bonus& bonus, const Challenge& challenge) {
    const std::string points = bonus.points == 1 ? say("1 point") : say("{0} points", {typed_number(bonus.points)});
    return std::visit(BonusWords{challenge, points}, bonus.for_what);
}

std::string triangle_words(Kind kind) {
    constexpr const char* names[] = {phrase("equilateral triangle"), phrase("isosceles triangle"),
                                     phrase("scalene triangle"),     phrase("right triangle"),
                                     phrase("acute triangle"),       phrase("obtuse triangle")};
    return say(names[static_cast<std::size_t>(kind)]);
}

Shows& shows(Shown& shown, Setting setting) {
    switch (setting) {
        case Setting::shown_lengths: return shown.lengths;
        case Setting::shown_kinds: return shown.kinds;
        case Setting::shown_sums: return shown.sums;
        case Setting::shown_points: return shown.points;
        default: assert(setting == Setting::shown_fixes); return shown.fixes;
    }
}

}  // namespace boughwork
