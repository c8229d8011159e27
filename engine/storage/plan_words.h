// SPDX-License-Identifier: MIT
#pragma once
// The words of the plan file for the settings that are one of a few. Reader and writer share them.

#include "engine/challenge.h"

namespace boughwork {

template <class T>
struct Word {
    T value;
    const char* word;
};

inline constexpr Word<Unit> unit_words[] = {{Unit::mm, "mm"}, {Unit::cm, "cm"}, {Unit::in, "in"}};

inline constexpr Word<Holds> holds_words[] = {{Holds::hanging, "hanging"}, {Holds::counting, "counting"}};

inline constexpr Word<Neighbours> neighbours_words[] = {{Neighbours::apart, "apart"},
                                                        {Neighbours::corner_to_corner, "corner to corner"},
                                                        {Neighbours::corners, "corners"},
                                                        {Neighbours::sides, "sides"}};

inline constexpr Word<AtFault> at_fault_words[] = {
    {AtFault::both, "both"}, {AtFault::higher_number, "higher number"}, {AtFault::fewest_points, "fewest points"}};

inline constexpr Word<OverLimit> over_limit_words[] = {{OverLimit::extras_do_not_count, "extras do not count"},
                                                       {OverLimit::noted, "noted"}};

inline constexpr Word<Kind> kind_words[] = {{Kind::equilateral, "equilateral"},
                                            {Kind::isosceles, "isosceles"},
                                            {Kind::scalene, "scalene"},
                                            {Kind::right, "right"},
                                            {Kind::acute, "acute"},
                                            {Kind::obtuse, "obtuse"}};

inline constexpr Word<ShareOf> share_words[] = {{ShareOf::pieces, "pieces"}, {ShareOf::points, "points"}};

inline constexpr Word<ScoreBy> score_words[] = {
    {ScoreBy::longest_side, "longest side"}, {ScoreBy::perimeter, "perimeter"}, {ScoreBy::area, "area"}};

/// The word for a value that is in the table.
template <class T, std::size_t n>
const char* word_for(T value, const Word<T> (&words)[n]) {
    for (const Word<T>& entry : words)
        if (entry.value == value) return entry.word;
    return "";
}

}  // namespace boughwork
