// SPDX-License-Identifier: MIT
#pragma once
// Whether bytes are text. Names and notes are UTF-8 everywhere, so that every scene can be saved.

#include <cstddef>
#include <string_view>

namespace boughwork {

/// How many bytes at the front are well-formed UTF-8 (RFC 3629, section 4): all of them, or as many
/// as stand before the first fault.
std::size_t well_formed_utf8(std::string_view text);

inline bool is_utf8(std::string_view text) { return well_formed_utf8(text) == text.size(); }

}  // namespace boughwork
