// SPDX-License-Identifier: MIT
#pragma once
// Three sides are typed; the triangle is drawn and named while they are, or the sentence says why
// there is none.

#include <array>
#include <string>

#include "gui/window/commands.h"
#include "gui/window/layout.h"

namespace boughwork {

class MakeAPieceDialog {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);

private:
    std::array<std::string, 3> typed_;
};

}  // namespace boughwork
