// SPDX-License-Identifier: MIT
#pragma once
// What a rod of a SettleWorld has become, in numbers, and how far they may be off. Inside engine/settle only.

#include <cstddef>

#include "engine/settle/settle_world.h"
#include "engine/settle/settling.h"

namespace boughwork {

/// Of a rod at rest; `step_s` is what the last step was, from which the ground's push is known.
Sag sag_of(const SettleWorld& world, std::size_t rod, double step_s);

}  // namespace boughwork
