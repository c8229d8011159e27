// SPDX-License-Identifier: MIT
#pragma once
// The files of scenes/rules as the build found them; their source is made by gui/picture/CMakeLists.txt.

#include <string>
#include <vector>

namespace boughwork {

struct RuleSceneText {
    std::string name;  ///< Of the file, without ".bough.json": "ground.breaks".
    std::string json;
};

const std::vector<RuleSceneText>& rule_scene_texts();

}  // namespace boughwork
