// SPDX-License-Identifier: MIT
#pragma once
// A length as a person types and reads it: "7.5", "2 1/2", "12 mm". Exact both ways: what cannot be
// held in half-micrometres is refused, never rounded.

#include <string>

#include "engine/length.h"
#include "engine/result.h"

namespace boughwork {

/// A decimal (point or comma) or a whole number and a fraction, in `unit` unless a unit is typed
/// behind it (mm, cm, in). Refused: what is no number, nothing, more than 1e6 mm, and what is no whole
/// number of half-micrometres (of an inch, sixteenths and coarser are).
Result<Length> parse_length(const std::string& typed, Unit unit);

/// "mm", "cm" or "in".
const char* symbol_of(Unit unit);

/// "7.5"; in inches "2 1/2" for sixteenths, else a decimal to the nearest thousandth.
std::string length_number(Length length, Unit unit);

/// With its unit: "7.5 cm".
std::string length_words(Length length, Unit unit);

}  // namespace boughwork
