// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

const std::vector<Chapter>& spanish() {
    static const std::vector<Chapter> chapters{
        spanish_challenge(), spanish_challenge_lines(), spanish_commands(), spanish_console(), spanish_edits(),
        spanish_files(),     spanish_gravity(),         spanish_hands(),    spanish_lengths(), spanish_lesson(),
        spanish_page(),      spanish_pieces(),          spanish_referee(),  spanish_table(),   spanish_window(),
    };
    return chapters;
}

}  // namespace boughwork
