// SPDX-License-Identifier: MIT
#pragma once
// How far a plan reaches: what a picture of the whole of it must show.

#include "engine/geometry/polygon.h"
#include "engine/scene.h"

namespace boughwork {

/// The box around the tree and all that hangs in the plan, down to the ground, in mm.
Box extent_mm(const Scene& scene, const Plan& plan);

}  // namespace boughwork
