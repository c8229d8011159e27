// SPDX-License-Identifier: MIT
#pragma once
// A pupil answers what kind a piece is, how long the way around it, or what it scores; and reads at once,
// kindly, how near that is.

#include <optional>
#include <string>

#include "gui/window/commands.h"
#include "gui/window/dialog_card.h"
#include "gui/window/layout.h"

namespace boughwork {

class AnswerDialog {
public:
    explicit AnswerDialog(const Session& session);

    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    static double draw_kinds(const Piece& piece, Asked about, const PixelBox& box, Widgets& widgets,
                             Commands& commands);
    double draw_number(const Session& session, const Piece& piece, Asked about, const PixelBox& box, Widgets& widgets,
                       Commands& commands);
    void answer_number(const Session& session, const Piece& piece, Asked about, Widgets& widgets, Commands& commands);

    std::string typed_;
    std::optional<Problem> problem_;
};

}  // namespace boughwork
