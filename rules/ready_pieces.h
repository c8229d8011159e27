// SPDX-License-Identifier: MIT
#pragma once
// The drawer of ready pieces: each kind by sides with each kind by angles that goes with it (seven), in three
// sizes. Their sides are whole centimetres, or whole inches, so that a ruler reads them exactly; those that cannot
// be stay clear of where a reading tips over. No angle lies between 85 and 95 degrees but the right ones.

#include <vector>

#include "engine/challenge.h"
#include "engine/scene.h"

namespace boughwork {

enum class Size { small, middle, large };

struct ReadyPiece {
    Kind by_sides;
    Kind by_angles;
    Size size;
    Triangle triangle;
};

/// For a challenge that shows that unit; kind by kind, each from small to large.
const std::vector<ReadyPiece>& ready_pieces(Unit unit);

}  // namespace boughwork
