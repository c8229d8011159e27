// SPDX-License-Identifier: MIT
#pragma once
// The book, slowly: the rulebook's sections 1 to 9 once more, read word by word and written down as
// plainly as they stand, a file for each section. It shares values with the program (the scene, the
// report) and no thought: spans, outlines, distances and decisions are its own. Words, places and
// remedies are left out.

#include "rules/report.h"

namespace boughwork::book {

struct Verdict {
    Report report;          ///< Without words.
    bool in_doubt = false;  ///< A decision lay within a hair of its threshold.
};

Verdict verdict(const Scene& scene);

/// Whether every branch of the tree is possible (rulebook 2); nothing when rounding may decide it.
std::optional<bool> possible(const Scene& scene);

}  // namespace boughwork::book
