// SPDX-License-Identifier: MIT
#pragma once
// Plans of any size to measure with: rows of hung triangles on many branches, some with children on
// whole sides. The same numbers give the same scene on every machine.

#include <cstdint>

#include "engine/scene.h"

namespace boughwork {

enum class Spacing {
    tidy,     ///< Nearly all hang as they should; here and there two neighbours come too near.
    crowded,  ///< Each piece has about four others close by, which it is clear of, touches or overlaps.
};

/// One plan in which `pieces` (at least 1) pieces hang, under a challenge that asks something of every sort.
Scene made_scene(int pieces, std::uint32_t seed, Spacing spacing = Spacing::tidy);

}  // namespace boughwork
