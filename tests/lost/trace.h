// SPDX-License-Identifier: MIT
#pragma once
// What a program asked of the system, as strace wrote it down, and what of it is against the promise: no
// network, and nothing written outside the places that were given.

#include <functional>
#include <string>
#include <vector>

namespace boughwork {

/// True when strace is there, and the machine lets one program trace another.
bool may_trace();

/// True when the condition is, or becomes so within that time.
bool comes_true(double within_s, const std::function<bool()>& condition);

/// All that strace wrote of a program that has ended: its last line comes a little later.
std::string trace_in(const std::string& path);

/// The words that start a program under strace, which writes to `trace`. The program keeps the number of the
/// process, so that a signal reaches it.
std::vector<std::string> traced(const std::string& trace, std::vector<std::string> words);

/// Each line that tells of a way out, or of a file outside `places` (folders, or single files) that is made,
/// opened for writing, renamed, or otherwise changed - or would have been, had the system allowed it.
std::vector<std::string> ways_out(const std::string& trace, const std::vector<std::string>& places);

}  // namespace boughwork
