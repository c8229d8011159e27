// SPDX-License-Identifier: MIT
// What a plan file must not say of the class: of what pupils wrote down, of the built tree, of the lesson.
#include <catch2/catch.hpp>

#include "tests/engine/plan_file_example.h"

namespace boughwork {
namespace {

/// The example, but for the value at the pointer, is refused at `place`.
void check_refused(const std::string& pointer, const std::string& value, const std::string& place,
                   const std::string& reason) {
    const Result<Scene> scene = read_plan(example_with(pointer, value));
    INFO(pointer << " " << value);
    REQUIRE_FALSE(scene);
    INFO(in_words(scene.problem()));
    CHECK(scene.problem().found.rfind(place + ": ", 0) == 0);
    CHECK(scene.problem().found.find(reason) != std::string::npos);
    CHECK_FALSE(scene.problem().to_do.empty());
}

void check_read(const std::string& pointer, const std::string& value) {
    const Result<Scene> scene = read_plan(example_with(pointer, value));
    INFO(pointer << " " << value);
    INFO((scene ? "" : in_words(scene.problem())));
    CHECK(scene);
}

}  // namespace

TEST_CASE("refused: what a ruler cannot have shown") {
    check_read("/pieces/0/by_hand", R"({"sides_mm": [80, null, 50.5], "by": "star"})");
    const std::string sides = "/pieces/0/by_hand/sides_mm";
    check_refused("/pieces/0/by_hand", R"({"sides_mm": [80]})", sides, "a list of 3");
    check_refused("/pieces/1/by_hand", R"({"sides_mm": [80, 60, 50]})", "/pieces/1/by_hand/sides_mm", "a list of 4");
    check_refused("/pieces/0/by_hand", R"({"sides_mm": [80, 0, 50]})", sides + "/1", "more than 0 mm");
    check_refused("/pieces/0/by_hand", R"({"sides_mm": [80, "60", 50]})", sides + "/1", "a number");
    check_refused("/pieces/0/by_hand", R"({"by": 3})", "/pieces/0/by_hand/by", "a text");
}

TEST_CASE("refused: what is no answer") {
    check_read("/pieces/0/answers",
               R"({"by_sides": "right", "by_angles": "acute", "perimeter_mm": 190, "points": -1})");
    check_refused("/pieces/0/answers", R"({"by_sides": "round"})", "/pieces/0/answers/by_sides", "not known");
    check_refused("/pieces/0/answers", R"({"perimeter_mm": -5})", "/pieces/0/answers/perimeter_mm", "more than 0 mm");
    check_refused("/pieces/0/answers", R"({"points": 2e6})", "/pieces/0/answers/points", "at most 1000000 points");
}

TEST_CASE("refused: a built tree with a piece that is not there, or twice, or found in no way") {
    check_read("/plans/0/built", R"([{"piece": 1, "found": "wrong", "broken": ["ground"], "ruling": "counts"}])");
    check_refused("/plans/0/built", R"([{"piece": 9}])", "/plans/0/built/0/piece", "no piece 9");
    check_refused("/plans/0/built", R"([{"piece": 1}, {"piece": 1}])", "/plans/0/built/1/piece", "judged twice");
    check_refused("/plans/0/built", R"([{"found": "wrong"}])", "/plans/0/built/0/piece", "missing");
    check_refused("/plans/0/built", R"([{"piece": 1, "found": "lost"}])", "/plans/0/built/0/found", "not known");
    check_refused("/plans/0/built", R"([{"piece": 1, "broken": ["gravity"]}])", "/plans/0/built/0/broken", "not known");
    check_refused("/plans/0/built", R"([{"piece": 1, "ruling": true}])", "/plans/0/built/0/ruling", "a text");
}

TEST_CASE("refused: a lesson with a phase that is not there, or that never ends") {
    check_read("/lesson", R"({"phases": [{"name": "Plan", "minutes": 10}], "phase": 1, "spent_s": 30, "over": true})");
    check_refused("/lesson", R"({"phases": [{"minutes": 0}]})", "/lesson/phases/0/minutes", "from 1 to 600");
    check_refused("/lesson", R"({"phases": [{"minutes": 2.5}]})", "/lesson/phases/0/minutes", "a whole number");
    check_refused("/lesson", R"({"phase": 1})", "/lesson/phase", "no phase 1");
    check_refused("/lesson", R"({"over": "yes"})", "/lesson/over", "true or false");
}

TEST_CASE("refused: a bell that caught what cannot be") {
    check_read("/bells",
               R"([{"name": "Bell 1", "plans": [{"score": 12.5, "counting": 3, "plan": {"name": "Plan 1"}}]}])");
    check_refused("/bells", R"([{"plans": [{"plan": {"hung": [{"piece": 1}]}}]}])",
                  "/bells/0/plans/0/plan/hung/0/piece", "no piece 1");
    check_refused("/bells", R"([{"name": "a"}, {"name": "a"}])", "/bells/1/name", "stands twice");
    check_refused("/bells", R"([{"plans": [{"counting": -1}]}])", "/bells/0/plans/0/counting", "from 0 to 1000000");
}

TEST_CASE("refused: settings for the class that are none") {
    check_read("/challenge/shown", R"({"kinds": "after an answer", "fixes": "after the lesson"})");
    check_refused("/challenge/shown", R"({"kinds": "never"})", "/challenge/shown/kinds", "not known");
    check_refused("/challenge/sealed", R"("yes")", "/challenge/sealed", "true or false");
    check_refused("/challenge/hand_lengths_score", "1", "/challenge/hand_lengths_score", "true or false");
    check_refused("/challenge/holds_after_settling", "null", "/challenge/holds_after_settling", "true or false");
    check_refused("/numbers_given", "-1", "/numbers_given", "from 0 to 1000000");
}

}  // namespace boughwork
