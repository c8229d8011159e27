// SPDX-License-Identifier: MIT
#include "engine/utf8.h"

namespace boughwork {
namespace {

using Byte = unsigned char;

/// One line of the grammar in RFC 3629, section 4: a first byte, a second byte, and plain tails.
struct Form {
    Byte first_low, first_high;
    Byte second_low, second_high;
    std::size_t bytes;
};

constexpr Form forms[] = {
    {0xC2, 0xDF, 0x80, 0xBF, 2}, {0xE0, 0xE0, 0xA0, 0xBF, 3}, {0xE1, 0xEC, 0x80, 0xBF, 3}, {0xED, 0xED, 0x80, 0x9F, 3},
    {0xEE, 0xEF, 0x80, 0xBF, 3}, {0xF0, 0xF0, 0x90, 0xBF, 4}, {0xF1, 0xF3, 0x80, 0xBF, 4}, {0xF4, 0xF4, 0x80, 0x8F, 4},
};

bool between(Byte low, char c, Byte high) { return low <= static_cast<Byte>(c) && static_cast<Byte>(c) <= high; }

bool begins_with(std::string_view text, const Form& form) {
    if (text.size() < form.bytes) return false;
    if (!between(form.first_low, text[0], form.first_high)) return false;
    if (!between(form.second_low, text[1], form.second_high)) return false;
    for (std::size_t i = 2; i < form.bytes; ++i)
        if (!between(0x80, text[i], 0xBF)) return false;
    return true;
}

/// The bytes of the character at the front of a text that is not empty; 0: none is well-formed.
std::size_t first_character_bytes(std::string_view text) {
    if (between(0x00, text[0], 0x7F)) return 1;
    for (const Form& form : forms)
        if (begins_with(text, form)) return form.bytes;
    return 0;
}

}  // namespace

std::size_t well_formed_utf8(std::string_view text) {
    std::size_t good = 0;
    while (good < text.size()) {
        const std::size_t bytes = first_character_bytes(text.substr(good));
        if (bytes == 0) break;
        good += bytes;
    }
    return good;
}

}  // namespace boughwork
