// SPDX-License-Identifier: MIT
#include "gui/picture/rule_picture.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "engine/words/say.h"
#include "gui/picture/rule_scenes.h"
#include "rules/rule_words.h"

namespace boughwork {

TEST_CASE("every rule has a scene that breaks it and one that keeps it, and a picture of each") {
    for (const Rule rule : rules_in_order()) {
        INFO(name_of(rule));
        const auto breaks_it = [&](const Report& report) {
            return std::any_of(report.findings.begin(), report.findings.end(),
                               [&](const Finding& finding) { return finding.rule == rule; });
        };
        CHECK(breaks_it(rule_scene(rule, false).report));
        CHECK_FALSE(breaks_it(rule_scene(rule, true).report));
        const std::vector<Mark> broken_marks = rule_picture(rule, false, {0, 0, 300, 200}, 1);
        const std::vector<Mark> kept_marks = rule_picture(rule, true, {0, 0, 300, 200}, 1);
        CHECK(broken_marks.size() > 3);
        CHECK(kept_marks.size() > 3);
        CHECK_FALSE(asks_in_words(rule).empty());
        CHECK_FALSE(broken_in_words(rule).empty());
    }
    CHECK(rules_in_order().size() == 13);
}

TEST_CASE("what the referee says of a rule's scene is said in the language that is spoken now") {
    const std::string english = rule_scene(Rule::ground, false).report.findings.front().says;
    speak(Language::spanish);
    const std::string spanish = rule_scene(Rule::ground, false).report.findings.front().says;
    speak(Language::english);
    CHECK(english.rfind("Piece 1", 0) == 0);
    CHECK(spanish.rfind("La pieza 1", 0) == 0);
    CHECK(rule_scene(Rule::ground, false).report.findings.front().says == english);
}

}  // namespace boughwork
