// SPDX-License-Identifier: MIT
#pragma once
// Counts, numbers and steps of a ruler as a person types and reads them. Lengths: typed_length.h.

#include <string>

#include "engine/challenge.h"

namespace boughwork {

/// A whole number from 0 to 1000000, and nothing else.
Result<int> parse_count(const std::string& typed);

/// A decimal of at most nine digits, with point or comma, below 0 as well. Exactly what the same digits are in
/// a plan file.
Result<double> parse_number(const std::string& typed);

/// "2.5", as it can be typed again; what needs more than six decimals is rounded.
std::string typed_number(double value);

/// As parse_length: "2 mm", "1/16 in"; in `unit` unless one is typed.
Result<Step> parse_step(const std::string& typed, Unit unit);

/// "5 mm", "1/4 in", "2 1/2 cm".
std::string step_words(const Step& step);

}  // namespace boughwork
