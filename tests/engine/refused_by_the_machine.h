// SPDX-License-Identifier: MIT
#pragma once
// For the tests of what the machine refuses: no room, and no permission.

#include <sys/resource.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <cstdlib>

namespace boughwork {

/// No file may grow past so many bytes: a disk that fills up in the middle of a write.
class WritesEndAt {
public:
    explicit WritesEndAt(rlim_t bytes) : old_handler_(std::signal(SIGXFSZ, SIG_IGN)) {
        REQUIRE(::getrlimit(RLIMIT_FSIZE, &old_) == 0);
        const rlimit less{bytes, old_.rlim_max};
        REQUIRE(::setrlimit(RLIMIT_FSIZE, &less) == 0);
    }
    ~WritesEndAt() {
        ::setrlimit(RLIMIT_FSIZE, &old_);
        std::signal(SIGXFSZ, old_handler_);
    }

private:
    rlimit old_{};
    void (*old_handler_)(int);
};

/// Root is refused nothing, so be nobody for a while.
class AsNobody {
public:
    AsNobody() : was_root_(::geteuid() == 0) {
        if (was_root_) REQUIRE(::seteuid(65534) == 0);
    }
    ~AsNobody() {
        if (was_root_ && ::seteuid(0) != 0) std::abort();
    }

private:
    bool was_root_;
};

}  // namespace boughwork
