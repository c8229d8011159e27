// SPDX-License-Identifier: MIT
#pragma once
// The lists of phrases, a chapter for each part of the program. For say.cpp and its tests.

#include <vector>

namespace boughwork {

struct Phrase {
    const char* english;
    const char* said;
};

using Chapter = std::vector<Phrase>;

const std::vector<Chapter>& spanish();

// The chapters of spanish(), one source each.
Chapter spanish_challenge();
Chapter spanish_lengths();
Chapter spanish_lesson();
Chapter spanish_pieces();

}  // namespace boughwork
