// SPDX-License-Identifier: MIT
#include "rules/report.h"

#include <algorithm>

namespace boughwork {

const char* name_of(Rule rule) {
    switch (rule) {
        case Rule::runs_past_the_end: return "runs past the end";
        case Rule::over_a_branch: return "over a branch";
        case Rule::not_by_a_whole_side: return "not by a whole side";
        case Rule::cut_off: return "cut off";
        case Rule::held_by_nothing: return "held by nothing";
        case Rule::too_deep: return "too deep";
        case Rule::ground: return "ground";
        case Rule::trunk: return "trunk";
        case Rule::other_branch: return "other branch";
        case Rule::overlap: return "overlap";
        case Rule::touching: return "touching";
        case Rule::wrong_size: return "wrong size";
        case Rule::over_the_limit: return "over the limit";
    }
    return "";
}

const char* name_of(Kind kind) {
    switch (kind) {
        case Kind::equilateral: return "equilateral";
        case Kind::isosceles: return "isosceles";
        case Kind::scalene: return "scalene";
        case Kind::right: return "right";
        case Kind::acute: return "acute";
        case Kind::obtuse: return "obtuse";
    }
    return "";
}

const PieceReport* find_piece(const Report& report, PieceNumber number) {
    const auto at = std::lower_bound(report.pieces.begin(), report.pieces.end(), number,
                                     [](const PieceReport& p, PieceNumber n) { return p.number < n; });
    return at != report.pieces.end() && at->number == number ? &*at : nullptr;
}

bool all_well(const Report& report) {
    return std::none_of(report.pieces.begin(), report.pieces.end(),
                        [](const PieceReport& p) { return p.state == PieceState::does_not_count; }) &&
           std::all_of(report.challenge.begin(), report.challenge.end(),
                       [](const ChallengeLine& line) { return line.met.value_or(true); });
}

}  // namespace boughwork
