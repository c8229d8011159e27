// SPDX-License-Identifier: MIT
#pragma once
// A challenge with every setting drawn, and pieces of paper drawn for it.

#include "engine/scene.h"
#include "tests/book/dice.h"

namespace boughwork::book {

Challenge drawn_challenge(Dice& dice);

/// A shape about so large: triangles of every kind, cones and other polygons.
Shape drawn_shape(Dice& dice, double about_mm, const Step& step);

}  // namespace boughwork::book
