// SPDX-License-Identifier: MIT
#pragma once
// Three corners on squared paper, pulled by a hand, or chosen and moved by arrows; the kind is named and marked
// while they are, as far as kinds are told. One press each makes it right-angled, isosceles or equilateral.

#include <optional>

#include "gui/session/camera.h"
#include "gui/session/piece_draft.h"
#include "gui/window/drafted_triangle.h"
#include "gui/window/hand.h"

namespace boughwork {

class PulledPiecePanel {
public:
    void draw(const Session& session, PieceNumber number, const PixelBox& box, PieceDraft& draft, Widgets& widgets);
    /// An arrow key, for the chosen corner; y up.
    void follow_arrow(Vec2 arrow) { arrow_ = arrow; }

private:
    void look_at(const PulledTriangle& pulled, const PixelBox& paper, double scale);
    void follow_hand(const Challenge& challenge, PieceDraft& draft, Widgets& widgets);
    void draw_paper(const Session& session, PieceNumber number, const PieceDraft& draft, Widgets& widgets);
    void draw_arrows(const PixelBox& box, Widgets& widgets);
    void move_by_arrow(const Challenge& challenge, PieceDraft& draft);

    Camera camera_;
    Hand hand_;
    std::optional<std::size_t> held_;  // the corner in the hand
    Vec2 grabbed_off_px_;              // from the pointer to the corner
    std::size_t chosen_ = 2;           // the corner that arrows move
    std::optional<Vec2> arrow_;
};

}  // namespace boughwork
