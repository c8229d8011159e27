// SPDX-License-Identifier: MIT
#pragma once
// Times of runs that are measured one by one, and what is told of them: the median, which a busy
// moment does not move, and what nine runs of ten stay under.

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <ctime>
#include <utility>
#include <vector>

namespace boughwork {

using Clock = std::chrono::steady_clock;

inline double seconds_since(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

/// What this thread has cost so far: unlike the clock, it stands still while others have the processor.
inline double processor_seconds() {
    std::timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

struct Times {
    double median_s = 0;
    double nine_of_ten_s = 0;
};

/// Of at least one time.
inline Times told(std::vector<double> times_s) {
    std::sort(times_s.begin(), times_s.end());
    return {.median_s = times_s[times_s.size() / 2], .nine_of_ten_s = times_s[times_s.size() * 9 / 10]};
}

/// Times `run(i)` for i = 0, 1, 2 ..., each alone.
template <class Run>
Times measured(double least_time_s, std::size_t least_runs, Run run) {
    std::vector<double> times_s;
    const Clock::time_point begin = Clock::now();
    while (times_s.size() < least_runs || seconds_since(begin) < least_time_s) {
        const Clock::time_point start = Clock::now();
        run(times_s.size());
        times_s.push_back(seconds_since(start));
    }
    return told(std::move(times_s));
}

}  // namespace boughwork
