// SPDX-License-Identifier: MIT
#include "tests/book/scoring.h"

#include <algorithm>

#include "tests/book/measuring.h"

namespace boughwork::book {

namespace {

Real half_um(Unit unit) { return unit == Unit::mm ? 2000 : unit == Unit::cm ? 20000 : 50800; }

/// How many steps make the unit of one point.
Real step_in_points(const Challenge& challenge) {
    const Step& step = challenge.step;
    return static_cast<Real>(step.numerator) * half_um(step.unit) /
           (static_cast<Real>(step.denominator) * half_um(challenge.score.unit.value_or(challenge.units)));
}

}  // namespace

std::int64_t points_in_parts(const Measures& m, ScoreBy by) {
    switch (by) {
        case ScoreBy::longest_side: return *std::max_element(m.sides_in_steps.begin(), m.sides_in_steps.end());
        case ScoreBy::perimeter: return m.perimeter_in_steps;
        case ScoreBy::area: return m.area_in_half_square_steps;
    }
    return 0;
}

Real one_part(const Challenge& challenge) {
    const Real step = step_in_points(challenge);
    return challenge.score.by == ScoreBy::area ? step * step / 2 : step;
}

double points(const Measures& measures, const Challenge& challenge) {
    return static_cast<double>(static_cast<Real>(points_in_parts(measures, challenge.score.by)) * one_part(challenge));
}

double points(const Bonus& bonus, const Report& report, const Challenge& challenge) {
    int times = 0;
    if (std::holds_alternative<InWords>(bonus.for_what)) times = 1;
    if (const auto* if_met = std::get_if<IfMet>(&bonus.for_what))
        for (const ChallengeLine& line : report.challenge)
            if (line.about == "criteria/" + std::to_string(if_met->criterion) && line.met == true) times = 1;
    for (const PieceReport& piece : report.pieces) {
        if (piece.state != PieceState::counts) continue;
        if (const auto* kind = std::get_if<PerPiece>(&bonus.for_what))
            times += is_of_kind(piece.measures, kind->kind, challenge);
        if (const auto* depth = std::get_if<PerDepth>(&bonus.for_what)) times += piece.depth == depth->depth;
    }
    return times * bonus.points;
}

}  // namespace boughwork::book
