// SPDX-License-Identifier: MIT
#pragma once
// The referee's verdict as JSON, for other programs: what `check --json` prints.

#include <optional>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// `remedies[i]` is what puts finding i right, if anything was found. UTF-8, two blanks an indent, a
/// newline at the end.
std::string report_json(const Scene& scene, const Plan& plan, const Report& report,
                        const std::vector<std::optional<Remedy>>& remedies);

}  // namespace boughwork
