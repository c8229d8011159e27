// SPDX-License-Identifier: MIT
#include "gui/window/guide_dialog.h"

#include <iterator>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/rule_picture.h"
#include "gui/window/dialog_card.h"

namespace boughwork {
namespace {

struct FirstStep {
    const char* title;
    const char* words;
    Rule rule;  ///< Its scene is the picture ...
    bool kept;  ///< ... kept, or broken.
};

constexpr FirstStep steps[] = {
    {phrase("Hang a piece"),
     phrase("Drag a piece from the envelope to a branch. Near the branch it turns to lie along it; let go, and it "
            "hangs."),
     Rule::runs_past_the_end, true},
    {phrase("Listen to the referee"),
     phrase("What breaks a rule loses its colour and gets a cross. The referee says why, in one sentence."),
     Rule::overlap, false},
    {phrase("Try again"),
     phrase("Move the piece until it counts. Undo takes back as many steps as you like; a new plan keeps this one."),
     Rule::overlap, true},
    {phrase("Make your own"),
     phrase("Make a piece by its sides or by pulling its corners, note it in the data table, and read what the "
            "challenge asks."),
     Rule::too_deep, true},
};

}  // namespace

void GuideDialog::draw(const Session&, const Layout& layout, Widgets& widgets, Commands& commands) {
    const FirstStep& step = steps[step_];
    const DialogCard card = draw_dialog_card(layout, widgets, say(step.title), 720, 520);
    const double line = widgets.lettering().line_px(Face::body);
    const double words_height = 3.5 * line;
    const PixelBox picture{card.inside.x, card.inside.y, card.inside.width, card.inside.height - words_height};
    widgets.begin_clip(picture);
    widgets.draw(rule_picture(step.rule, step.kept, picture, 1.3 * widgets.scale()));
    widgets.end_clip();
    widgets.write_lines({picture.x, picture.y + picture.height + line / 4, picture.width, words_height - line / 4},
                        say(step.words), Face::body, palette::ink);

    widgets.write({card.foot.x, card.foot.y + card.foot.height / 2},
                  say("Step {0} of {1}", {std::to_string(step_ + 1), std::to_string(std::size(steps))}), Face::small,
                  palette::quiet_text);
    Foot foot(card.foot, widgets);
    if (step_ + 1 == std::size(steps)) {
        if (foot.button("close", Tone::strong)) commands.push_back(CloseDialog{});
        return;
    }
    if (foot.button("next", Tone::strong)) ++step_;
    if (foot.button(phrase("skip"))) commands.push_back(CloseDialog{});
}

}  // namespace boughwork
