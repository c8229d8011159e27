// SPDX-License-Identifier: MIT
#pragma once
// The program without a window: check, table, picture. Standard output carries the result alone;
// whatever else is to be said goes, in one line, to standard error.

#include <iosfwd>
#include <string>

namespace boughwork {

/// True for "check", "table", "picture".
bool is_command(const std::string& word);

/// 0: done (check: every hung piece counts and every judged line of the challenge is met). 1: check
/// found something. 2: unusable, and one line on `err` says what to do.
int run_console(int argc, const char* const* argv, std::ostream& out, std::ostream& err);

}  // namespace boughwork
