// SPDX-License-Identifier: MIT
#include "gui/window/score_panel.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {

void draw_score(const Session& session, const Layout& layout, Widgets& widgets) {
    const PixelBox& box = layout.score;
    widgets.sheet(box, palette::paper);

    const std::vector<PieceReport>& pieces = session.report().pieces;
    const auto number_of = [&](PieceState state) {
        return std::count_if(pieces.begin(), pieces.end(),
                             [state](const PieceReport& piece) { return piece.state == state; });
    };
    const auto count = number_of(PieceState::counts);
    const auto not_counting = number_of(PieceState::does_not_count);
    const auto waiting = number_of(PieceState::in_the_envelope);

    const double left = box.x + widgets.px(18);
    if (is_told(session.scene(), Mathematics::points, session.plan())) {
        const std::string score = number_in_words(session.report().score);
        widgets.write({left, box.y + widgets.px(36)}, score, Face::heading, palette::ink);
        const double after = left + widgets.lettering().width_px(score, Face::heading) + widgets.px(12);
        widgets.write({after, box.y + widgets.px(40)}, session.report().score == 1 ? say("point") : say("points"),
                      Face::large, palette::ink);
    } else {
        widgets.write_within(say("How many points? You add them up."),
                             {left, box.y + widgets.px(10), box.width - widgets.px(24), widgets.px(48)},
                             TextAlign::left, palette::ink);
    }

    const std::string first = counted(count, phrase("{0} piece counts"), phrase("{0} pieces count")) + ", " +
                              counted(not_counting, phrase("{0} does not"), phrase("{0} do not")) + ",";
    const std::string second =
        counted(waiting, phrase("{0} waits in the envelope"), phrase("{0} wait in the envelope"));
    const double room = box.x + box.width - left - widgets.px(8);
    widgets.write({left, box.y + widgets.px(74)}, widgets.fitted(first, Face::small, room), Face::small, palette::ink);
    widgets.write({left, box.y + widgets.px(96)}, widgets.fitted(second, Face::small, room), Face::small, palette::ink);
}

}  // namespace boughwork
