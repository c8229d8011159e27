// SPDX-License-Identifier: MIT
#pragma once
// The right answers, found the plain way, so that no contender is timed for wrong ones. Where a
// distance is so near to a limit that rounding decides, either answer is right.

#include "tests/bench/versus/contender.h"

namespace boughwork {

struct Expected {
    PairCounts answers;
    std::size_t close_calls = 0;       ///< Pairs that may pass for one kind or the next.
    std::size_t near_close_calls = 0;  ///< Pairs that may pass for near or not.

    Expected& operator+=(const Expected& more);
};

/// Of all pairs.
Expected expected(const Outlines& outlines);
/// Of the pairs of outline `i` with another one.
Expected expected_of(const Outlines& outlines, std::size_t i);

/// `near` is not asked for of a contender that does not tell.
bool right(const PairCounts& answers, const Expected& expected);

}  // namespace boughwork
