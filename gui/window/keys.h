// SPDX-License-Identifier: MIT
#pragma once
// From a key that was pressed to the row of the command table that it belongs to.

#include <optional>

#include "gui/session/command.h"
#include "gui/window/input.h"

namespace boughwork {

std::optional<Action> action_of(const KeyPress& press);

}  // namespace boughwork
