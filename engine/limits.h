// SPDX-License-Identifier: MIT
#pragma once
// How large the numbers of a scene may be. The reader and apply() hold to the same limits, so that
// every scene that can come about can be saved and opened again.

#include <cmath>
#include <cstddef>
#include <cstdint>

#include "engine/length.h"
#include "engine/vec.h"

namespace boughwork {

/// A kilometre of paper (the contract's limit). Places, sizes and, by the same number, degrees.
inline constexpr double farthest_mm = 1e6;
inline constexpr double greatest_turn_deg = 1e6;

/// Piece numbers and counts.
inline constexpr int greatest_count = 1'000'000;

/// Pieces, plans ...: far more than a classroom has, and few enough that a file
/// of 16 MiB that consists of nothing else cannot fill the memory.
inline constexpr std::size_t most_listed = 100'000;

/// Branches of one tree; criteria, and bonuses, of one challenge. Each is held against every other, or against
/// every piece, so that many more would keep the referee busy for minutes.
inline constexpr std::size_t most_branches = 1000;
inline constexpr std::size_t most_asked = 1000;

/// Snapshots of a whole class's work; phases of a lesson, and how long one may be.
inline constexpr std::size_t most_bells = 100;
inline constexpr std::size_t most_phases = 20;
inline constexpr int most_minutes = 600;

/// Finer than a micrometre nothing is cut, and counts of steps would leave their integers.
inline constexpr std::int64_t finest_step_half_um = 2;
inline constexpr std::int64_t coarsest_step_half_um = 2'000'000'000;

/// False for what is no number, too.
inline bool within_limits(double mm) { return std::abs(mm) <= farthest_mm; }
inline bool within_limits(Length length) { return within_limits(to_mm(length)); }
inline bool within_limits(Vec2 place) { return within_limits(place.x) && within_limits(place.y); }

}  // namespace boughwork
