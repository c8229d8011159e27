// SPDX-License-Identifier: MIT
#pragma once
// What shaky hands make of a plan, as JSON for other programs.

#include <string>
#include <vector>

#include "rules/more_room.h"

namespace boughwork {

/// `rooms`: of some of the pieces.
std::string hands_json(const Scene& scene, const HandsReport& report, const std::vector<MoreRoom>& rooms);

}  // namespace boughwork
