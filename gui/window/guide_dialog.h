// SPDX-License-Identifier: MIT
#pragma once
// The first four steps, each a picture and two sentences; to be skipped, and called again from the help page.

#include <cstddef>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class GuideDialog {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    std::size_t step_ = 0;
};

}  // namespace boughwork
