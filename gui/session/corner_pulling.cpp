// SPDX-License-Identifier: MIT
#include "gui/session/corner_pulling.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/geometry/shape.h"
#include "engine/limits.h"

namespace boughwork {
namespace {

/// A pulled corner and the two that stay. Side i joins corners i and i + 1.
struct Pull {
    std::size_t corner;
    std::size_t next() const { return (corner + 1) % 3; }
    std::size_t before() const { return (corner + 2) % 3; }
};

bool runs_counter_clockwise(const std::array<Vec2, 3>& corners) {
    return cross(corners[1] - corners[0], corners[2] - corners[0]) > 0;
}

/// With these lengths to the two corners that stay, on that side of the line through them.
std::optional<PulledTriangle> placed(const PulledTriangle& from, Pull pull, Length to_next, Length to_before,
                                     bool on_left) {
    PulledTriangle made = from;
    made.triangle.sides[pull.corner] = to_next;
    made.triangle.sides[pull.before()] = to_before;
    if (!possible(made.triangle)) return std::nullopt;
    const Vec2 next = from.corners_mm[pull.next()];
    const Vec2 base = from.corners_mm[pull.before()] - next;
    const double d = to_mm(made.triangle.sides[pull.next()]);
    const double p = to_mm(to_next);
    const double q = to_mm(to_before);
    const double along = (d * d + (p - q) * (p + q)) / (2 * d);
    const double off = std::sqrt(std::max(0.0, (p - along) * (p + along)));
    const Vec2 way = unit(base);
    made.corners_mm[pull.corner] = next + along * way + (on_left ? off : -off) * quarter_turned_ccw(way);
    return made;
}

bool lies_on_left(const PulledTriangle& from, Pull pull, Vec2 place) {
    const Vec2 next = from.corners_mm[pull.next()];
    return cross(from.corners_mm[pull.before()] - next, place - next) >= 0;
}

}  // namespace

PulledTriangle laid_out(const Triangle& triangle) {
    const std::vector<Vec2> corners = corners_mm(triangle);
    PulledTriangle pulled{triangle, {corners[0], corners[1], corners[2]}};
    const Box extent = bounds(corners);
    for (Vec2& corner : pulled.corners_mm) corner = corner - 0.5 * (extent.low + extent.high);
    return pulled;
}

PulledTriangle first_to_pull(const Stop& stop) {
    if (!stop) return laid_out({{length_from_mm(80), length_from_mm(70), length_from_mm(60)}});
    // At a coarse step at least 4, 3 and 2 of them, so that it is no needle and all three differ.
    const auto steps = [&](double mm, std::int64_t least) {
        return multiple_of(*stop, std::max<std::int64_t>(least, std::llround(mm / step_mm(*stop))));
    };
    return laid_out({{steps(80, 4), steps(70, 3), steps(60, 2)}});
}

PulledTriangle corner_pulled(const PulledTriangle& from, std::size_t corner, Vec2 to_mm, const Stop& stop) {
    if (!within_limits(to_mm)) return from;
    const Pull pull{corner};
    const double p = distance(to_mm, from.corners_mm[pull.next()]);
    const double q = distance(to_mm, from.corners_mm[pull.before()]);
    const bool on_left = lies_on_left(from, pull, to_mm);
    const double step = stop ? step_mm(*stop) : 0;
    // Where the nearest lengths would make it flat, their neighbours may not.
    std::optional<PulledTriangle> nearest;
    for (const int longer : {0, 1, -1})
        for (const int other : {0, 1, -1}) {
            const auto made =
                placed(from, pull, stopped(p + longer * step, stop), stopped(q + other * step, stop), on_left);
            if (!made) continue;
            if (longer == 0 && other == 0) return *made;
            const auto off = [&](const PulledTriangle& tried) { return distance(tried.corners_mm[corner], to_mm); };
            if (!nearest || off(*made) < off(*nearest)) nearest = made;
        }
    return nearest.value_or(from);
}

PulledTriangle corner_stepped(const PulledTriangle& from, std::size_t corner, Vec2 arrow, const Step& ruler,
                              const Stop& stop) {
    const Vec2 now = from.corners_mm[corner];
    if (!stop) return corner_pulled(from, corner, now + step_mm(ruler) * unit(arrow), stop);
    const Pull pull{corner};
    const double p = distance(now, from.corners_mm[pull.next()]);
    const double q = distance(now, from.corners_mm[pull.before()]);
    const double step = step_mm(*stop);
    PulledTriangle best = from;
    double best_way = 0;
    for (const int longer : {-1, 0, 1})
        for (const int other : {-1, 0, 1}) {
            const auto made = placed(from, pull, stopped(p + longer * step, stop), stopped(q + other * step, stop),
                                     lies_on_left(from, pull, now));
            if (!made || made->triangle == from.triangle) continue;
            const double way = dot(unit(made->corners_mm[corner] - now), unit(arrow));
            if (way <= best_way + 1e-9) continue;
            best = *made;
            best_way = way;
        }
    return best;
}

PulledTriangle with_sides(const PulledTriangle& from, const Triangle& triangle) {
    PulledTriangle made{triangle, from.corners_mm};
    const Vec2 middle = 0.5 * (from.corners_mm[0] + from.corners_mm[1]);
    const Vec2 half = (to_mm(triangle.sides[0]) / 2) * unit(from.corners_mm[1] - from.corners_mm[0]);
    made.corners_mm[0] = middle - half;
    made.corners_mm[1] = middle + half;
    const Pull third{2};
    return *placed(made, third, triangle.sides[2], triangle.sides[1], lies_on_left(from, third, from.corners_mm[2]));
}

Triangle as_seen(const PulledTriangle& pulled) {
    const auto& [first, second, third] = pulled.triangle.sides;
    return runs_counter_clockwise(pulled.corners_mm) ? Triangle{{first, third, second}} : pulled.triangle;
}

}  // namespace boughwork
