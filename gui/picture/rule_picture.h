// SPDX-License-Identifier: MIT
#pragma once
// A rule as a picture: its scene from scenes/rules, broken or kept, with nothing around it. For those
// who do not read yet.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/rule.h"
#include "gui/session/camera.h"

namespace boughwork {

/// All of what hangs there lies in the box; the tree goes on past it, so clip. `scale`: of strokes and numbers.
std::vector<Mark> rule_picture(Rule rule, bool kept, const PixelBox& box, double scale);

}  // namespace boughwork
