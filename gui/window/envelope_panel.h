// SPDX-License-Identifier: MIT
#pragma once
// The envelope: the pieces that wait, each on a card. A card is pressed to choose its piece, pulled
// sideways to take it out, and pulled up or down to leaf through the rest.

#include <optional>

#include "gui/window/commands.h"
#include "gui/window/hand.h"
#include "gui/window/layout.h"

namespace boughwork {

class EnvelopePanel {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    void draw_card(const Session& session, const PieceReport& piece, const PixelBox& box, Widgets& widgets);
    void follow_hand(const Session& session, const Layout& layout, PieceNumber piece, const Handling& touch,
                     Widgets& widgets, Commands& commands);

    Hand hand_;
    bool pulled_out_ = false;            // since the hand came down: one pull takes out one piece, once
    std::optional<PieceNumber> taken_;   // its card stays, empty, while it is in the hand
    std::optional<PieceNumber> chosen_;  // the last that was brought into view
};

/// "9 · 7.5 · 7.5 cm": the measured sides in the challenge's unit.
std::string sides_in_words(const PieceReport& piece, const Challenge& challenge);

}  // namespace boughwork
