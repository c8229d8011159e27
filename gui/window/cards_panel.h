// SPDX-License-Identifier: MIT
#pragma once
// The picture cards. Each says whether its line is met, by a sign and in counts; a press shows what
// it is about. A few lie in one row, large; more in two, small; when there are more than fit, arrows
// leaf through them.

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class CardsPanel {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    std::size_t first_ = 0;
};

}  // namespace boughwork
