// SPDX-License-Identifier: MIT
#pragma once
// Whether anybody has run the program here before: a file beside the autosaved copies tells.

#include <string>

#include "engine/storage/files.h"

namespace boughwork {

/// True once for each folder; without a folder never. A disk that takes no files says it each time.
bool is_first_time(Files& files, const std::string& folder);

}  // namespace boughwork
