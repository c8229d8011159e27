// SPDX-License-Identifier: MIT
#pragma once
// Triangles from what a pupil knows of them: three sides (Euclid, Elements I.8), two sides and the angle between
// (I.4), a side and its two angles (I.26), two sides and an angle that is not between them. What is given stays as
// given; a side that has to be worked out stops at a step, and the angles then give way. Or why there is no such
// triangle. Sides and corners are numbered as in scene.h: side 1 joins corners 1 and 2, side 2 corners 2 and 3.

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/challenge.h"
#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

/// At whole multiples of it lengths stop that were worked out or pulled; absent: at the half-micrometre.
using Stop = std::optional<Step>;

/// One step.
double step_mm(const Step& step);
/// So many steps; of a step that is no whole number of half-micrometres, the nearest length.
Length multiple_of(const Step& step, std::int64_t count);

/// The nearest length at which `mm` stops, a half going up; at least one step.
Length stopped(double mm, const Stop& stop);

Result<Triangle> triangle_of_sides(Length side_1, Length side_2, Length side_3);

/// The angle lies between them, at corner 2; side 3 is worked out.
Result<Triangle> triangle_of_angle_between(Length side_1, Length side_2, double angle_deg, const Stop& stop);

/// The angles at corners 1 and 2, both ends of side 1; sides 2 and 3 are worked out.
Result<Triangle> triangle_of_two_angles(Length side_1, double angle_1_deg, double angle_2_deg, const Stop& stop);

/// The angle lies opposite side 1, at corner 3. There are two such triangles when the angle is acute and side 1
/// is shorter than side 2 yet long enough to reach: the one with the longer side 3 comes first. At a coarse step
/// the two may become one.
Result<std::vector<Triangle>> triangles_of_angle_opposite(Length side_1, Length side_2, double angle_deg,
                                                          const Stop& stop);

}  // namespace boughwork
