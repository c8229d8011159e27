// SPDX-License-Identifier: MIT
#pragma once
// How each piece is held when the tree is stood up: taped fast where it hangs by a whole side or lies along
// something, swinging where a corner alone touches, not at all where nothing does. The referee's rules say what
// counts; this says what stays up.

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/settle/standing_tree.h"
#include "rules/arrangement.h"
#include "rules/hanging.h"

namespace boughwork {

struct Holding {
    Grip grip = Grip::none;
    Vec2 at_mm;                         ///< The middle of its taped side, or the place where it touches.
    std::optional<std::size_t> branch;  ///< What holds it: a branch ...
    std::optional<std::size_t> piece;   ///< ... or a piece, by its place in Arrangement::pieces.
};

/// For each piece of the arrangement. Of several things that a piece touches, one that it lies along holds it before
/// one that a corner touches, a branch before a piece, then the first; touching two things by corners holds it fast.
std::vector<Holding> find_holding(const Arrangement& a, const std::vector<Hanging>& hanging);

}  // namespace boughwork
