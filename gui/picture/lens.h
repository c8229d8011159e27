// SPDX-License-Identifier: MIT
#pragma once
// The referee's lens: a round piece of the plan near a finding, enlarged, with the gap that is there
// and the gap that is allowed drawn beside each other.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "gui/session/camera.h"
#include "rules/report.h"

namespace boughwork {

/// Nothing for a finding that says nowhere.
std::vector<Mark> lens(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding,
                       const Camera& camera, double scale);

}  // namespace boughwork
