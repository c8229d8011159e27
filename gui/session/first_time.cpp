// SPDX-License-Identifier: MIT
#include "gui/session/first_time.h"

namespace boughwork {

bool is_first_time(Files& files, const std::string& folder) {
    const std::string path = folder + "/first_steps_shown";
    if (folder.empty() || files.exists(path)) return false;
    (void)files.save(path, "yes\n");
    return true;
}

}  // namespace boughwork
