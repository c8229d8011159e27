// SPDX-License-Identifier: MIT
#pragma once
// What hand and keys do, from SDL's events to Dear ImGui's state. Dear ImGui 1.86 keeps no queue:
// a press and its release in one frame would be lost, so each frame takes at most one such event.
// The mouse is followed by its events, never polled, so that events that were pushed (by a test)
// are as good as a hand's.

#include <SDL.h>

#include <deque>
#include <optional>
#include <vector>

#include "engine/vec.h"

namespace boughwork {

struct KeyPress {
    SDL_Keycode key = SDLK_UNKNOWN;
    bool ctrl = false;
    bool shift = false;
};

/// Two fingers that move apart or together.
struct Pinch {
    double factor = 1;  ///< How much farther apart they are than before.
    Vec2 about_px;      ///< The first finger: what lies under it stays there.
};

class Input {
public:
    /// With a Dear ImGui context: its key map and its clipboard.
    Input();

    /// Takes events from the front: any number of motions, up to the first that needs a frame of
    /// its own. `pixels_per_point`: of the window, where the system counts in larger points.
    void take(std::deque<SDL_Event>& events, double pixels_per_point);

    /// Of this frame.
    const std::vector<KeyPress>& keys() const { return keys_; }
    double wheel() const { return wheel_; }
    /// A second finger has come down.
    bool second_finger() const { return second_finger_; }
    const std::optional<Pinch>& pinch() const { return pinch_; }

private:
    /// True when the event needs the frame for itself.
    bool take(const SDL_Event& event, double pixels_per_point);
    void move_finger(const SDL_TouchFingerEvent& finger);

    std::vector<KeyPress> keys_;
    double wheel_ = 0;
    bool second_finger_ = false;
    std::optional<Pinch> pinch_;
    struct Finger {
        SDL_FingerID id;
        Vec2 at_px;
    };
    std::vector<Finger> fingers_;  // that are down, in the order in which they came
};

}  // namespace boughwork
