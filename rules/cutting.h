// SPDX-License-Identifier: MIT
#pragma once
// Paper as it is cut by hands that err.

#include "engine/scene.h"
#include "rules/hand_errors.h"

namespace boughwork {

/// The shape with a normal error at each side of a triangle, each corner of an outline in x and in y, a cone's radius
/// and its slant: drawn anew while no such shape can be cut, and as planned if that does not end.
Shape cut(const Shape& planned, double sigma_mm, HandErrors& errors);

}  // namespace boughwork
