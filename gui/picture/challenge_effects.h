// SPDX-License-Identifier: MIT
#pragma once
// What each setting of the challenge does to the plan as it is now, in a few words: "too near: 2". What pupils
// are to find out themselves is kept back here too (rules/told.h).

#include <optional>
#include <string>

#include "gui/picture/challenge_words.h"
#include "rules/report.h"

namespace boughwork {

struct Effect {
    std::string says;         ///< Empty: nothing to be seen yet.
    std::optional<bool> met;  ///< Absent: nothing is asked, or it is not judged.
};

/// What the effects are read from; the report is on the plan.
struct Judged {
    const Scene& scene;
    const Plan& plan;
    const Report& report;
};

Effect effect_of(Setting setting, const Judged& now);
Effect effect_of_criterion(std::size_t index, const Judged& now);
Effect effect_of_bonus(std::size_t index, const Judged& now);

/// Every setting that asks something, in words, with what it does: the challenge as one reads it out.
struct ChallengeSentence {
    std::string says;
    Effect now;
};
std::vector<ChallengeSentence> challenge_sentences(const Judged& now);

}  // namespace boughwork
