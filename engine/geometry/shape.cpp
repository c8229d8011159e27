// SPDX-License-Identifier: MIT
#include "engine/geometry/shape.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>
#include <string>

#include "engine/words/say.h"

namespace boughwork {
namespace {

using Sides = std::array<Length, 3>;

/// A shape seen as a triangle of three sides, or as an outline.
struct Plain {
    const Outline* outline = nullptr;
    Sides sides;
};

Plain plain(const Shape& shape) {
    if (const auto* outline = std::get_if<Outline>(&shape)) return {outline, {}};
    if (const auto* cone = std::get_if<Cone>(&shape))
        return {nullptr, {cone->radius + cone->radius, cone->slant, cone->slant}};
    return {nullptr, std::get<Triangle>(shape).sides};
}

struct ExactVec {
    Int128 x;
    Int128 y;
};

ExactVec from_to(const ExactPoint& a, const ExactPoint& b) {
    return {b.x.half_um - a.x.half_um, b.y.half_um - a.y.half_um};
}
Int128 cross(ExactVec a, ExactVec b) { return a.x * b.y - a.y * b.x; }
Int128 dot(ExactVec a, ExactVec b) { return a.x * b.x + a.y * b.y; }

const ExactPoint& corner(const Outline& outline, std::size_t i) { return outline.corners[i % outline.corners.size()]; }

ExactVec edge(const Outline& outline, std::size_t i) { return from_to(corner(outline, i), corner(outline, i + 1)); }

Uint128 four_areas_squared(const Sides& sides) {
    // Heron: with every side at most 2e9 the product is at most perimeter^4 / 27 < 2^128.
    const Int128 a = sides[0].half_um;
    const Int128 b = sides[1].half_um;
    const Int128 c = sides[2].half_um;
    const std::array<Int128, 4> factors{a + b + c, -a + b + c, a - b + c, a + b - c};
    Uint128 product = 1;
    for (const Int128 factor : factors) {
        if (factor <= 0) return 0;
        product *= static_cast<Uint128>(factor);
    }
    return product;
}

double in_mm(long double half_um) { return static_cast<double>(half_um / half_um_per_mm); }

long double four_areas(const Shape& shape) {
    const Plain p = plain(shape);
    return p.outline ? 2 * static_cast<long double>(twice_area(*p.outline))
                     : std::sqrt(static_cast<long double>(four_areas_squared(p.sides)));
}

/// The angle at a corner as the quotient of two sides of a right triangle: tan = opposite / adjacent.
struct Slope {
    long double opposite;
    long double adjacent;
};

Slope angle_at(const Shape& shape, std::size_t at) {
    const Plain p = plain(shape);
    if (p.outline) {
        const std::size_t n = p.outline->corners.size();
        const ExactVec onward = edge(*p.outline, at);
        const ExactVec back = from_to(corner(*p.outline, at), corner(*p.outline, at + n - 1));
        const Int128 area = cross(onward, back);
        return {static_cast<long double>(area < 0 ? -area : area), static_cast<long double>(dot(onward, back))};
    }
    // Corner k lies between side k and the side before it, opposite the side after it.
    const Int128 onward = p.sides[at].half_um;
    const Int128 opposite = p.sides[(at + 1) % 3].half_um;
    const Int128 back = p.sides[(at + 2) % 3].half_um;
    return {four_areas(shape), static_cast<long double>(onward * onward + back * back - opposite * opposite)};
}

Problem cannot(std::string why, std::string to_do) { return {std::move(why), "", std::move(to_do)}; }

Result<Done> possible_triangle(const Sides& sides) {
    for (const Length side : sides)
        if (side.half_um <= 0)
            return cannot(say("A side must be longer than nothing."), say("Give each side a length."));
    for (std::size_t i = 0; i < 3; ++i)
        if (sides[i] >= sides[(i + 1) % 3] + sides[(i + 2) % 3])
            return cannot(
                say("These three sides make no triangle: the longest is not shorter than the other two together."),
                say("Make the longest side shorter, or another one longer."));
    return Done{};
}

Result<Done> possible_outline(const Outline& outline) {
    const std::size_t n = outline.corners.size();
    if (n < 3) return cannot(say("An outline needs at least three corners."), say("Add corners."));
    if (n > most_corners)
        return cannot(say("An outline has at most {0} corners.", {std::to_string(most_corners)}),
                      say("Leave some out."));
    // Clockwise and convex: every turn goes right, and once around the edges go up and down once.
    std::size_t changes = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const ExactVec here = edge(outline, i);
        const ExactVec next = edge(outline, i + 1);
        const Int128 turn = cross(here, next);
        if (turn == 0)
            return cannot(
                say("Corner {0} of the outline is straight or stands twice.", {std::to_string((i + 1) % n + 1)}),
                say("Leave that corner out."));
        if (turn > 0)
            return cannot(say("The outline is not convex, or does not go clockwise, at corner {0}.",
                              {std::to_string((i + 1) % n + 1)}),
                          say("Give the corners clockwise, without a dent."));
        const auto rises = [](ExactVec e) { return e.y > 0 || (e.y == 0 && e.x > 0); };
        changes += rises(here) != rises(next);
    }
    if (changes != 2) return cannot(say("The outline goes around more than once."), say("Give each corner once."));
    return Done{};
}

Result<Done> possible_cone(const Cone& cone) {
    if (cone.radius.half_um <= 0)
        return cannot(say("A cone needs a radius longer than nothing."), say("Give it a radius."));
    if (cone.slant <= cone.radius)
        return cannot(say("A cone's slant must be longer than its radius."), say("Make the slant longer."));
    return Done{};
}

}  // namespace

Int128 twice_area(const Outline& outline) {
    Int128 sum = 0;
    for (std::size_t i = 1; i + 1 < outline.corners.size(); ++i)
        sum +=
            cross(from_to(corner(outline, 0), corner(outline, i)), from_to(corner(outline, 0), corner(outline, i + 1)));
    return sum < 0 ? -sum : sum;
}

Result<Done> possible(const Shape& shape) {
    if (const auto* outline = std::get_if<Outline>(&shape)) return possible_outline(*outline);
    if (const auto* cone = std::get_if<Cone>(&shape)) return possible_cone(*cone);
    return possible_triangle(std::get<Triangle>(shape).sides);
}

std::vector<Vec2> corners_mm(const Shape& shape) {
    const Plain p = plain(shape);
    std::vector<Vec2> corners;
    if (p.outline) {
        for (const ExactPoint& c : p.outline->corners) corners.push_back({to_mm(c.x), to_mm(c.y)});
        return corners;
    }
    const std::int64_t a = p.sides[0].half_um;  // at most 2e9, so that the sum of squares fits
    const std::int64_t b = p.sides[1].half_um;
    const std::int64_t c = p.sides[2].half_um;
    const auto twice_base = static_cast<long double>(2 * a);
    return {
        {0, 0},
        {to_mm(p.sides[0]), 0},
        {in_mm(static_cast<long double>(a * a + c * c - b * b) / twice_base), -in_mm(four_areas(shape) / twice_base)}};
}

std::vector<Vec2> corners_mm(const Shape& shape, const Pose& pose) {
    std::vector<Vec2> corners = corners_mm(shape);
    const Vec2 right = turned_ccw({1, 0}, pose.turn_ccw_deg / degrees_per_radian);
    const Vec2 x_axis = pose.flipped ? -right : right;
    const Vec2 y_axis = quarter_turned_ccw(right);
    for (Vec2& c : corners) c = pose.at_mm + c.x * x_axis + c.y * y_axis;
    return corners;
}

PosedShape posed(const Shape& shape, const Pose& pose) {
    PosedShape result{corners_mm(shape, pose), pose.flipped};
    if (!pose.flipped) std::reverse(result.outline.begin(), result.outline.end());
    return result;
}

std::size_t hanging_sides(const Shape& shape) { return std::holds_alternative<Cone>(shape) ? 1 : corner_count(shape); }

double area_mm2(const Shape& shape) {
    return static_cast<double>(four_areas(shape) / 4 / (half_um_per_mm * half_um_per_mm));
}

double least_height_mm(const Shape& shape) {
    const Plain p = plain(shape);
    if (!p.outline) {
        const Length longest = *std::max_element(p.sides.begin(), p.sides.end());
        return in_mm(four_areas(shape) / 2 / static_cast<long double>(longest.half_um));
    }
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < p.outline->corners.size(); ++i) {
        Int128 widest = 0;  // twice the area of the triangle of this side and the farthest corner
        for (const ExactPoint& c : p.outline->corners) {
            const Int128 off = cross(from_to(corner(*p.outline, i), c), edge(*p.outline, i));
            widest = std::max(widest, off);
        }
        const auto side_length = std::sqrt(static_cast<long double>(dot(edge(*p.outline, i), edge(*p.outline, i))));
        least = std::min(least, in_mm(static_cast<long double>(widest) / side_length));
    }
    return least;
}

std::vector<double> angles_rad(const Shape& shape) {
    std::vector<double> angles;
    for (std::size_t i = 0; i < corner_count(shape); ++i) {
        const Slope slope = angle_at(shape, i);
        angles.push_back(static_cast<double>(std::atan2(slope.opposite, slope.adjacent)));
    }
    return angles;
}

std::size_t corner_count(const Shape& shape) {
    const auto* outline = std::get_if<Outline>(&shape);
    return outline ? outline->corners.size() : 3;
}

std::optional<Sides> three_sides(const Shape& shape) {
    const Plain p = plain(shape);
    return p.outline ? std::nullopt : std::optional(p.sides);
}

Int128 squared_distance(const Shape& shape, std::size_t corner_a, std::size_t corner_b) {
    if (corner_a == corner_b) return 0;
    const Plain p = plain(shape);
    if (p.outline) {
        const ExactVec apart = from_to(corner(*p.outline, corner_a), corner(*p.outline, corner_b));
        return dot(apart, apart);
    }
    // Side k joins corners k and k + 1; corners 0 and 2 are joined by side 2.
    const std::size_t low = std::min(corner_a, corner_b);
    const Int128 side = p.sides[corner_a + corner_b == 2 ? 2 : low].half_um;
    return side * side;
}

double short_of_right_rad(const Shape& shape, std::size_t corner) {
    const Slope slope = angle_at(shape, corner);
    return std::atan2(static_cast<double>(slope.adjacent), static_cast<double>(slope.opposite));
}

Uint128 four_areas_squared(const Shape& shape) {
    const Plain p = plain(shape);
    if (!p.outline) return four_areas_squared(p.sides);
    const auto four = static_cast<Uint128>(2 * twice_area(*p.outline));
    const bool fits = four < (Uint128{1} << 64);
    return fits ? four * four : std::numeric_limits<Uint128>::max();
}

}  // namespace boughwork
