// SPDX-License-Identifier: MIT
#pragma once
// A length of paper as people type it, held exactly: a whole number of half-micrometres.
// 1 mm = 2000, 1 in = 50 800 (25.4 mm exactly: NBS, Addendum to Circular 572, 1959) and
// 1/16 in = 3175 of them, so typed decimals and sixteenths never meet a binary fraction.
// Places in the plan are not lengths of paper: they are doubles in millimetres (vec.h).

#include <compare>
#include <cstdint>

namespace boughwork {

enum class Unit { mm, cm, in };

struct Length {
    std::int64_t half_um = 0;

    friend bool operator==(Length, Length) = default;
    friend auto operator<=>(Length, Length) = default;
    friend Length operator+(Length a, Length b) { return {a.half_um + b.half_um}; }
    friend Length operator-(Length a, Length b) { return {a.half_um - b.half_um}; }
};

inline constexpr double half_um_per_mm = 2000.0;

/// One of `unit`, exactly.
Length length_of(Unit unit);

/// The length nearest to `mm` (a tie away from zero). The reader has limited |mm| to 1e6.
Length length_from_mm(double mm);

inline double to_mm(Length length) { return static_cast<double>(length.half_um) / half_um_per_mm; }

}  // namespace boughwork
