// SPDX-License-Identifier: MIT
#pragma once
#include "engine/geometry/shape.h"

namespace boughwork {

inline Triangle triangle_mm(double a, double b, double c) {
    return {{length_from_mm(a), length_from_mm(b), length_from_mm(c)}};
}

}  // namespace boughwork
