// SPDX-License-Identifier: MIT
#include "gui/session/lesson_clock.h"

#include <algorithm>

#include "engine/limits.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr int minute_s = 60;

}  // namespace

Lesson LessonClock::read(Lesson lesson, double now_s) const {
    if (since_s_ && now_s > *since_s_)
        lesson.spent_s = static_cast<int>(std::min<double>(lesson.spent_s + (now_s - *since_s_), greatest_count));
    return lesson;
}

Lesson LessonClock::take(Lesson lesson, double now_s) {
    const int before_s = lesson.spent_s;
    lesson = read(std::move(lesson), now_s);
    if (since_s_) *since_s_ += lesson.spent_s - before_s;  // the part of a second stays on the clock
    return lesson;
}

const Phase* phase_on(const Lesson& lesson) {
    const auto index = static_cast<std::size_t>(lesson.phase);
    return index < lesson.phases.size() ? &lesson.phases[index] : nullptr;
}

int seconds_left(const Lesson& lesson) {
    const Phase* phase = phase_on(lesson);
    return phase ? phase->minutes * minute_s - lesson.spent_s : 0;
}

std::string time_left_words(const Lesson& lesson) {
    const Phase* phase = phase_on(lesson);
    if (!phase) return "";
    const int left_s = seconds_left(lesson);
    if (left_s <= 0) return say("{0}: time is up", {phase->name});
    if (left_s < minute_s) return say("{0}: less than a minute left", {phase->name});
    const int minutes = (left_s + minute_s / 2) / minute_s;
    return say(minutes == 1 ? phrase("{0}: {1} minute left") : phrase("{0}: {1} minutes left"),
               {phase->name, std::to_string(minutes)});
}

Lesson in_next_phase(Lesson lesson) {
    if (phase_on(lesson)) ++lesson.phase;
    lesson.spent_s = 0;
    return lesson;
}

std::vector<Phase> usual_phases() {
    return {{say("Plan"), 10, ""},
            {say("Cut and measure"), 20, ""},
            {say("Hang"), 15, ""},
            {say("Look and count"), 10, ""}};
}

}  // namespace boughwork
