// SPDX-License-Identifier: MIT
#include "rules/tally.h"

#include <algorithm>
#include <string>

#include "engine/words/say.h"
#include "rules/measure.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

template <class Matches>
long long count_counting(const Report& report, Matches matches) {
    return std::count_if(report.pieces.begin(), report.pieces.end(),
                         [&](const PieceReport& p) { return p.state == PieceState::counts && matches(p); });
}

/// One line of the tally, for each way to earn a bonus.
struct Earned {
    const Challenge& challenge;
    const Report& report;
    double points;

    BonusLine each(const std::string& what, long long how_many) const {
        return {say("{0}: {1} times {2}", {what, std::to_string(how_many), number_in_words(points)}),
                points * static_cast<double>(how_many)};
    }

    BonusLine operator()(const PerPiece& bonus) const {
        return each(said(bonus.kind), count_counting(report, [&](const PieceReport& p) {
                        return p.measures.kinds &&
                               is_of_kind(*p.measures.kinds, bonus.kind, challenge.equilateral_is_isosceles);
                    }));
    }
    BonusLine operator()(const PerDepth& bonus) const {
        return each(say("hung {0} deep", {std::to_string(bonus.depth)}),
                    count_counting(report, [&](const PieceReport& p) { return p.depth == bonus.depth; }));
    }
    BonusLine operator()(const IfMet& bonus) const {
        const std::string about = "criteria/" + std::to_string(bonus.criterion);
        const auto line = std::find_if(report.challenge.begin(), report.challenge.end(),
                                       [&](const ChallengeLine& l) { return l.about == about; });
        const bool met = line != report.challenge.end() && line->met.value_or(false);
        const std::string asks = line != report.challenge.end() ? line->asks : about;
        return {say(met ? phrase("{0}: met") : phrase("{0}: not met"), {asks}), met ? points : 0};
    }
    BonusLine operator()(const InWords& bonus) const { return {bonus.words, points}; }
};

}  // namespace

std::int64_t worth(const Measures& measures, const Scoring& scoring) {
    switch (scoring.by) {
        case ScoreBy::longest_side:
            return *std::max_element(measures.sides_in_steps.begin(), measures.sides_in_steps.end());
        case ScoreBy::perimeter: return measures.perimeter_in_steps;
        case ScoreBy::area: return measures.area_in_half_square_steps;
    }
    return 0;
}

double points(std::int64_t worth, const Challenge& challenge) {
    const Unit unit = score_unit(challenge);
    return challenge.score.by == ScoreBy::area ? area_in_units(worth, challenge.step, unit)
                                               : in_units(worth, challenge.step, unit);
}

std::vector<BonusLine> bonus_lines(const Challenge& challenge, const Report& report) {
    std::vector<BonusLine> lines;
    for (const Bonus& bonus : challenge.score.bonuses)
        lines.push_back(std::visit(Earned{challenge, report, bonus.points}, bonus.for_what));
    return lines;
}

std::int64_t counting_perimeter_in_steps(const Report& report) {
    std::int64_t sum = 0;
    for (const PieceReport& p : report.pieces)
        if (p.state == PieceState::counts) sum += scored(p).perimeter_in_steps;
    return sum;
}

double counting_points(const Challenge& challenge, const Report& report) {
    std::int64_t sum = 0;
    for (const PieceReport& p : report.pieces)
        if (p.state == PieceState::counts) sum += worth(scored(p), challenge.score);
    return points(sum, challenge);
}

double score(const Challenge& challenge, const Report& report) {
    double total = counting_points(challenge, report);
    for (const BonusLine& line : report.bonuses) total += line.points;
    return total;
}

}  // namespace boughwork
