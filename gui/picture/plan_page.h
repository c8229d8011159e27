// SPDX-License-Identifier: MIT
#pragma once
// The plan as a page to save or print: the whole tree, with title, plan and score above it, and
// below it how many pieces count and what the kinds mean here.

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "rules/report.h"
#include "rules/settled.h"

namespace boughwork {

Drawing plan_page(const Scene& scene, const Plan& plan, const Report& report);

/// The plan as gravity leaves it, and in dashes as it lies flat; below it what sags most, and whether the tree stands.
/// The report is the referee's on the settled plan.
Drawing settled_page(const Scene& scene, const Plan& flat, const Settled& settled, const Report& report);

}  // namespace boughwork
