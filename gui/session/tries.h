// SPDX-License-Identifier: MIT
#pragma once
// Where pupils are to put a finding right themselves before the fix is told: which findings have been
// tried.

#include <set>
#include <utility>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

class Tries {
public:
    /// The plan became another by a person's work. A finding of before, about a piece that was moved, was tried.
    void note(const Report& before, const Plan& from, const Plan& to);
    bool tried(const Finding& finding) const { return tried_.count(key(finding)) > 0; }

private:
    using Key = std::pair<Rule, std::vector<PieceNumber>>;
    static Key key(const Finding& finding) { return {finding.rule, finding.pieces}; }

    std::set<Key> tried_;
};

}  // namespace boughwork
