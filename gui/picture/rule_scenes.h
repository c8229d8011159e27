// SPDX-License-Identifier: MIT
#pragma once
// Each rule as a small scene that breaks it and one that keeps it: those of scenes/rules, which are built
// into the program, so that they are there wherever it runs.

#include "engine/rule.h"
#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

struct RuleScene {
    Scene scene;
    Report report;  ///< On its one plan.
};

/// Judged once in each language, then remembered.
const RuleScene& rule_scene(Rule rule, bool kept);

}  // namespace boughwork
