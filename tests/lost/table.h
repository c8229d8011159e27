// SPDX-License-Identifier: MIT
#pragma once
// What the tests and the program that they end share: a plan to work on, and the announcements by which that
// program says what is on its screen before any of it can reach the disk.

#include <time.h>

#include <cstdint>
#include <functional>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/length.h"
#include "engine/storage/plan_file.h"

namespace boughwork {

/// Six pieces, two of them hung, with notes so long that a file is not written in one breath.
inline Scene robin_table() {
    Scene scene = new_scene();
    scene.title = "Robin table";
    for (int number = 1; number <= 6; ++number)
        scene.pieces.push_back({.number = {number},
                                .shape = Triangle{{length_from_mm(80), length_from_mm(60), length_from_mm(50)}},
                                .note = std::string(3000, static_cast<char>('a' + number))});
    Plan& plan = scene.plans.front();
    plan.tree.branches.push_back({.name = "b1", .path_mm = {{0, 420}, {600, 420}}, .thickness_mm = 8});
    plan.hung = {{{1}, {.at_mm = {20, 416}}}, {{2}, {.at_mm = {300, 416}}}};
    return scene;
}

/// On the clock that all programs of the machine share.
inline double clock_s() {
    timespec now{};
    ::clock_gettime(CLOCK_MONOTONIC, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e9;
}

/// One program wrote it and another reads it, both built here: the hash need only agree between them.
using TextHash = std::uint64_t;
inline TextHash hash_of(const std::string& text) { return std::hash<std::string>()(text); }

/// From `at_s` on, until the next one, this is on the screen.
struct Announcement {
    double at_s = 0;
    TextHash shown = 0;
};

}  // namespace boughwork
