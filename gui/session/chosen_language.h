// SPDX-License-Identifier: MIT
#pragma once
// The language that was chosen in the window, kept for the next time in a file of one word beside the
// autosaved copies. Whoever never chose hears the locale's.

#include <string>

#include "engine/storage/files.h"
#include "engine/words/say.h"

namespace boughwork {

/// The one that was chosen, else `otherwise`.
Language chosen_language(Files& files, const std::string& folder, Language otherwise);

/// Keeps the one that is spoken. A disk that takes no files costs no more than choosing anew next time.
void keep_language(Files& files, const std::string& folder);

}  // namespace boughwork
