// SPDX-License-Identifier: MIT
#pragma once
// Pairs of pieces that come too near to each other (rulebook 4). Who is at fault is decided apart
// (fault.h).

#include <vector>

#include "engine/geometry/contact.h"
#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

/// A pair that breaks the rule overlap or touching. At least one of the two hangs.
struct Conflict {
    std::size_t first = 0;  ///< Places in Arrangement::pieces, first < second.
    std::size_t second = 0;
    Rule rule = Rule::overlap;
    Gap gap;
    Touch touch = Touch::corner_to_side;  ///< Of rule touching.
};

/// In order of first, then second.
std::vector<Conflict> find_conflicts(const Arrangement& a, const std::vector<Hanging>& hanging);

/// The finding on a conflict, in which the pieces `at_fault` lose.
Finding finding_on(const Arrangement& a, const Conflict& conflict, std::vector<PieceNumber> at_fault);

}  // namespace boughwork
