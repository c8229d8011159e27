// SPDX-License-Identifier: MIT
#pragma once
// What a plan and its verdict are examples of: so that a campaign can show that it came by every rule,
// every reason and every setting.

#include <map>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork::book {

/// Names of things, and in how many plans they appeared.
using Appearances = std::map<std::string, int>;

void note(const Scene& scene, const Report& report, Appearances& appeared);

/// The names of all that a campaign is to come by.
std::vector<std::string> all_to_appear();

}  // namespace boughwork::book
