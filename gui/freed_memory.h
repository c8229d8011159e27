// SPDX-License-Identifier: MIT
#pragma once
// What the program does with memory that it has done with.

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace boughwork {

/// Every verdict asks for the memory that the one before gave back; it is not worth returning to the system.
inline void keep_freed_memory() {
#ifdef __GLIBC__
    constexpr int bytes = 64 << 20;
    mallopt(M_TRIM_THRESHOLD, bytes);
    mallopt(M_MMAP_THRESHOLD, bytes / 2);
#endif
}

}  // namespace boughwork
