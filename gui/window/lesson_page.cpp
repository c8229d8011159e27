// SPDX-License-Identifier: MIT
#include "gui/window/lesson_page.h"

#include <algorithm>

#include "engine/limits.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// One more or one less a press; to the next five from ten on.
int longer(int minutes) { return std::min(minutes < 10 ? minutes + 1 : (minutes / 5 + 1) * 5, most_minutes); }
int shorter(int minutes) { return std::max(minutes <= 10 ? minutes - 1 : (minutes - 1) / 5 * 5, 1); }

Lesson without_phase(Lesson lesson, std::size_t index) {
    lesson.phases.erase(lesson.phases.begin() + static_cast<std::ptrdiff_t>(index));
    if (static_cast<std::size_t>(lesson.phase) > index) --lesson.phase;
    return lesson;
}

/// Buttons one below the other, as wide as the column.
class ButtonColumn {
public:
    ButtonColumn(const PixelBox& box, Widgets& widgets) : next_(box), widgets_(widgets) {}

    PixelBox take(double height_px) {
        PixelBox box = next_;
        box.height = height_px;
        next_.y += height_px + widgets_.px(10);
        next_.height -= height_px + widgets_.px(10);
        return box;
    }
    const PixelBox& rest() const { return next_; }

private:
    PixelBox next_;
    Widgets& widgets_;
};

/// What the bell caught: its name, then each plan with its score.
void draw_bells(const Session& session, const PixelBox& box, Widgets& widgets) {
    const std::vector<Bell>& bells = session.scene().bells;
    const double line = widgets.px(30);
    if (bells.empty()) {
        widgets.write_lines(box, say("The bell keeps every plan with its score. Work can go on after it."), Face::small,
                            palette::quiet_text);
        return;
    }
    std::size_t lines = 0;
    for (const Bell& bell : bells) lines += 1 + bell.plans.size();
    const Vec2 start = widgets.begin_scroll("bells", box, static_cast<double>(lines) * line);
    double y = start.y + line / 2;
    const double right = start.x + box.width - widgets.px(24);
    for (auto bell = bells.rbegin(); bell != bells.rend(); ++bell) {  // the last one first
        widgets.write({start.x, y}, widgets.fitted(bell->name, Face::body, box.width / 2), Face::body, palette::ink);
        y += line;
        for (const RungPlan& rung : bell->plans) {
            const std::string words =
                say("{0} points, {1} count", {number_in_words(rung.score), std::to_string(rung.counting)});
            const double room = right - start.x - widgets.lettering().width_px(words, Face::small) - widgets.px(30);
            widgets.write({start.x + widgets.px(16), y}, widgets.fitted(rung.plan.name, Face::small, room), Face::small,
                          palette::ink);
            widgets.write({right, y}, words, Face::small, palette::ink, TextAlign::right);
            y += line;
        }
    }
    widgets.end_scroll();
}

void draw_doings(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    ButtonColumn column(box, widgets);
    const double target = widgets.px(palette::target_px);
    command_button(session, widgets, commands, Action::ring_bell, column.take(target), say("ring the bell"),
                   Tone::strong);
    draw_bells(
        session,
        column.take(std::max(column.rest().height - 3 * (target + widgets.px(10)) - widgets.px(64), widgets.px(60))),
        widgets);
    command_button(session, widgets, commands, Action::tour, column.take(target), say("tour of the rules"));
    command_button(session, widgets, commands, Action::projector, column.take(target), say("projector"));
    const bool over = session.scene().lesson.over;
    command_button(session, widgets, commands, Action::end_lesson, column.take(target),
                   over ? say("the lesson goes on") : say("the lesson is over"));
    widgets.write_lines(column.rest(),
                        over ? say("What was kept back is shown now.")
                             : say("What the challenge keeps back until after the lesson is shown then."),
                        Face::small, palette::quiet_text);
}

}  // namespace

void LessonPage::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    widgets.sheet(layout.sheet, palette::paper);
    const PixelBox inside = inset(layout.sheet, widgets.px(20));
    const double gap = widgets.px(40);
    const double right_width = std::min(widgets.px(380), inside.width * 0.4);
    const PixelBox left{inside.x, inside.y, inside.width - right_width - gap, inside.height};
    draw_phases(session, left, widgets, commands);
    draw_doings(session, {left.x + left.width + gap, inside.y, right_width, inside.height}, widgets, commands);
}

void LessonPage::draw_phases(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const Lesson lesson = session.lesson();
    const double target = widgets.px(palette::target_px);
    const double gap = widgets.px(10);
    const std::string left = time_left_words(lesson);
    const bool done = !lesson.phases.empty() && left.empty();
    const std::string words = !left.empty() ? left : done ? say("All phases are over.") : say("No phases yet.");
    const bool wide = widgets.lettering().width_px(words, Face::heading) > box.width;
    const Face face = wide ? Face::large : Face::heading;
    widgets.write({box.x, box.y + target / 2}, widgets.fitted(words, face, box.width), face, palette::ink);

    PixelBox row{box.x, box.y + target + gap, std::min(widgets.px(220), (box.width - gap) / 2), target};
    command_button(session, widgets, commands, Action::run_clock, row,
                   session.clock_runs() ? say("stop the clock") : say("start the clock"), Tone::strong);
    row.x += row.width + gap;
    command_button(session, widgets, commands, Action::next_phase, row, say("next phase"));

    row = {box.x, row.y + target + 2 * gap, box.width, target};
    const double pitch = target + gap;
    const double foot = row.y + row.height;
    const PixelBox list{box.x - widgets.px(6), row.y, box.width + widgets.px(12),
                        std::max(target, box.y + box.height - target - gap - foot + target)};
    const Vec2 start =
        widgets.begin_scroll("phases", list, static_cast<double>(lesson.phases.size()) * pitch + widgets.px(6));
    PixelBox phase{start.x + widgets.px(6), start.y + widgets.px(4), list.width - widgets.px(30), target};
    for (std::size_t i = 0; i < lesson.phases.size(); ++i) {
        draw_phase(session, i, phase, widgets, commands);
        phase.y += pitch;
    }
    widgets.end_scroll();

    PixelBox add{box.x, box.y + box.height - target, std::min(widgets.px(220), (box.width - gap) / 2), target};
    const bool room = lesson.phases.size() < most_phases;
    if (widgets.button("add a phase", say("add a phase"), add, Tone::quiet, room)) {
        Lesson changed = session.scene().lesson;
        changed.phases.push_back({say("Phase {0}", {std::to_string(changed.phases.size() + 1)}), 10, ""});
        commands.push_back(Wish{SetLesson{std::move(changed)}});
    }
    add.x += add.width + gap;
    if (lesson.phases.empty() && widgets.button("usual phases", say("usual phases"), add)) {
        Lesson changed = session.scene().lesson;
        changed.phases = usual_phases();
        commands.push_back(Wish{SetLesson{std::move(changed)}});
    }
}

void LessonPage::draw_phase(const Session& session, std::size_t index, const PixelBox& row, Widgets& widgets,
                            Commands& commands) {
    const Lesson& lesson = session.scene().lesson;
    const Phase& phase = lesson.phases[index];
    const std::string number = std::to_string(index + 1);
    const bool on = static_cast<std::size_t>(lesson.phase) == index;
    const double target = row.height;
    const double gap = widgets.px(8);
    const auto change = [&](Lesson changed) { commands.push_back(Wish{SetLesson{std::move(changed)}}); };

    widgets.write({row.x, row.y + target / 2}, on ? "→" : number, Face::body, palette::ink);
    const double minutes_width = widgets.px(100);
    const double right = row.x + row.width;
    const PixelBox name{row.x + widgets.px(34), row.y, row.width - widgets.px(34) - 3 * (target + gap) - minutes_width,
                        target};
    if (const auto typed = typed_.draw(widgets, {"phase " + number, phase.name, "", true}, name)) {
        Lesson changed = lesson;
        changed.phases[index].name = *typed;
        change(std::move(changed));
    }
    PixelBox button{right - 3 * (target + gap) - minutes_width + gap, row.y, target, target};
    const auto with_minutes = [&](int minutes) {
        Lesson changed = lesson;
        changed.phases[index].minutes = minutes;
        change(std::move(changed));
    };
    if (widgets.button("shorter " + number, "−", button, Tone::quiet, phase.minutes > 1))
        with_minutes(shorter(phase.minutes));
    button.x += target;
    widgets.write({button.x + minutes_width / 2, row.y + target / 2}, say("{0} min", {std::to_string(phase.minutes)}),
                  Face::body, palette::ink, TextAlign::centre);
    button.x += minutes_width;
    if (widgets.button("longer " + number, "+", button, Tone::quiet, phase.minutes < most_minutes))
        with_minutes(longer(phase.minutes));
    button.x += target + gap;
    if (widgets.button("take out phase " + number, "×", button, Tone::quiet)) change(without_phase(lesson, index));
}

void draw_clock(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::string words = time_left_words(session.lesson());
    if (words.empty()) return;
    if (widgets.area("clock", box).pressed) commands.push_back(Press{Action::lesson_page});
    const bool up = seconds_left(session.lesson()) <= 0;
    widgets.sheet(box, up ? palette::unmet_card : palette::paper, widgets.px(10));
    const std::string stopped = say("{0} (stopped)", {words});
    const double room = box.width - widgets.px(16);
    const bool has_room = !widgets.lettering().lines(stopped, Face::small, room, 2).shortened;
    const bool says_so = !session.clock_runs() && has_room;
    widgets.write_within(says_so ? stopped : words, box, TextAlign::centre, palette::ink);
    if (session.clock_runs() || says_so) return;
    for (const double x : {8.0, 15.0})  // two bars: it stands still
        widgets.sheet({box.x + widgets.px(x), box.y + box.height / 2 - widgets.px(8), widgets.px(4), widgets.px(16)},
                      palette::ink, 0);
}

}  // namespace boughwork
