// SPDX-License-Identifier: MIT
#pragma once
// What a fuzz program holds to be true: if it is not, the program says so and ends, and the input
// that brought it about is kept. (An assert would be gone from a release.)

#include <cstdio>
#include <cstdlib>
#include <string>

namespace boughwork {

inline void expect(bool holds, const std::string& sentence) {
    if (holds) return;
    std::fprintf(stderr, "Not true: %s\n", sentence.c_str());
    std::abort();
}

}  // namespace boughwork
