// SPDX-License-Identifier: MIT
#pragma once
// A few letters by which people tell whether two plans were made under one challenge: read aloud, or compared
// at a glance. Not meant against one who wants to deceive.

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/challenge.h"

namespace boughwork {

/// "7KWP M3XT": of what the challenge asks, as the plan file writes it; the seal, and fields that this program
/// does not know, make no difference. Without letters and digits that look alike, and without vowels, so that no
/// word comes about.
std::string fingerprint(const Challenge& challenge);

/// FNV-1a with 64 bits (G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake, IETF draft-eastlake-fnv).
std::uint64_t fnv1a_64(std::string_view bytes);

}  // namespace boughwork
