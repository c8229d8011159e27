// SPDX-License-Identifier: MIT
#pragma once
// What is drawn of a plan that was stood up, besides the plan as it has become: thinly how it lay flat, and where its
// weight acts.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "engine/settle/tipping.h"
#include "gui/session/camera.h"

namespace boughwork {

/// Outlines in dashes of the branches and pieces that are elsewhere in `settled`.
void draw_flat(std::vector<Mark>& marks, const Camera& camera, const Scene& scene, const Plan& flat,
               const Plan& settled, double scale);

/// The base on the ground, the centre of mass, and the plumb line below it.
void draw_tipping(std::vector<Mark>& marks, const Camera& camera, const Tipping& tipping, double scale);

}  // namespace boughwork
