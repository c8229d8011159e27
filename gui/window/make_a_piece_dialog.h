// SPDX-License-Identifier: MIT
#pragma once
// A piece is made, or a triangle changed: by sides and angles that are typed, by pulling corners, from the drawer of
// ready pieces, or from another file. Each way is one press from the others, and the triangle comes along.

#include <optional>

#include "gui/session/piece_draft.h"
#include "gui/window/commands.h"
#include "gui/window/dialog_card.h"
#include "gui/window/other_file_panel.h"
#include "gui/window/pulled_piece_panel.h"
#include "gui/window/ready_pieces_panel.h"

namespace boughwork {

class MakeAPieceDialog {
public:
    enum class For { new_piece, chosen_piece };

    MakeAPieceDialog(const Session& session, For purpose);

    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

    /// An arrow key, y up; true when it is for a corner.
    bool follow_arrow(Vec2 arrow);

private:
    void draw_ways(const Session& session, const PixelBox& box, Widgets& widgets);
    void draw_foot(const Session& session, const PixelBox& box, bool entered, Widgets& widgets, Commands& commands);
    void finish(const Session& session, const Triangle& triangle, Commands& commands) const;
    PieceNumber number(const Session& session) const { return changes_.value_or(next_number(session.scene())); }

    std::optional<PieceNumber> changes_;
    PieceDraft draft_;
    PulledPiecePanel pulled_;
    ReadyPiecesPanel ready_;
    OtherFilePanel other_file_;
};

}  // namespace boughwork
