// SPDX-License-Identifier: MIT
#pragma once
// check() with a memory: for a scene that differs little from the last one it saw, as in a drag.
// What changed is found by comparing values, so that undo, open and settle need no events.

#include <optional>
#include <vector>

#include "rules/arrangement.h"
#include "rules/report.h"

namespace boughwork {

class IncrementalChecker {
public:
    IncrementalChecker() = default;
    IncrementalChecker(const IncrementalChecker&) = delete;  // the arrangement looks into what is kept
    IncrementalChecker& operator=(const IncrementalChecker&) = delete;

    /// The same as check(scene, plan), always.
    Report check(const Scene& scene, const Plan& plan);

private:
    void measure_changed(const Scene& scene);
    void arrange_changed(const Plan& plan);

    // What was seen last, kept by value, and what was seen of it.
    Scene seen_;  ///< Challenge and pieces.
    Plan seen_plan_;
    std::vector<PieceReport> measured_;
    std::optional<Arrangement> arrangement_;  ///< Of seen_plan_ in seen_.
};

}  // namespace boughwork
