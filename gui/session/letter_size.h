// SPDX-License-Identifier: MIT
#pragma once
// How much larger than usual everything is drawn, as chosen in the window and kept for the next time in a file of one
// number beside the autosaved copies.

#include <string>

#include "engine/storage/files.h"

namespace boughwork {

/// In quarters of the usual size: 0, as the display says, to 4, twice as large as that.
inline constexpr int most_quarters_larger = 4;

/// What was chosen; 0 if nothing was, or if what is kept is no such number.
int chosen_quarters_larger(Files& files, const std::string& folder);

/// A disk that takes no files costs no more than choosing anew next time.
void keep_quarters_larger(Files& files, const std::string& folder, int quarters);

}  // namespace boughwork
