// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 1: the tolerance, the signed distance, and the three ways to touch. Also the book's scales:
// every comparison that decides something is made on them, and they remember when one was so close that
// rounding alone may decide it.

#include "tests/book/plane.h"

namespace boughwork::book {

/// DEVELOPERS.md, "Units and axes": lengths are told apart only beyond a nanometre.
inline constexpr Real hair_mm = 1e-6L;

class Scales {
public:
    explicit Scales(Real tolerance_mm) : t(tolerance_mm) {}

    const Real t;  ///< The challenge's tolerance.

    bool more(Real a_mm, Real b_mm) { return weigh(a_mm - b_mm - hair_mm, 2e-7L); }
    bool less(Real a_mm, Real b_mm) { return more(b_mm, a_mm); }
    bool at_most(Real a_mm, Real b_mm) { return !more(a_mm, b_mm); }
    bool at_least(Real a_mm, Real b_mm) { return !less(a_mm, b_mm); }
    /// For angles and other numbers that are no lengths: the limit itself is not more.
    bool beyond(Real a, Real b) { return weigh(a - b, 1e-9L); }

    /// A decision that rounding may turn has been met.
    void doubt() { in_doubt_ = true; }
    bool in_doubt() const { return in_doubt_; }

private:
    bool weigh(Real excess, Real too_close) {
        if (std::abs(excess) < too_close) in_doubt_ = true;
        return excess > 0;
    }

    bool in_doubt_ = false;
};

/// Of two convex shapes: how far apart, or minus the shortest push that separates them.
Real signed_distance(const Corners& a, const Corners& b);

/// Outward normals opposite, or directions the same, within 5 degrees.
bool agree(Point a, Point b, Scales& scales);

/// A normal that points down or sideways, give or take 5 degrees.
bool down_or_sideways(Point normal, Scales& scales);

enum class Contact { apart, touching, overlapping };
Contact contact(Real d, Scales& scales);

enum class Touch { along_a_side, corner_to_corner, corner_to_side };
/// Of two convex shapes that touch.
Touch touch(const Corners& a, const Corners& b, Scales& scales);

}  // namespace boughwork::book
