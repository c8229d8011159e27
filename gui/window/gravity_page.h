// SPDX-License-Identifier: MIT
#pragma once
// The tree stood up: gravity at work on it, what the referee says then, and what everything is made of.

#include "gui/window/commands.h"
#include "gui/window/gravity_settings.h"
#include "gui/window/layout.h"

namespace boughwork {

class GravityPage {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    GravitySettings settings_;
    enum class Shows { what_happens, shaky_hands, made_of };
    Shows shows_ = Shows::what_happens;
};

}  // namespace boughwork
