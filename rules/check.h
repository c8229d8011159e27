// SPDX-License-Identifier: MIT
#pragma once
// The referee. Reads the rulebook's sections in their order: hanging, contact and size, fault, what
// is cut off, limits, then the score and the challenge's lines.

#include "rules/report.h"

namespace boughwork {

/// The verdict on a plan of the scene. The specification: always the whole plan, no memory.
/// The scene must be possible (as apply() and the plan file guarantee).
Report check(const Scene& scene, const Plan& plan);

/// The verdict on the current plan.
Report check(const Scene& scene);

}  // namespace boughwork
