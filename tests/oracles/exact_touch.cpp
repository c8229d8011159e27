// SPDX-License-Identifier: MIT
#include "tests/oracles/exact_touch.h"

#include <algorithm>

#include "tests/oracles/fifty_digits.h"

namespace boughwork::oracles {
namespace {

struct Side {
    Place from;
    Place along;  ///< To the other end.
};

Side side_of(const ExactPolygon& polygon, std::size_t i) {
    return {polygon[i], polygon[(i + 1) % polygon.size()] - polygon[i]};
}

struct Stretch {
    Rational low;
    Rational high;
};

/// Where 0 <= start + slope u <= 1 or, with an open end, past one of the two; within 0 <= u <= 1.
enum class Part { before, beside, past };

Stretch stretch(const Rational& start, const Rational& slope, Part part) {
    Stretch whole{0, 1};
    const auto keep = [&](const Rational& limit, bool at_least) {
        if (slope == 0) {
            if (at_least ? start < limit : start > limit) whole.high = whole.low;
            return;
        }
        const Rational where = (limit - start) / slope;
        if (at_least == (slope > 0))
            whole.low = std::max(whole.low, where);
        else
            whole.high = std::min(whole.high, where);
    };
    if (part != Part::before) keep(part == Part::past ? 1 : 0, true);
    if (part != Part::past) keep(part == Part::before ? 0 : 1, false);
    return whole;
}

/// The length of those u of the stretch where a u^2 + 2 b u + c <= 0; a >= 0, and b = 0 where a is.
FiftyDigits not_positive(const Rational& a, const Rational& b, const Rational& c, const Stretch& in) {
    if (in.low >= in.high) return 0;
    const FiftyDigits low(in.low);
    const FiftyDigits high(in.high);
    if (a == 0) return c <= 0 ? high - low : FiftyDigits(0);
    const Rational discriminant = b * b - a * c;
    if (discriminant < 0) return 0;
    const FiftyDigits root = sqrt(FiftyDigits(discriminant));
    const FiftyDigits first = (-FiftyDigits(b) - root) / FiftyDigits(a);
    const FiftyDigits last = (-FiftyDigits(b) + root) / FiftyDigits(a);
    return std::max(FiftyDigits(0), FiftyDigits(std::min(high, last) - std::max(low, first)));
}

/// The length of the part of `side` that is within `reach` of `other`. A place of `side` is nearest to the first
/// end of `other`, to a place beside it, or to its last end: on each of the three stretches the squared distance is
/// one quadratic function.
FiftyDigits part_within(const Side& side, const Side& other, const Rational& reach) {
    const Rational other_squared = dot(other.along, other.along);
    const Rational side_squared = dot(side.along, side.along);
    const Rational reach_squared = reach * reach;
    const Place from_first = side.from - other.from;
    const Place from_last = from_first - other.along;
    const Rational start = dot(from_first, other.along) / other_squared;
    const Rational slope = dot(side.along, other.along) / other_squared;
    const auto near_end = [&](const Place& from_end, Part part) {
        return not_positive(side_squared, dot(side.along, from_end), dot(from_end, from_end) - reach_squared,
                            stretch(start, slope, part));
    };
    const Rational off = cross(other.along, from_first);
    const Rational drift = cross(other.along, side.along);
    const FiftyDigits share = near_end(from_first, Part::before) +
                              not_positive(drift * drift, off * drift, off * off - reach_squared * other_squared,
                                           stretch(start, slope, Part::beside)) +
                              near_end(from_last, Part::past);
    return share * sqrt(FiftyDigits(side_squared));
}

/// Outward normals opposite within the angle: so are the sides themselves, which run the same way round.
bool face_each_other(const Side& a, const Side& b, const FiftyDigits& tangent) {
    const Rational opposite = -dot(a.along, b.along);
    const Rational off = abs(cross(a.along, b.along));
    if (opposite <= 0 || off > opposite / 5) return false;  // Past 11 degrees; the rest needs more digits.
    return FiftyDigits(off) <= tangent * FiftyDigits(opposite);
}

bool along_a_side(const ExactPolygon& a, const ExactPolygon& b, const Rational& reach, const FiftyDigits& longer_than,
                  const FiftyDigits& tangent) {
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t k = 0; k < b.size(); ++k) {
            const Side of_a = side_of(a, i);
            const Side of_b = side_of(b, k);
            if (!face_each_other(of_a, of_b, tangent)) continue;
            if (part_within(of_a, of_b, reach) > longer_than || part_within(of_b, of_a, reach) > longer_than)
                return true;
        }
    return false;
}

FiftyDigits tangent_of_five_degrees(const Rational& and_rad) {
    return tan(acos(FiftyDigits(-1)) / 36 + FiftyDigits(and_rad));
}

}  // namespace

bool TouchKinds::allow(Touch kind) const {
    if (kind == Touch::along_a_side) return maybe_along_a_side;
    if (kind == Touch::corner_to_corner) return !surely_along_a_side && maybe_corner_to_corner;
    return !surely_along_a_side && !surely_corner_to_corner;
}

bool TouchKinds::are_several() const {
    return allow(Touch::along_a_side) + allow(Touch::corner_to_corner) + allow(Touch::corner_to_side) > 1;
}

TouchKinds touch_kinds(const Polygon& polygon_a, const Polygon& polygon_b, double tolerance_mm,
                       const Forgiven& forgiven) {
    const ExactPolygon a = exact(polygon_a);
    const ExactPolygon b = exact(polygon_b);
    const Rational t(tolerance_mm);
    static const FiftyDigits five_degrees = tangent_of_five_degrees(0);
    const FiftyDigits past_five_degrees = tangent_of_five_degrees(forgiven.rad);

    TouchKinds kinds;
    // A part may have to be a hair longer to count, or be a hair longer because places a hair too far away count.
    kinds.surely_along_a_side = along_a_side(a, b, t, FiftyDigits(Rational(3 * t + forgiven.mm)), five_degrees);
    kinds.maybe_along_a_side = kinds.surely_along_a_side ||
                               along_a_side(a, b, t + forgiven.mm, FiftyDigits(Rational(3 * t)), past_five_degrees);
    Rational nearest = dot(a[0] - b[0], a[0] - b[0]);
    for (const Place& p : a)
        for (const Place& q : b) nearest = std::min(nearest, dot(p - q, p - q));
    const Rational past = 2 * t + forgiven.mm;
    kinds.surely_corner_to_corner = nearest <= 4 * t * t;
    kinds.maybe_corner_to_corner = nearest <= past * past;
    return kinds;
}

}  // namespace boughwork::oracles
