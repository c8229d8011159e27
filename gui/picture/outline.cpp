// SPDX-License-Identifier: MIT
#include "gui/picture/outline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "engine/geometry/interval.h"

namespace boughwork {
namespace {

double depth_in(const HalfPlane& half_plane, Vec2 point) { return dot(half_plane.inward, point) - half_plane.offset; }

/// The point that is equally deep in three half-planes, and how deep.
std::optional<Room> equally_deep(const HalfPlane& a, const HalfPlane& b, const HalfPlane& c) {
    // dot(inward, at) - to_spare = offset, three times: Cramer's rule.
    const Vec2 ab = b.inward - a.inward;
    const Vec2 ac = c.inward - a.inward;
    const double determinant = cross(ab, ac);
    if (std::abs(determinant) < 1e-9) return std::nullopt;
    const double right_ab = b.offset - a.offset;
    const double right_ac = c.offset - a.offset;
    const Vec2 at{(right_ab * ac.y - right_ac * ab.y) / determinant, (ab.x * right_ac - ac.x * right_ab) / determinant};
    return Room{at, depth_in(a, at)};
}

}  // namespace

std::vector<HalfPlane> half_planes(const Polygon& convex, double by) {
    std::vector<HalfPlane> planes;
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Vec2 inward = -outward_normal(side(convex, i));
        planes.push_back(half_plane(convex[i] + by * inward, inward));
    }
    return planes;
}

Polygon cut(const Polygon& convex, const HalfPlane& half_plane) {
    Polygon left;
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment s = side(convex, i);
        const double from = depth_in(half_plane, s.from);
        const double to = depth_in(half_plane, s.to);
        if (from >= 0) left.push_back(s.from);
        if ((from > 0 && to < 0) || (from < 0 && to > 0))
            left.push_back(s.from + (from / (from - to)) * (s.to - s.from));
    }
    return left.size() < 3 ? Polygon{} : left;
}

Polygon cut(const Polygon& convex, const Polygon& window) {
    Polygon left = convex;
    for (const HalfPlane& plane : half_planes(window)) left = cut(left, plane);
    return left;
}

std::vector<Segment> cut_line(const std::vector<Vec2>& points, bool closed, const Polygon& window) {
    std::vector<Segment> stretches;
    const std::size_t count = points.empty() ? 0 : points.size() - (closed ? 0 : 1);
    for (std::size_t i = 0; i < count; ++i) {
        const Segment s = side(points, i);
        const Interval inside = inside_convex(s, window);
        if (inside.empty()) continue;
        const Vec2 along = direction(s);
        stretches.push_back({s.from + inside.low * along, s.from + inside.high * along});
    }
    return stretches;
}

bool overlapping(const Polygon& a, const Polygon& b) {
    // Convex outlines that do not overlap have a side of one of them between them.
    const auto keeps_out = [](const Polygon& one, const Polygon& other) {
        for (std::size_t i = 0; i < one.size(); ++i) {
            const Segment s = side(one, i);
            const auto beyond = [&](Vec2 corner) { return cross(s.to - s.from, corner - s.from) <= 0; };
            if (std::all_of(other.begin(), other.end(), beyond)) return true;
        }
        return false;
    };
    return !keeps_out(a, b) && !keeps_out(b, a);
}

Polygon shrunk(const Polygon& convex, double by) {
    Polygon left = convex;
    for (const HalfPlane& plane : half_planes(convex, by)) left = cut(left, plane);
    return left;
}

Polygon grown(const Polygon& convex, double by) {
    Polygon wide;
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Vec2 before = outward_normal(side(convex, i == 0 ? convex.size() - 1 : i - 1));
        const Vec2 after = outward_normal(side(convex, i));
        const Vec2 between = unit(before + after);
        // The full mitre would be `by` divided by this; a corner sharper than 60 degrees is cut off.
        const double share = dot(between, after);
        if (share >= 0.5) {
            wide.push_back(convex[i] + (by / share) * between);
        } else {
            const double along = by * (1 - share) / std::sqrt(1 - share * share);
            wide.push_back(convex[i] + by * before + along * quarter_turned_ccw(before));
            wide.push_back(convex[i] + by * after - along * quarter_turned_ccw(after));
        }
    }
    return wide;
}

Polygon circle(Vec2 centre, double radius) {
    constexpr int corners = 64;
    Polygon round;
    for (int i = 0; i < corners; ++i) round.push_back(centre + turned_ccw({radius, 0}, 2 * pi * i / corners));
    return round;
}

Polygon rectangle(Vec2 centre, Vec2 size) {
    const double x = size.x / 2;
    const double y = size.y / 2;
    return {centre + Vec2{-x, -y}, centre + Vec2{x, -y}, centre + Vec2{x, y}, centre + Vec2{-x, y}};
}

Polygon inside_left(Polygon outline) {
    if (signed_area(outline) < 0) std::reverse(outline.begin(), outline.end());
    return outline;
}

Room roomiest(const std::vector<HalfPlane>& half_planes, Vec2 half_size) {
    std::vector<HalfPlane> planes = half_planes;
    for (HalfPlane& p : planes) p.offset += std::abs(p.inward.x) * half_size.x + std::abs(p.inward.y) * half_size.y;

    // The best place is equally deep in three of the half-planes and less deep in none. Where several
    // are equally good (along the middle of a long strip), their middle is taken.
    Vec2 sum;
    int count = 0;
    double best = -std::numeric_limits<double>::infinity();
    constexpr double hair = 1e-6;
    for (std::size_t i = 0; i < planes.size(); ++i)
        for (std::size_t j = i + 1; j < planes.size(); ++j)
            for (std::size_t k = j + 1; k < planes.size(); ++k) {
                const std::optional<Room> room = equally_deep(planes[i], planes[j], planes[k]);
                if (!room || room->to_spare < best - hair) continue;
                const auto less_deep = [&](const HalfPlane& p) {
                    return depth_in(p, room->at) < room->to_spare - hair;
                };
                if (std::any_of(planes.begin(), planes.end(), less_deep)) continue;
                if (room->to_spare > best + hair) {
                    sum = {};
                    count = 0;
                    best = room->to_spare;
                }
                sum = sum + room->at;
                ++count;
            }
    return count == 0 ? Room{{}, best} : Room{(1.0 / count) * sum, best};
}

}  // namespace boughwork
