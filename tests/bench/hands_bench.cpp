// SPDX-License-Identifier: MIT
// How long many builds by shaky hands take: boughwork_hands_bench FILE [BUILDS]. Without a build's errors, by check()
// and by IncrementalChecker, to see which is the quicker referee for it.
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

#include "engine/storage/plan_file.h"
#include "rules/check.h"
#include "rules/incremental_checker.h"
#include "rules/shaky_hands.h"
#include "tests/bench/timing.h"

namespace boughwork {
namespace {

template <class Run>
double processor_seconds_of(Run run) {
    const double start = processor_seconds();
    run();
    return processor_seconds() - start;
}

void measure(const Scene& scene, int builds) {
    const Plan& plan = current_plan(scene);
    HandsReport report;
    const double all_s = processor_seconds_of([&] {
        ShakyHands hands(scene, plan);
        hands.build(builds);
        report = hands.report();
    });
    Rebuilding rebuilding(scene, plan);
    const double rebuilt_s = processor_seconds_of([&] {
        for (int i = 0; i < builds; ++i) rebuilding.build(i);
    });
    double points = 0;
    IncrementalChecker checker;
    const double incremental_s = processor_seconds_of([&] {
        for (int i = 0; i < builds; ++i) {
            rebuilding.build(i);
            points += checker.check(rebuilding.scene(), rebuilding.plan()).score;
        }
    });
    std::printf("%zu pieces, %d builds: %.3f s (%.1f us a build)\n", plan.hung.size(), builds, all_s,
                1e6 * all_s / builds);
    std::printf("  of these, cutting and hanging: %.3f s\n", rebuilt_s);
    std::printf("  judged with a memory instead:  %.3f s\n", incremental_s);
    std::printf("  mean score %.2f (with a memory %.2f); %s\n", report.mean_score, points / builds,
                report.says.c_str());
}

}  // namespace
}  // namespace boughwork

int main(int argc, char** argv) {
#ifndef NDEBUG
    std::puts("Built for finding mistakes, not for speed: these times are too long.");
#endif
    const std::string path = argc > 1 ? argv[1] : "scenes/fair_example.bough.json";
    std::ifstream file(path);
    const auto scene = boughwork::read_plan({std::istreambuf_iterator<char>(file), {}});
    if (!scene) {
        std::puts(boughwork::in_words(scene.problem()).c_str());
        return 1;
    }
    boughwork::measure(*scene, argc > 2 ? std::atoi(argv[2]) : 10000);
}
