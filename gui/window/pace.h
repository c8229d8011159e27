// SPDX-License-Identifier: MIT
#pragma once
// When the window draws: as long as something moves. An idle one lets time go by, and sleeps.

#include <vector>

#include "gui/window/window.h"

namespace boughwork {

class Pace {
public:
    /// Shows the window what came since, draws it if there is something new, and lets the time go on.
    void go_on(Window& window, const std::vector<SDL_Event>& events, double now_s);
    /// Something else than an event has changed what is to be seen.
    void wake() { frames_ = frames_after_an_event; }
    /// True while the next frame shows something else than the last one.
    bool moves() const { return frames_ > 0; }

private:
    // What is on the screen settles within two frames of an event; one to spare.
    static constexpr int frames_after_an_event = 3;
    int frames_ = frames_after_an_event;
};

}  // namespace boughwork
