// SPDX-License-Identifier: MIT
#pragma once
// Chances that mathematics gives in closed form, and how near to them a count of builds must come.

#include <catch2/catch.hpp>
#include <cmath>

#include "rules/shaky_hands.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {

/// The normal distribution's chance to be less than z.
inline double phi(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

inline void check_within_three_errors(const Chance& counted, double expected) {
    const double error = std::sqrt(expected * (1 - expected) / counted.of);
    INFO("expected " << expected << ", counted " << counted.share() << ", standard error " << error);
    CHECK(std::abs(counted.share() - expected) <= 3 * error);
}

inline HandsReport built(const SceneBuilder& plan, int builds) {
    ShakyHands hands(plan.scene, plan.scene.plans.front());
    hands.build(builds);
    return hands.report();
}

inline const ShakyPiece& piece(const HandsReport& report, int number) {
    for (const ShakyPiece& one : report.pieces)
        if (one.number.value == number) return one;
    FAIL("no piece " << number);
    return report.pieces.front();
}

/// Hands that err in the place alone.
inline Hands placing_within(double sigma_mm, int seed = 1) {
    return {.cut_mm = 0, .place_mm = sigma_mm, .turn_deg = 0, .seed = seed, .unknown_fields = ""};
}

}  // namespace boughwork::testing
