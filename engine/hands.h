// SPDX-License-Identifier: MIT
#pragma once
// How exactly a person cuts paper and hangs it. Standard deviations of normal errors; what they do to a plan is
// rules/shaky_hands.h's matter.

#include <string>

#include "engine/result.h"

namespace boughwork {

/// The defaults are common practice with scissors and tape, no source: measure your own class.
struct Hands {
    double cut_mm = 0.5;    ///< Of the length of each side that is cut; of an outline's corners, in x and in y.
    double place_mm = 1;    ///< Of where a piece is hung, in x and in y.
    double turn_deg = 0.5;  ///< Of how it is turned.
    int seed = 1;           ///< Which hands: the same seed errs alike on every machine.
    std::string unknown_fields;
    friend bool operator==(const Hands&, const Hands&) = default;
};

inline constexpr double shakiest = 100;  ///< The most that can be meant, in mm and in degrees.
inline constexpr int greatest_seed = 1'000'000;

/// Whether its numbers can be meant: errors from 0 to `shakiest`, a seed from 0 to `greatest_seed`.
Result<Done> possible(const Hands& hands);

}  // namespace boughwork
