// SPDX-License-Identifier: MIT
#pragma once
// Plan files as large as they may be, or larger, each large in another way: what a broken program or an
// unkind person could hand to a classroom computer. Each must be refused or served, in bounded time and
// memory.

#include <cstddef>
#include <string>
#include <vector>

namespace boughwork {

struct LargeFile {
    const char* name;
    /// The text, grown to about so many bytes, or to as many entries as a list may have, whichever is less.
    std::string (*text)(std::size_t bytes);
    bool is_plan;  ///< False: it is refused once it is large.
};

const std::vector<LargeFile>& large_files();

}  // namespace boughwork
