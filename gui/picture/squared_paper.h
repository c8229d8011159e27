// SPDX-License-Identifier: MIT
#pragma once
// The squared paper that the tree lies on, and the rulers on its left and below, in the challenge's
// unit: squares of 1 cm or 1/4 in at the usual zoom, finer or coarser as it changes.

#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/length.h"
#include "gui/session/camera.h"

namespace boughwork {

/// The camera's view is the squared paper alone; the rulers lie outside it, left and below. This is
/// the view that a panel leaves when its rulers have their place.
PixelBox paper_within(const PixelBox& panel, double scale);

/// The panel that belongs to a view: the paper and its rulers.
PixelBox panel_around(const PixelBox& view, double scale);

/// How far apart the lines are, and the labels, in the unit.
struct Squares {
    double thin = 1;
    double bold = 5;
    double labels = 5;
};
Squares squares(const Camera& camera, Unit unit, double scale);

/// Paper, lines and the ground below y = 0, over the view.
std::vector<Mark> squared_paper(const Camera& camera, Unit unit, double scale);

/// Both rulers with their numbers; drawn last, over what sticks out of the view on these two sides.
std::vector<Mark> rulers(const Camera& camera, Unit unit, double scale);

}  // namespace boughwork
