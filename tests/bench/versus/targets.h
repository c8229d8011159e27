// SPDX-License-Identifier: MIT
#pragma once
// What the race is to show: so many times as fast as each library. Printed beside what it did show.

#include "tests/bench/versus/race.h"

namespace boughwork {

void print_medians(const Results& results);
void print_targets(const Results& results);

}  // namespace boughwork
