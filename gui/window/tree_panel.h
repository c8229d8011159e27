// SPDX-License-Identifier: MIT
#pragma once
// The tree on squared paper: shows the plan, and tells the session what a hand does there. A drag
// on a thing moves it, a drag on paper moves the view, the wheel brings it nearer.

#include "gui/window/commands.h"
#include "gui/window/hand.h"
#include "gui/window/layout.h"

namespace boughwork {

class TreePanel {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

    /// A second finger came down: the first means nothing by itself, until it is lifted.
    void let_be() { follows_ = false; }

private:
    void follow_hand(const Session& session, const Layout& layout, const Handling& touch, Widgets& widgets,
                     Commands& commands);

    Hand hand_;
    Picked under_hand_;     // what was pressed
    bool follows_ = false;  // the hand that came down last
    bool holding_ = false;  // the session was told to take hold of it
};

/// A piece that is held, while the hand is beside the paper: it sticks to the hand.
void draw_piece_in_hand(const Session& session, const Layout& layout, Widgets& widgets);

}  // namespace boughwork
