// SPDX-License-Identifier: MIT
#include "rules/report.h"

#include <algorithm>

namespace boughwork {

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
