// SPDX-License-Identifier: MIT
#pragma once
// What `settle` prints: where gravity brings a plan, and the referee's second look at it.

#include <string>

#include "engine/scene.h"
#include "rules/settled.h"

namespace boughwork {

/// For other programs.
std::string settled_json(const Settled& settled);

}  // namespace boughwork
