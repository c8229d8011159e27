// SPDX-License-Identifier: MIT
#pragma once
// Holds the program's answers about a pair of outlines against the exact ones, and counts what was met.

#include <string>

#include "tests/oracles/pair_families.h"

namespace boughwork::oracles {

/// How many pairs there were of each sort, by the exact numbers.
struct Met {
    int pairs = 0;
    int apart = 0;
    int touching = 0;
    int overlapping = 0;
    int along_a_side = 0;
    int corner_to_corner = 0;
    int corner_to_side = 0;
    int two_contacts = 0;    ///< Within a hair of the tolerance: two answers are accepted. Counted as touching too.
    int two_kinds = 0;       ///< Touches within a hair of a limit; not counted among the three kinds.
    int by_all_oracles = 0;  ///< Asked of every oracle; they agree to the last digit.
};

std::string in_words(const Met& met);

class Judge {
public:
    /// What the program says wrongly of the pair, with the pair; empty when nothing.
    std::string complaint(const Pair& pair);

    const Met& met() const { return met_; }

private:
    Met met_;
};

}  // namespace boughwork::oracles
