// SPDX-License-Identifier: MIT
#pragma once
// The teacher's page for the lesson itself: the phases and their clock, the bell and what it caught, the
// tour, the projector, and the word that the lesson is over.

#include "gui/window/commands.h"
#include "gui/window/controls.h"
#include "gui/window/layout.h"

namespace boughwork {

class LessonPage {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    void draw_phases(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);
    void draw_phase(const Session& session, std::size_t index, const PixelBox& row, Widgets& widgets,
                    Commands& commands);

    TypedFields typed_;
};

/// The clock in a few words, on the tree's page; nothing without phases. A press turns to the lesson.
void draw_clock(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

}  // namespace boughwork
