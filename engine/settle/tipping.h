// SPDX-License-Identifier: MIT
#pragma once
// Whether a tree that stands on its base tips over: it does when the vertical through its centre of mass leaves the
// base (Boston University, A. Duffy, "Stability").

#include <optional>
#include <vector>

#include "engine/vec.h"

namespace boughwork {

struct WeightAt {
    double n = 0;
    Vec2 at_mm;
};

struct Tipping {
    double weight_n = 0;
    Vec2 centre_of_mass_mm;
    double left_edge_mm = 0;  ///< Of the base, on the ground.
    double right_edge_mm = 0;
    double to_the_edge_mm = 0;  ///< From the centre of mass to the nearer edge, level; negative: past it, it tips.
    bool to_the_right = false;  ///< The way it tips, or would.
    double needed_g = 0;        ///< When it tips: how much more in the middle of the base would just hold it.
};

/// `base_mm` is the middle of the base. Without any weight nothing tips, and the centre of mass is the base's middle.
Tipping tipping(const std::vector<WeightAt>& weights, double base_mm, double base_width_mm);

}  // namespace boughwork
