// SPDX-License-Identifier: MIT
#pragma once
// A shape of paper as it is seen in a mirror: another shape, where turning it over does not give the same.

#include <optional>

#include "engine/scene.h"

namespace boughwork {

/// Its first side stays the first. Absent where the mirror image is the shape itself, turned at most: a triangle
/// with two equal sides, a cone, a regular polygon.
std::optional<Shape> mirror_image(const Shape& shape);

}  // namespace boughwork
