// SPDX-License-Identifier: MIT
#pragma once
// The page for judging what stands on the table: every piece with what the plan says and what the tree
// says; for the chosen one what the teacher finds, by picture cards, and the teacher's ruling.

#include "gui/window/commands.h"
#include "gui/window/controls.h"
#include "gui/window/layout.h"

namespace boughwork {

class BuiltPage {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    void draw_list(const Session& session, const Report& tree, const PixelBox& box, Widgets& widgets,
                   Commands& commands);
    void draw_piece(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);
    void draw_ruling(const Session& session, const Built& built, const PixelBox& box, Widgets& widgets,
                     Commands& commands);

    TypedFields typed_;
    std::optional<PieceNumber> shown_;  // brought into view
};

}  // namespace boughwork
