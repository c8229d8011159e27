// SPDX-License-Identifier: MIT
#include "gui/picture/rule_scenes.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <string>
#include <utility>

#include "engine/storage/plan_file.h"
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
    static std::map<std::pair<Rule, bool>, RuleScene> scenes;
    const auto known = scenes.find({rule, kept});
    return known != scenes.end() ? known->second
                                 : scenes.emplace(std::pair(rule, kept), read(rule, kept)).first->second;
}

}  // namespace boughwork
