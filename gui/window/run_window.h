// SPDX-License-Identifier: MIT
#pragma once
// The program with its window, from opening it to closing it.

#include <string>

namespace boughwork {

/// Opens `file` and runs until the window is closed; without one ("") goes on with what an earlier start left
/// unsaved, else begins with a copy of `example` ("" for a new tree). What is not saved at the end is kept, and
/// offered at the next start. 0, or 2 with one line on standard error when there can be
/// no window. BOUGHWORK_SCALE (1 to 2) sets how large everything is; else the display's density does.
int run_window(const std::string& file, const std::string& example);

}  // namespace boughwork
