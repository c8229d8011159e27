// SPDX-License-Identifier: MIT
#pragma once
// A place or a direction in the plan. Millimetres, x to the right, y up, the ground is y = 0.

#include <cmath>

namespace boughwork {

struct Vec2 {
    double x = 0;
    double y = 0;

    friend bool operator==(Vec2, Vec2) = default;
    friend Vec2 operator+(Vec2 a, Vec2 b) { return {a.x + b.x, a.y + b.y}; }
    friend Vec2 operator-(Vec2 a, Vec2 b) { return {a.x - b.x, a.y - b.y}; }
    friend Vec2 operator-(Vec2 a) { return {-a.x, -a.y}; }
    friend Vec2 operator*(double k, Vec2 a) { return {k * a.x, k * a.y}; }
};

inline double dot(Vec2 a, Vec2 b) { return a.x * b.x + a.y * b.y; }
inline double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }
inline double length(Vec2 a) { return std::sqrt(dot(a, a)); }  // places end at 1e6 mm: no square overflows
inline double distance(Vec2 a, Vec2 b) { return length(b - a); }

/// `a` at length 1; zero stays zero.
inline Vec2 unit(Vec2 a) {
    const double l = length(a);
    return l > 0 ? Vec2{a.x / l, a.y / l} : Vec2{};
}

/// A quarter turn counter-clockwise.
inline Vec2 quarter_turned_ccw(Vec2 a) { return {-a.y, a.x}; }

inline constexpr double pi = 3.14159265358979323846;
inline constexpr double degrees_per_radian = 180.0 / pi;

inline Vec2 turned_ccw(Vec2 a, double angle_rad) {
    const double c = std::cos(angle_rad);
    const double s = std::sin(angle_rad);
    return {c * a.x - s * a.y, s * a.x + c * a.y};
}

/// The angle between two directions, 0 to pi.
inline double angle_between_rad(Vec2 a, Vec2 b) { return std::atan2(std::abs(cross(a, b)), dot(a, b)); }

}  // namespace boughwork
