// SPDX-License-Identifier: MIT
// How fast the contact stage is beside that of four libraries, on the same scenes in the same run:
//
//   cmake -S . -B build/versus -G Ninja -DBOUGHWORK_VERSUS=ON -DBOUGHWORK_WINDOW=OFF
//   cmake --build build/versus --target boughwork_versus && build/versus/tests/bench/versus/boughwork_versus
//
// Told are medians, and the ratios that are our targets. Absolute times drift from machine to machine
// and from hour to hour; ratios within one run hold.
//
//   boughwork_versus --count PIECES [CONTENDER]
//
// runs one contender (ours) once over the scenes and times nothing; for the number of instructions:
//
//   valgrind --tool=callgrind --toggle-collect='*contact_stage*' boughwork_versus --count 1000
//
// divided by the number of near pairs that it prints.

#include <cstdio>
#include <cstdlib>
#include <string>

#include "gui/freed_memory.h"
#include "tests/bench/versus/race.h"
#include "tests/bench/versus/targets.h"

int main(int argc, char** argv) {
    boughwork::keep_freed_memory();  // as the program does, for everyone alike
#ifndef NDEBUG
    std::puts("Built for finding mistakes, not for speed: these times mean nothing.");
#endif
    if (argc == 1) {
        const boughwork::Results results = boughwork::race();
        boughwork::print_medians(results);
        boughwork::print_targets(results);
        return 0;
    }
    const std::string contender = argc > 3 ? argv[3] : "ours";
    const int pieces = argc > 2 && std::string(argv[1]) == "--count" ? std::atoi(argv[2]) : 0;
    const std::size_t near = pieces > 0 ? boughwork::run_once(pieces, contender) : 0;
    if (near == 0)
        boughwork::stop("Say nothing, or --count PIECES and perhaps ours, box2d, cgal, cgal_triangles, boost or geos.");
    std::printf("%zu near pairs\n", near);
}
