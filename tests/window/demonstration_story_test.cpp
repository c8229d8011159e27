// SPDX-License-Identifier: MIT
// Before the class begins: the example on the wall, three rules of the tour broken and kept, and the clock.
#include "gui/picture/rule_scenes.h"
#include "gui/session/lesson_clock.h"
#include "rules/rule_words.h"
#include "tests/window/story.h"

using namespace boughwork;

namespace {

const std::string example_file = "/fair/wrens.bough.json";

/// The rule, what the referee says of the plan that breaks it, and that he is content with the other.
void show_the_rule(DrivenWindow& it, const Size& size, std::size_t stop) {
    const Rule rule = rules_in_order()[stop];
    INFO(asks_in_words(rule));
    CHECK(it.session().tour_stop() == stop);
    CHECK(reads(it, asks_in_words(rule)));
    const std::vector<Finding>& broken = rule_scene(rule, false).report.findings;
    REQUIRE(!broken.empty());
    CHECK(broken.front().rule == rule);
    CHECK(reads(it, broken.front().says));
    CHECK(rule_scene(rule, true).report.findings.empty());
    CHECK(reads(it, say("The referee has nothing to say: every piece counts.")));
    keep_picture(it, size, "demonstration_" + std::to_string(3 + stop) + "_rule");
    CHECK(reads(it, say("{0} of {1}", {std::to_string(stop + 1), std::to_string(rules_in_order().size())})));
    nothing_overlaps(it);
}

}  // namespace

TEST_CASE("story: a teacher shows the tree on the wall, tours three rules, and starts the clock") {
    const Size size = GENERATE(values(tellings));
    const SpeakingIn speaking(size.language);
    DrivenWindow it(size.width, size.height, size.scale, {{example_file, write_plan(ready_scene("fair_example"))}});
    open_with_keys(it, example_file);
    const Scene before = it.session().scene();
    const double usual_scale = it.window().layout().scale;

    it.click("Lesson");
    it.click("projector");
    REQUIRE(it.session().projector());
    CHECK(it.window().layout().scale == Approx(2 * usual_scale));
    keep_picture(it, size, "demonstration_1_projector");
    // What happens when a piece is pulled over its neighbour? All read it aloud.
    it.drag(it.middle_of(5), it.middle_of(5) + 0.3 * (it.middle_of(4) - it.middle_of(5)));
    REQUIRE(it.session().finding());
    CHECK(it.session().finding()->rule == Rule::overlap);
    CHECK(reads(it, it.session().finding()->says));
    keep_picture(it, size, "demonstration_2_overlap");
    nothing_overlaps(it);
    it.key(SDLK_z, KMOD_LCTRL);
    CHECK(it.session().scene() == before);

    it.key(SDLK_g);
    REQUIRE(it.session().dialog() == Dialog::tour);
    for (std::size_t stop = 0; stop < 3; ++stop) {
        show_the_rule(it, size, stop);
        it.click("next rule");
    }
    it.click("end the tour");
    CHECK(it.session().projector());  // still on the wall
    it.click("projector");
    CHECK_FALSE(it.session().projector());
    CHECK(it.window().layout().scale == Approx(usual_scale));

    it.key(SDLK_5);
    it.click("usual phases");
    it.click("start or stop the clock");
    it.wait(61);
    CHECK(reads(it, say("{0}: {1} minutes left", {say("Plan"), "9"})));
    keep_picture(it, size, "demonstration_6_clock");
    it.key(SDLK_1);
    CHECK(it.shows("clock"));
    CHECK(reads(it, say("{0}: {1} minutes left", {say("Plan"), "9"})));
}
