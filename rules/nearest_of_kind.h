// SPDX-License-Identifier: MIT
#pragma once
// "Make it right-angled", "make two sides equal", "make all equal": the triangle of that kind that is nearest to
// a given one. Near is the sum of the squared changes of its three sides. Afterwards the referee's measure()
// calls it so. A triangle that is of the kind stays as it is.

#include "engine/geometry/triangle_making.h"

namespace boughwork {

/// Right, and no close call where there is one within a few steps. With a stop: all sides on the step, such as 3,
/// 4, 5 near 3, 4, 6; the legs whose sides change least, each pair with the hypotenuse that suits it best.
Triangle nearest_right(const Triangle& triangle, const Challenge& challenge, const Stop& stop);

/// Two sides equal; all three only where the challenge calls that isosceles too. The third side stays as it is,
/// but where it would measure like the two, or not reach: then it changes by steps.
Triangle nearest_isosceles(const Triangle& triangle, const Challenge& challenge, const Stop& stop);

Triangle nearest_equilateral(const Triangle& triangle, const Challenge& challenge, const Stop& stop);

}  // namespace boughwork
