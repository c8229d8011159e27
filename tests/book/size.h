// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 5: the limits of size, which every hung piece keeps.

#include "tests/book/hanging.h"

namespace boughwork::book {

void find_wrong_sizes(Judgement& judgement);

}  // namespace boughwork::book
