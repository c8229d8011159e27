// SPDX-License-Identifier: MIT
#pragma once
// Small plans drawn by dice, made to come near every threshold of the rulebook: branches bent, upright,
// crossing and short, and pieces hung from them and from each other exactly, nearly, past ends, too close
// together, on the trunk and on the ground. Where to hang is found from the book's own shapes.

#include "engine/scene.h"
#include "tests/book/dice.h"

namespace boughwork::book {

/// One plan, up to about ten pieces, every setting drawn. The same seed draws the same scene.
Scene drawn_scene(std::uint64_t seed);

/// A branch that may be impossible, through or near `tree`.
Branch drawn_branch(Dice& dice, const Tree& tree, double tolerance_mm);

}  // namespace boughwork::book
