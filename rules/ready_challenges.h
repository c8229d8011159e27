// SPDX-License-Identifier: MIT
#pragma once
// The challenges that a teacher can begin with, from the youngest to the oldest pupils. They are those of
// scenes/little_fair, big_fair and grand_fair; a test holds the two equal.

#include <vector>

#include "engine/challenge.h"

namespace boughwork {

Challenge little_fair();
Challenge big_fair();
Challenge grand_fair();

/// In that order.
std::vector<Challenge> ready_challenges();

}  // namespace boughwork
