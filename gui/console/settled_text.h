// SPDX-License-Identifier: MIT
#pragma once
// What `settle` prints for a person.

#include <string>

#include "engine/scene.h"
#include "rules/settled.h"

namespace boughwork {

std::string settled_text(const Scene& scene, const Settled& settled);

}  // namespace boughwork
