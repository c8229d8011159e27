// SPDX-License-Identifier: MIT
#pragma once
// What `check` and `table` print of a plan.

#include <optional>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// What puts each of the report's findings right, if anything was found.
std::vector<std::optional<Remedy>> remedies_of(const Scene& scene, const Plan& plan, const Report& report);

/// The verdict as JSON, with the remedies, as `check --json` prints it.
std::string printed_json(const Scene& scene, const Plan& plan);

/// What shaky hands make of the plan, as `hands --json` prints it.
std::string printed_hands(const Scene& scene, const Plan& plan, int builds);

/// The data table as `table --csv` prints it: in English, since other programs read it.
std::string printed_csv(const Scene& scene, const Plan& plan);

}  // namespace boughwork
