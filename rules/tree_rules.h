// SPDX-License-Identifier: MIT
#pragma once
// Pieces against the ground, the trunk and the branches (rulebook 4).

#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/contact.h"
#include "rules/arrangement.h"
#include "rules/hanging.h"
#include "rules/report.h"

namespace boughwork {

/// The rules ground, trunk, other branch and over a branch, of every hung piece.
std::vector<Finding> tree_findings(const Arrangement& a, const std::vector<Hanging>& hanging);

/// The gap from a branch (first) to a piece (second), that of its deepest run; absent when they are
/// surely farther apart than `reach_mm`.
std::optional<Gap> gap_to_branch(const BranchShape& branch, const HungPiece& piece, double reach_mm);

/// "branch b1".
std::string branch_in_words(const Arrangement& a, std::size_t branch);

}  // namespace boughwork
