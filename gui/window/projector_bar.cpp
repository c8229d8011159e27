// SPDX-License-Identifier: MIT
#include "gui/window/projector_bar.h"

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/report_words.h"
#include "rules/told.h"

namespace boughwork {

void draw_projector_bar(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const Plan& plan = session.plan();
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : " · ") + more; };
    if (session.scene().plans.size() > 1) add(plan.name);
    if (is_told(session.scene(), Mathematics::points, plan)) add(score_words(session.report().score));
    const PixelBox& box = layout.title;
    const auto width = [&](const std::string& what) { return widgets.lettering().width_px(what, Face::body); };
    const std::string with_title = session.scene().title + (words.empty() ? "" : " · ") + words;
    if (!session.scene().title.empty() && width(with_title) <= box.width) words = with_title;
    widgets.write({box.x, box.y + box.height / 2}, widgets.fitted(words, Face::body, box.width), Face::body,
                  palette::ink);
    command_button(session, widgets, commands, Action::projector, layout.commands, say("back"));
}

}  // namespace boughwork
