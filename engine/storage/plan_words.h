// SPDX-License-Identifier: MIT
#pragma once
// The words of the plan file for the settings that are one of a few. Reader and writer share them.

#include "engine/rule.h"
#include "engine/scene.h"

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

inline constexpr Word<Shows> shows_words[] = {{Shows::always, "always"},
                                              {Shows::after_an_answer, "after an answer"},
                                              {Shows::after_the_lesson, "after the lesson"}};

inline constexpr Word<Found> found_words[] = {
    {Found::as_planned, "as planned"}, {Found::not_there, "not there"}, {Found::wrong, "wrong"}};

inline constexpr Word<bool> ruling_words[] = {{true, "counts"}, {false, "does not count"}};

inline constexpr Word<Rule> rule_words[] = {{Rule::runs_past_the_end, "runs past the end"},
                                            {Rule::over_a_branch, "over a branch"},
                                            {Rule::not_by_a_whole_side, "not by a whole side"},
                                            {Rule::cut_off, "cut off"},
                                            {Rule::held_by_nothing, "held by nothing"},
                                            {Rule::too_deep, "too deep"},
                                            {Rule::ground, "ground"},
                                            {Rule::trunk, "trunk"},
                                            {Rule::other_branch, "other branch"},
                                            {Rule::overlap, "overlap"},
                                            {Rule::touching, "touching"},
                                            {Rule::wrong_size, "wrong size"},
                                            {Rule::over_the_limit, "over the limit"}};

/// The word for a value that is in the table.
template <class T, std::size_t n>
const char* word_for(T value, const Word<T> (&words)[n]) {
    for (const Word<T>& entry : words)
        if (entry.value == value) return entry.word;
    return "";
}

}  // namespace boughwork
