// SPDX-License-Identifier: MIT
#pragma once
// The marks by which pupils say who measured (hand_symbols in rules/hand_measured.h), drawn by us.

#include <string>
#include <vector>

#include "engine/drawing/drawing.h"

namespace boughwork {

/// In a square of that size; nothing for a name that is no symbol's. A pattern of parts, in ink.
std::vector<Mark> symbol_marks(const std::string& name, Vec2 middle, double size);

}  // namespace boughwork
