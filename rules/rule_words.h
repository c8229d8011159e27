// SPDX-License-Identifier: MIT
#pragma once
// The rules in words for those who look at a tree: what each asks, in one sentence, and what is seen
// when it is broken. The sentences that the referee says of one piece are made where the rule is.

#include <string>
#include <vector>

#include "engine/rule.h"

namespace boughwork {

/// Every rule once, in the order in which they are best explained.
const std::vector<Rule>& rules_in_order();

/// "A piece hangs by a whole side: both its ends are on the branch."
std::string asks_in_words(Rule rule);

/// "sticks out past the end"
std::string broken_in_words(Rule rule);

}  // namespace boughwork
