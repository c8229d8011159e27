// SPDX-License-Identifier: MIT
#include "gui/picture/rule_scenes.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include "engine/storage/plan_file.h"
#include "engine/words/say.h"
#include "gui/picture/rule_scene_texts.h"
#include "rules/check.h"

namespace boughwork {
namespace {

RuleScene read(Rule rule, bool kept) {
    std::string name = name_of(rule);
    std::replace(name.begin(), name.end(), ' ', '_');
    name += kept ? ".keeps" : ".breaks";
    for (const RuleSceneText& text : rule_scene_texts()) {
        if (text.name != name) continue;
        Scene scene = read_plan(text.json).value();  // a test reads them all
        Report report = check(scene, current_plan(scene));
        return {std::move(scene), std::move(report)};
    }
    assert(false && "every rule has its two scenes");
    return {};
}

}  // namespace

const RuleScene& rule_scene(Rule rule, bool kept) {
    using Key = std::tuple<Rule, bool, Language>;
    static std::map<Key, RuleScene> scenes;
    const Key key{rule, kept, spoken()};  // the report's sentences are in one language
    const auto known = scenes.find(key);
    return known != scenes.end() ? known->second : scenes.emplace(key, read(rule, kept)).first->second;
}

}  // namespace boughwork
