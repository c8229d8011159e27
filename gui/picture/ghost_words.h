// SPDX-License-Identifier: MIT
#pragma once
// What is said of a piece that is held where it would hang: the side that it hangs by, the angles at that side's ends,
// and the room that is left beside it.

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "gui/picture/label_places.h"
#include "gui/session/camera.h"
#include "rules/report.h"

namespace boughwork {

/// Above what holds it, clear of the hand, and of everything else as far as there is room. Nothing for a piece that
/// hangs from nothing. What is kept back (rules/told.h) is not said.
std::vector<Mark> ghost_words(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece,
                              const Camera& camera, LabelPlaces& places, double scale);

}  // namespace boughwork
