// SPDX-License-Identifier: MIT
#include "gui/window/pace.h"

#include <algorithm>

namespace boughwork {

void Pace::go_on(Window& window, const std::vector<SDL_Event>& events, double now_s) {
    if (!events.empty()) wake();
    if (frames_ > 0) {
        window.frame(events, now_s);
        --frames_;
    } else if (window.session().tick(now_s)) {
        frames_ = 1;  // a minute has gone by, or a copy could not be kept
    }
    if (std::any_of(events.begin(), events.end(), [](const SDL_Event& e) { return e.type == SDL_QUIT; })) {
        window.session().perform(Leave{});
        wake();
    }
}

}  // namespace boughwork
