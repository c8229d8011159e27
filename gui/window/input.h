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

/// What two fingers did since the last frame, in pixels of the window.
struct TwoFingers {
    Vec2 moved_px;      ///< How far the middle between them went ...
    Vec2 middle_px;     ///< ... and where it is now.
    double factor = 1;  ///< How much farther apart they are than before.
};

class Input {
public:
    /// With a Dear ImGui context: its key map and its clipboard.
    Input();

    /// Takes events from the front: any number of motions, up to the first that needs a frame of
    /// its own. `window_px`: its size. `pixels_per_point`: where the system counts in larger points.
    void take(std::deque<SDL_Event>& events, Vec2 window_px, double pixels_per_point);

    /// Of this frame.
    const std::vector<KeyPress>& keys() const { return keys_; }
    double wheel() const { return wheel_; }
    /// A second finger has come down.
    bool second_finger() const { return second_finger_; }
    const std::optional<TwoFingers>& two_fingers() const { return two_fingers_; }
    /// Where a mouse was moved to, in pixels of the window; a finger does not hover.
    const std::optional<Vec2>& hovers_at() const { return hovers_at_; }
    /// The pointer's place on the page: the window's upper left corner lies there.
    void place_pointer(Vec2 corner_px) const;

private:
    /// True when the event needs the frame for itself.
    bool take(const SDL_Event& event, Vec2 window_px, double pixels_per_point);
    void move_finger(const SDL_TouchFingerEvent& moved, Vec2 window_px);

    std::vector<KeyPress> keys_;
    double wheel_ = 0;
    bool second_finger_ = false;
    std::optional<Vec2> pointer_px_;  // in the window
    std::optional<Vec2> hovers_at_;
    std::optional<TwoFingers> two_fingers_;
    struct Finger {
        SDL_FingerID id;
        Vec2 at_px;
    };
    std::vector<Finger> fingers_;  // that are down, in the order in which they came
};

}  // namespace boughwork
