// SPDX-License-Identifier: MIT
#pragma once
// JSON laid out for people: two blanks an indent, and what is short stands on one line, so that a
// piece, a path or a pair of limits is read, and compared between two versions, at a glance.

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace boughwork {

/// Ends with a newline. What is not UTF-8 becomes U+FFFD.
std::string laid_out(const nlohmann::ordered_json& value);

/// The same without blanks or newlines but the last.
std::string packed(const nlohmann::ordered_json& value);

}  // namespace boughwork
