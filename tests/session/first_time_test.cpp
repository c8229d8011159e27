// SPDX-License-Identifier: MIT
#include "gui/session/first_time.h"

#include <catch2/catch.hpp>

#include "tests/session/memory_files.h"

namespace boughwork {

TEST_CASE("the first time is the first time once, and never without a folder of one's own") {
    MemoryFiles files;
    CHECK(is_first_time(files, "/kept"));
    CHECK_FALSE(is_first_time(files, "/kept"));
    CHECK(is_first_time(files, "/another"));
    CHECK_FALSE(is_first_time(files, ""));
}

}  // namespace boughwork
