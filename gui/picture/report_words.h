// SPDX-License-Identifier: MIT
#pragma once
// What the picture, the window and the console say alike about a report: measured numbers, and
// how many pieces count.

#include <cstdint>
#include <string>

#include "engine/challenge.h"
#include "rules/report.h"

namespace boughwork {

/// A measured length in the challenge's unit, without the unit: "7.5"; in inches, when they are the
/// ruler's too, "2 1/2".
std::string measured_words(std::int64_t steps, const Challenge& challenge);

/// "9 pieces count, 1 does not, 3 are in the envelope."
std::string counts_words(const Report& report);

/// "87 points".
std::string score_words(double score);

}  // namespace boughwork
