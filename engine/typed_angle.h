// SPDX-License-Identifier: MIT
#pragma once
// An angle of a triangle as a person types it: "60", "22.5", "22,5°".

#include <string>

#include "engine/result.h"

namespace boughwork {

/// Degrees as a decimal (point or comma), a degree sign behind it or not. Refused: what is no number, nothing,
/// 0, and 180 or more, which no corner of a triangle has.
Result<double> parse_angle_deg(const std::string& typed);

/// "22.5": at most `decimals`, none that say nothing.
std::string angle_number(double deg, int decimals = 1);

}  // namespace boughwork
