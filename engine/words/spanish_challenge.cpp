// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_challenge() { return {}; }

}  // namespace boughwork
