// SPDX-License-Identifier: MIT
#include "engine/storage/fingerprint.h"

#include "engine/storage/plan_file.h"

namespace boughwork {
namespace {

constexpr std::string_view alphabet = "23456789BCDFGHJKMNPQRSTVWXYZ";
constexpr std::size_t group = 4;

/// What is asked, and nothing else.
Challenge bare(Challenge challenge) {
    challenge.sealed = false;
    challenge.unknown_fields.clear();
    challenge.step.unknown_fields.clear();
    challenge.limits.unknown_fields.clear();
    challenge.score.unknown_fields.clear();
    challenge.shown.unknown_fields.clear();
    for (Criterion& criterion : challenge.criteria) criterion.unknown_fields.clear();
    for (Bonus& bonus : challenge.score.bonuses) bonus.unknown_fields.clear();
    return challenge;
}

}  // namespace

std::uint64_t fnv1a_64(std::string_view bytes) {
    std::uint64_t hash = 0xCBF29CE484222325;
    for (const char byte : bytes) {
        hash ^= static_cast<unsigned char>(byte);
        hash *= 0x100000001B3;
    }
    return hash;
}

std::string fingerprint(const Challenge& challenge) {
    std::uint64_t rest = fnv1a_64(write_challenge(bare(challenge)));
    std::string print;
    for (std::size_t i = 0; i < 2 * group; ++i) {
        if (i == group) print += ' ';
        print += alphabet[rest % alphabet.size()];
        rest /= alphabet.size();
    }
    return print;
}

}  // namespace boughwork
