// SPDX-License-Identifier: MIT
#pragma once
// The clock of a lesson: which phase is on, and how long is left of it. It says so gently, and never
// goes on to the next phase by itself. What outlasts the day is in Scene::lesson; here is what runs.

#include <optional>
#include <string>

#include "engine/scene.h"

namespace boughwork {

class LessonClock {
public:
    bool runs() const { return since_s_.has_value(); }
    /// `now_s` runs evenly, here and below.
    void start(double now_s) { since_s_ = now_s; }
    void stop() { since_s_.reset(); }

    /// The lesson with the whole seconds that have run since the start.
    Lesson read(Lesson lesson, double now_s) const;
    /// The same, and the clock counts on from now.
    Lesson take(Lesson lesson, double now_s);

private:
    std::optional<double> since_s_;
};

/// The phase that is on, or null when there is none or all are over.
const Phase* phase_on(const Lesson& lesson);

/// Of the phase that is on; below zero when it has run over.
int seconds_left(const Lesson& lesson);

/// "Plan: 8 minutes left", "Plan: time is up"; empty without a phase.
std::string time_left_words(const Lesson& lesson);

/// The next phase is on, from its beginning; after the last one none is.
Lesson in_next_phase(Lesson lesson);

/// Phases to begin with, for a teacher to change.
std::vector<Phase> usual_phases();

}  // namespace boughwork
