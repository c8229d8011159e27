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
Chapter spanish_challenge_lines();
Chapter spanish_commands();
Chapter spanish_console();
Chapter spanish_edits();
Chapter spanish_files();
Chapter spanish_gravity();
Chapter spanish_hands();
Chapter spanish_lengths();
Chapter spanish_lesson();
Chapter spanish_page();
Chapter spanish_pieces();
Chapter spanish_referee();
Chapter spanish_table();
Chapter spanish_window();

}  // namespace boughwork
