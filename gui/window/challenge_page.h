// SPDX-License-Identifier: MIT
#pragma once
// The challenge: read out with what it does to the plan, and every setting of it in calm sections. What is
// changed becomes one SetChallenge; what the session refuses is told at its field, with what was typed there.

#include <array>
#include <optional>
#include <string>

#include "gui/window/challenge_sections.h"
#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class ChallengePage {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    void draw_sections(const Session& session, const PixelBox& box, Widgets& widgets);
    void draw_settings(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

    ChallengeSection section_ = ChallengeSection::read;
    std::optional<std::size_t> open_item_;  // of the section's list
    TypedFields fields_;
    std::string changed_by_;  // in the last frame: what the session says now is about that
    double settings_height_px_ = 0;
};

}  // namespace boughwork
