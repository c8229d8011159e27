// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 9: what the challenge asks as a whole, and what is there.

#include "rules/report.h"
#include "tests/book/hanging.h"

namespace boughwork::book {

/// In the contract's order; words are left out. `pieces` of the report are decided by now.
std::vector<ChallengeLine> challenge_lines(const Judgement& judgement, const Report& report);

}  // namespace boughwork::book
