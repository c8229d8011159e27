// SPDX-License-Identifier: MIT
#pragma once
// A press that may become a drag: it is one once the pointer has left the place of the press by
// more than a hand trembles.

#include "engine/vec.h"

namespace boughwork {

/// In the design's px (from memory: desktops use 3 to 8).
inline constexpr double hand_trembles_px = 5;

class Hand {
public:
    void come_down(Vec2 at_px) {
        pressed_at_px_ = at_px_ = at_px;
        moving_ = false;
    }
    /// Gives back how far the hand went since the last time.
    Vec2 move_to(Vec2 at_px, double scale) {
        if (distance(pressed_at_px_, at_px) > hand_trembles_px * scale) moving_ = true;
        const Vec2 by = at_px - at_px_;
        at_px_ = at_px;
        return by;
    }
    bool moving() const { return moving_; }
    Vec2 pressed_at_px() const { return pressed_at_px_; }

private:
    Vec2 pressed_at_px_;
    Vec2 at_px_;
    bool moving_ = false;
};

}  // namespace boughwork
