// SPDX-License-Identifier: MIT
#include "rules/rule_words.h"

#include "engine/words/say.h"

namespace boughwork {

const std::vector<Rule>& rules_in_order() {
    static const std::vector<Rule> rules{Rule::held_by_nothing,
                                         Rule::not_by_a_whole_side,
                                         Rule::runs_past_the_end,
                                         Rule::over_a_branch,
                                         Rule::too_deep,
                                         Rule::cut_off,
                                         Rule::ground,
                                         Rule::trunk,
                                         Rule::other_branch,
                                         Rule::overlap,
                                         Rule::touching,
                                         Rule::wrong_size,
                                         Rule::over_the_limit};
    return rules;
}

std::string asks_in_words(Rule rule) {
    switch (rule) {
        case Rule::held_by_nothing: return say("Every piece hangs from a branch, or from a piece that hangs.");
        case Rule::not_by_a_whole_side: return say("A piece hangs by a whole side, not by a corner or a part of it.");
        case Rule::runs_past_the_end: return say("The side that a piece hangs by ends before the branch does.");
        case Rule::over_a_branch: return say("A piece hangs below its branch, and covers none of it.");
        case Rule::too_deep: return say("A chain has only as many pieces as the challenge allows.");
        case Rule::cut_off: return say("When a piece does not hang, nothing that hangs from it does.");
        case Rule::ground: return say("No piece touches the ground.");
        case Rule::trunk: return say("No piece touches the trunk.");
        case Rule::other_branch: return say("A piece touches no branch but its own.");
        case Rule::overlap: return say("No piece covers another.");
        case Rule::touching: return say("Neighbours touch only as the challenge allows.");
        case Rule::wrong_size: return say("Every piece has the size that the challenge asks for.");
        case Rule::over_the_limit: return say("No more pieces count than the challenge allows.");
    }
    return "";
}

std::string broken_in_words(Rule rule) {
    switch (rule) {
        case Rule::held_by_nothing: return say("held by nothing");
        case Rule::not_by_a_whole_side: return say("not by a whole side");
        case Rule::runs_past_the_end: return say("sticks out past the end");
        case Rule::over_a_branch: return say("lies over its branch");
        case Rule::too_deep: return say("too deep in its chain");
        case Rule::cut_off: return say("hangs from what does not hang");
        case Rule::ground: return say("touches the ground");
        case Rule::trunk: return say("touches the trunk");
        case Rule::other_branch: return say("touches another branch");
        case Rule::overlap: return say("covers another piece");
        case Rule::touching: return say("touches a neighbour");
        case Rule::wrong_size: return say("has the wrong size");
        case Rule::over_the_limit: return say("is one too many");
    }
    return "";
}

}  // namespace boughwork
