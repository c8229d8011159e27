// SPDX-License-Identifier: MIT
#pragma once
// Level rods that are clamped at their left end, for tests.

#include <catch2/catch.hpp>

#include "engine/settle/settling.h"

namespace boughwork {

inline Rod level_rod(double length_mm, double stiffness_n_mm2, double weight_n_per_mm = 0, double y_mm = 1000) {
    return {.path_mm = {{0, y_mm}, {length_mm, y_mm}},
            .stiffness_n_mm2 = stiffness_n_mm2,
            .weight_n_per_mm = weight_n_per_mm,
            .half_thickness_mm = 1};
}

/// A square of paper, 2 mm wide, about a place.
inline Sheet small_sheet(Vec2 at_mm, double weight_n, Grip grip = Grip::fast) {
    const double r = 1;
    return {.outline = {at_mm + Vec2{-r, -r}, at_mm + Vec2{r, -r}, at_mm + Vec2{r, r}, at_mm + Vec2{-r, r}},
            .weight_n = weight_n,
            .grip = grip,
            .at_mm = at_mm};
}

inline StandingTree with_tip_load(Rod rod, double load_n) {
    Sheet load = small_sheet(rod.path_mm.back(), load_n);
    load.rod = 0;
    return {.rods = {std::move(rod)}, .sheets = {std::move(load)}};
}

/// What one rod has become when all is at rest.
inline Sag settled_sag(const StandingTree& standing) {
    Settling settling(standing);
    settling.run_to_the_end();
    INFO("steps " << settling.steps());
    REQUIRE(settling.state() == Settling::State::at_rest);
    const Sag sag = settling.sags().front();
    INFO("sag " << sag.tip_mm << " mm, told to be off by " << sag.error_mm);
    REQUIRE(settling.trusted());
    return sag;
}

}  // namespace boughwork
