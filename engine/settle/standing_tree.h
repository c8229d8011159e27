// SPDX-License-Identifier: MIT
#pragma once
// A tree that is stood up, before gravity has done anything: rods that bend, and paper that is held or not. Values;
// who holds what was decided elsewhere (rules/holding.h).

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

/// A free stretch of a branch, clamped at its first point.
struct Rod {
    std::vector<Vec2> path_mm;              ///< At least two points, none twice in a row.
    std::optional<double> stiffness_n_mm2;  ///< E I; absent: it does not bend. 0: a string.
    double weight_n_per_mm = 0;
    double half_thickness_mm = 0;  ///< How far it reaches on either side of the path.
};

enum class Grip {
    fast,        ///< Taped: it goes where its holder goes.
    by_a_point,  ///< It swings about `at_mm`.
    none,        ///< It falls.
};

/// A piece of paper, the same weight everywhere.
struct Sheet {
    Polygon outline;
    double weight_n = 0;
    Grip grip = Grip::none;
    Vec2 at_mm;                        ///< Where it is held: the middle of its taped side, or the point.
    std::optional<std::size_t> rod;    ///< What holds it: a rod ...
    std::optional<std::size_t> sheet;  ///< ... or a sheet earlier in the list; neither: what never moves (the trunk).
};

struct StandingTree {
    std::vector<Rod> rods;
    std::vector<Sheet> sheets;
};

/// How a stiff thing has moved: turned about the origin, then shifted.
struct Motion {
    double turn_ccw_rad = 0;
    Vec2 shift_mm;
    Vec2 of(Vec2 place_mm) const { return turned_ccw(place_mm, turn_ccw_rad) + shift_mm; }
};

/// Where everything is at one moment.
struct TreePlaces {
    std::vector<std::vector<Vec2>> rods_mm;  ///< The nodes of each rod, its first point first.
    std::vector<Motion> sheets;
};

}  // namespace boughwork
