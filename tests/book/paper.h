// SPDX-License-Identifier: MIT
#pragma once
// The contract's frame of a piece: where its corners lie on the paper and in the plan. What is exact on
// paper (squared distances between corners, areas) is kept in whole numbers here.

#include "engine/scene.h"
#include "tests/book/plane.h"

namespace boughwork::book {

__extension__ typedef __int128 Whole128;  ///< Room for the fourth power of a length in half-micrometres.

/// The squared distance between two corners (from 0), in half-micrometres squared. Exact.
Whole128 squared_distance(const Shape& shape, std::size_t corner, std::size_t other);

/// The squared length of a side (from 1). Exact.
Whole128 squared_side(const Shape& shape, int side);

/// Twice the area, squared, times four: 16 A^2, in half-micrometres to the fourth. Exact.
Whole128 area_squared_times_16(const Shape& shape);

std::size_t corners_of(const Shape& shape);

/// Corner 1 first, in the piece's own frame.
Corners on_paper(const Shape& shape);

/// Corner 1 first, in the plan.
Corners in_plan(const Shape& shape, const Pose& pose);

bool is_cone(const Shape& shape);

}  // namespace boughwork::book
