// SPDX-License-Identifier: MIT
#pragma once
// The tree pulled about by a hand or by keys.

#include <vector>

#include "engine/edit.h"
#include "gui/session/picking.h"
#include "rules/report.h"

namespace boughwork {

/// What pulling a part of the tree by so much asks for. Pieces that hang from a branch come along
/// with it: with the whole branch when that is moved, with their span when a bend is. `report` is
/// the verdict on the scene. Empty for what cannot be pulled.
std::vector<Edit> pulled(const Scene& scene, const Report& report, const Picked& what, Vec2 by_mm);

/// Where a hand that pulls that point of the branch to `at_mm` is taken to mean: where its run to the point before
/// (of the first: after) gets a round angle, a round length, or both, if that is within a few millimetres.
Vec2 rounded_point(const Branch& branch, std::size_t point, Vec2 at_mm, Unit unit);

/// A straight branch for the side of the tree that has fewer, lower than those there.
Branch next_branch(const Tree& tree);

/// The branch with a point more, half-way to the next after `point` (or before it at the tip);
/// without a point, in the middle of its longest run.
ShapeBranch with_bend(const Branch& branch, std::optional<std::size_t> point);
/// The branch without that point of its path.
ShapeBranch without_bend(const Branch& branch, std::size_t point);

}  // namespace boughwork
