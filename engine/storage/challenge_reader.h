// SPDX-License-Identifier: MIT
#pragma once
// The challenge in a plan file.

#include "engine/challenge.h"
#include "engine/storage/fields.h"

namespace boughwork {

/// What is left out stays as it is in `challenge`; what cannot be is refused in the fields.
void read_challenge(Fields fields, Challenge& challenge);

}  // namespace boughwork
