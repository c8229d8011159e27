// SPDX-License-Identifier: MIT
#include "gui/session/tries.h"

#include <algorithm>

namespace boughwork {

void Tries::note(const Report& before, const Plan& from, const Plan& to) {
    const auto moved = [&](PieceNumber piece) {
        const Hung* was = find_hung(from, piece);
        const Hung* is = find_hung(to, piece);
        return was && is && was->pose != is->pose;
    };
    for (const Finding& finding : before.findings)
        if (std::any_of(finding.pieces.begin(), finding.pieces.end(), moved)) tried_.insert(key(finding));
}

}  // namespace boughwork
