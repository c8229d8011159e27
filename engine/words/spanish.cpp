// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

const std::vector<Chapter>& spanish() {
    static const std::vector<Chapter> chapters{
        spanish_challenge(),
        spanish_lengths(),
        spanish_lesson(),
        spanish_pieces(),
    };
    return chapters;
}

}  // namespace boughwork
