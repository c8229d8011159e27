// SPDX-License-Identifier: MIT
#pragma once
// The card that lies over the page while something is asked or read: its sheet and title, and a
// row of buttons along its foot.

#include <string>

#include "gui/window/layout.h"
#include "gui/window/widgets.h"

namespace boughwork {

struct DialogCard {
    PixelBox inside;  ///< Between title and foot.
    PixelBox foot;    ///< One row of buttons.
};

/// Sizes are of the design, and give way to a small window.
DialogCard draw_dialog_card(const Layout& layout, Widgets& widgets, const std::string& title, double width_px,
                            double height_px);

/// Places buttons from the right end of the foot to the left, each as wide as its words.
class Foot {
public:
    Foot(const PixelBox& foot, Widgets& widgets) : box_(foot), end_(foot.x + foot.width), widgets_(widgets) {}

    /// `label` is a phrase, and said.
    bool button(const char* label, Tone tone = Tone::quiet, bool possible = true);

private:
    PixelBox box_;
    double end_;
    Widgets& widgets_;
};

/// What went wrong, at the place of the dialog's words.
void write_problem(const Problem& problem, const PixelBox& box, Widgets& widgets);

}  // namespace boughwork
