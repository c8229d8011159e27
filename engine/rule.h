// SPDX-License-Identifier: MIT
#pragma once
// The rules that a piece can break, named as in the rulebook. What each means is decided in rules/;
// a file may name them too, where a person judged a piece by eye.

namespace boughwork {

enum class Rule {
    runs_past_the_end,
    over_a_branch,
    not_by_a_whole_side,
    cut_off,
    held_by_nothing,
    too_deep,
    ground,
    trunk,
    other_branch,
    overlap,
    touching,
    wrong_size,
    over_the_limit,
};

/// "runs past the end", "over a branch" ...
const char* name_of(Rule rule);

}  // namespace boughwork
