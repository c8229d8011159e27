// SPDX-License-Identifier: MIT
#pragma once
// Every setting of a challenge as one sentence that a pupil can read.

#include <string>

#include "engine/challenge.h"

namespace boughwork {

enum class Setting {
    units,
    step,
    tolerance,
    right_angle,
    isosceles,
    hand_lengths,
    depth,
    holds,
    neighbours,
    at_fault,
    clearance,  ///< The same in every challenge.
    after_settling,
    pieces,
    pieces_per_branch,
    over_limit,
    branches,
    sheets,
    side,
    least_height,
    score,
    shown_lengths,
    shown_kinds,
    shown_sums,
    shown_points,
    shown_fixes,
};

std::string says(Setting setting, const Challenge& challenge);
std::string says(const Criterion& criterion);
/// `challenge` has it.
std::string says(const Bonus& bonus, const Challenge& challenge);

/// "right triangle".
std::string triangle_words(Kind kind);

/// Of Challenge::shown.
Shows& shows(Shown& shown, Setting setting);

}  // namespace boughwork
