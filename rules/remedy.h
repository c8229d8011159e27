// SPDX-License-Identifier: MIT
#pragma once
// What would put a finding right. Searched apart from check(), since every candidate is tried on
// the whole plan: ask when a person looks at the finding, not on every frame of a drag.

#include <optional>

#include "rules/report.h"

namespace boughwork {

/// The smallest tried move that removes `finding` (of `report`, of `plan`) and adds none; absent when none was found.
std::optional<Remedy> remedy(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding);

/// The plan with the move made.
Plan with_remedy(const Plan& plan, const Remedy& remedy);

}  // namespace boughwork
