// SPDX-License-Identifier: MIT
#include "tests/book/paper.h"

namespace boughwork::book {

namespace {

Whole128 square(Length l) { return static_cast<Whole128>(l.half_um) * l.half_um; }

/// Contract: "a cone is seen from the side: an isosceles triangle, sides [2r, s, s]".
Triangle seen_from_the_side(const Cone& cone) { return {{cone.radius + cone.radius, cone.slant, cone.slant}}; }

/// The triangle that is cut or seen, if it is given by its sides.
const Triangle* by_sides(const Shape& shape, Triangle& room) {
    if (const auto* cone = std::get_if<Cone>(&shape)) {
        room = seen_from_the_side(*cone);
        return &room;
    }
    return std::get_if<Triangle>(&shape);
}

}  // namespace

bool is_cone(const Shape& shape) { return std::holds_alternative<Cone>(shape); }

std::size_t corners_of(const Shape& shape) {
    const auto* outline = std::get_if<Outline>(&shape);
    return outline ? outline->corners.size() : 3;
}

Whole128 squared_distance(const Shape& shape, std::size_t corner, std::size_t other) {
    Triangle room;
    if (const Triangle* triangle = by_sides(shape, room)) {
        // sides[0] joins corners 0 and 1, sides[1] 1 and 2, sides[2] 2 and 0.
        const std::size_t third = 3 - corner - other;
        return square(triangle->sides[(third + 1) % 3]);
    }
    const auto& corners = std::get<Outline>(shape).corners;
    return square(corners[corner].x - corners[other].x) + square(corners[corner].y - corners[other].y);
}

Whole128 squared_side(const Shape& shape, int side) {
    const std::size_t n = corners_of(shape);
    const auto first = static_cast<std::size_t>(side - 1);
    return squared_distance(shape, first, (first + 1) % n);
}

Whole128 area_squared_times_16(const Shape& shape) {
    if (corners_of(shape) == 3) {
        const Whole128 a = squared_side(shape, 1);
        const Whole128 b = squared_side(shape, 2);
        const Whole128 c = squared_side(shape, 3);
        return 4 * a * b - (a + b - c) * (a + b - c);
    }
    const auto& corners = std::get<Outline>(shape).corners;
    Whole128 twice = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const ExactPoint p = corners[i];
        const ExactPoint q = corners[(i + 1) % corners.size()];
        twice += static_cast<Whole128>(p.x.half_um) * q.y.half_um - static_cast<Whole128>(p.y.half_um) * q.x.half_um;
    }
    return 4 * twice * twice;
}

Corners on_paper(const Shape& shape) {
    if (const auto* outline = std::get_if<Outline>(&shape)) {
        Corners corners;
        for (const ExactPoint p : outline->corners)
            corners.push_back({static_cast<Real>(p.x.half_um) / 2000, static_cast<Real>(p.y.half_um) / 2000});
        return corners;
    }
    const auto a2 = static_cast<Real>(squared_side(shape, 1));
    const auto b2 = static_cast<Real>(squared_side(shape, 2));
    const auto c2 = static_cast<Real>(squared_side(shape, 3));
    const Real a = std::sqrt(a2);
    const Real x = (a2 + c2 - b2) / (2 * a);
    const Real y = -std::sqrt(static_cast<Real>(area_squared_times_16(shape))) / (2 * a);
    return {{0, 0}, {a / 2000, 0}, {x / 2000, y / 2000}};
}

Corners in_plan(const Shape& shape, const Pose& pose) {
    const Real turn = pose.turn_ccw_deg * half_turn_rad / half_turn_deg;
    Corners placed;
    for (Point p : on_paper(shape)) {
        if (pose.flipped) p.x = -p.x;
        placed.push_back(point(pose.at_mm) + Point{p.x * std::cos(turn) - p.y * std::sin(turn),
                                                   p.x * std::sin(turn) + p.y * std::cos(turn)});
    }
    return placed;
}

}  // namespace boughwork::book
