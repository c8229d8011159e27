// SPDX-License-Identifier: MIT
#pragma once
// What the tree is made of: paper, branches, base; ready ones to choose, or numbers of one's own.

#include <string>

#include "engine/materials.h"
#include "gui/window/commands.h"
#include "gui/window/settings_form.h"

namespace boughwork {

class GravitySettings {
public:
    void draw(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

private:
    void draw_paper(const Session& session, SettingsForm& form, Commands& commands);
    void draw_base(const Session& session, SettingsForm& form, Commands& commands);
    void draw_hands(const Session& session, SettingsForm& form, Commands& commands);
    void draw_branch(const Branch& branch, SettingsForm& form, Commands& commands);
    void draw_numbers(const Branch& branch, SettingsForm& form, Commands& commands);

    /// What was measured of a strip that was clamped lying level.
    struct Measured {
        double length_mm = 200;
        double load_g = 0;
        double sag_mm = 0;
    };

    std::string open_branch_;  // whose numbers are seen
    Measured measured_;
    TypedFields fields_;
    std::string changed_by_;  // in the last frame: what the session says now is about that
    double height_px_ = 0;
};

}  // namespace boughwork
