// SPDX-License-Identifier: MIT
#pragma once
// The kind of a touch from the words of rulebook 1, in exact numbers; written without a look at how the
// program does it. Within a hair of a limit two answers may be right; all that may be are told.

#include "engine/geometry/contact.h"
#include "tests/oracles/exact_polygon.h"

namespace boughwork::oracles {

/// How far past its limit a length or an angle may still be called the limit.
struct Forgiven {
    Rational mm;
    Rational rad;
};

/// What is true of a touch, whatever the hair decides (`surely`), and what may be.
struct TouchKinds {
    bool surely_along_a_side = false;
    bool maybe_along_a_side = false;
    bool surely_corner_to_corner = false;
    bool maybe_corner_to_corner = false;

    bool allow(Touch kind) const;
    bool are_several() const;
};

TouchKinds touch_kinds(const Polygon& a, const Polygon& b, double tolerance_mm, const Forgiven& forgiven);

}  // namespace boughwork::oracles
