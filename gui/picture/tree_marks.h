// SPDX-License-Identifier: MIT
#pragma once
// The tree in the picture: trunk and branches, and the handles of what is chosen.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/geometry/tree_shape.h"
#include "gui/session/camera.h"

namespace boughwork {

/// In px, turned so that its signed_area() is positive there too.
Polygon outline_px(const Camera& camera, const Polygon& outline_mm);

/// The trunk and every run of every branch: convex.
std::vector<Polygon> wood_px(const Camera& camera, const TreeShape& tree);

void draw_tree(std::vector<Mark>& marks, const Camera& camera, const TreeShape& tree, double scale);

/// A thick outline round a branch, or the trunk, that is chosen.
void draw_chosen(std::vector<Mark>& marks, const Camera& camera, const Polygon& outline_mm, double scale);

/// A knob to pull.
void draw_handle(std::vector<Mark>& marks, Vec2 at_px, double scale);

}  // namespace boughwork
