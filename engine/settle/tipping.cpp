// SPDX-License-Identifier: MIT
#include "engine/settle/tipping.h"

#include <algorithm>

#include "engine/settle/gravity.h"

namespace boughwork {

Tipping tipping(const std::vector<WeightAt>& weights, double base_mm, double base_width_mm) {
    Tipping t;
    t.left_edge_mm = base_mm - base_width_mm / 2;
    t.right_edge_mm = base_mm + base_width_mm / 2;
    Vec2 moment;
    for (const WeightAt& weight : weights) {
        t.weight_n += weight.n;
        moment = moment + weight.n * weight.at_mm;
    }
    t.centre_of_mass_mm = t.weight_n > 0 ? (1 / t.weight_n) * moment : Vec2{base_mm, 0};
    const double x = t.centre_of_mass_mm.x;
    t.to_the_right = x > base_mm;
    t.to_the_edge_mm = std::min(x - t.left_edge_mm, t.right_edge_mm - x);
    // About the edge, what is past it against what would be added in the middle.
    if (t.to_the_edge_mm < 0) t.needed_g = grams(t.weight_n * -t.to_the_edge_mm / (base_width_mm / 2));
    return t;
}

}  // namespace boughwork
