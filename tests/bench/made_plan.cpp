// SPDX-License-Identifier: MIT
// A plan to measure with, as a file on standard output:  boughwork_made_plan PIECES
#include <cstdlib>
#include <iostream>

#include "engine/storage/plan_file.h"
#include "tests/bench/made_scene.h"

int main(int argc, char** argv) {
    const int pieces = argc > 1 ? std::atoi(argv[1]) : 0;
    if (pieces < 1) return 2;
    std::cout << boughwork::write_plan(boughwork::made_scene(pieces, static_cast<std::uint32_t>(pieces)));
}
