// SPDX-License-Identifier: MIT
#pragma once
// JSON as RFC 8259 has it and no wider, with a place for every fault. It knows nothing of plans.
//
// Refused, though a parser might let it pass: a key that stands twice in one object (section 4 calls
// what it means unpredictable), bytes that are not UTF-8 (8.1), a zero byte, lists and objects in each
// other deeper than `deepest_nesting` (section 9 allows a limit), a number that no double can hold.
// A byte order mark at the front is skipped, as 8.1 allows: some text editors put one there.

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/result.h"

namespace boughwork {

/// A plan needs eight levels; what a later version adds needs hardly more.
inline constexpr std::size_t deepest_nesting = 64;

/// The value that the text holds, or the line and column of the first fault.
Result<nlohmann::json> parse_strictly(const std::string& text);

}  // namespace boughwork
