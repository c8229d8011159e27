// SPDX-License-Identifier: MIT
#pragma once
// Every setting of a challenge in plain words, for the page that reads it out.

#include <string>
#include <vector>

#include "engine/challenge.h"

namespace boughwork {

struct ChallengeSentence {
    std::string about;  ///< "Neighbours"
    std::string says;   ///< "A corner may touch a corner or a side."
};

std::vector<ChallengeSentence> challenge_words(const Challenge& challenge);

}  // namespace boughwork
