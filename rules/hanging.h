// SPDX-License-Identifier: MIT
#pragma once
// What hangs, from what, and how deep; and of what does not hang, why (rulebook 3).

#include <optional>
#include <vector>

#include "rules/arrangement.h"
#include "rules/report.h"

namespace boughwork {

/// One piece's place in the tree. It hangs when `support` is there.
struct Hanging {
    std::optional<Support> support;
    int side = 0;  ///< By which side, from 1.
    int depth = 0;
    std::vector<std::size_t> parents;  ///< Places in Arrangement::pieces, in order.
};

/// For each piece of the arrangement, found outward from the branches, breadth first.
std::vector<Hanging> find_hanging(const Arrangement& a);

}  // namespace boughwork
