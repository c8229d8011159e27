// SPDX-License-Identifier: MIT
#include "engine/settle/free_stretches.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace boughwork {
namespace {

constexpr double shortest_mm = 1e-3;

/// The part of a segment that is inside, as shares of it from 0 to 1.
struct Inside {
    double from;
    double to;
};
std::optional<Inside> part_inside(Vec2 from, Vec2 to, const Polygon& convex) {
    Inside part{0, 1};
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment edge = side(convex, i);
        const double start = cross(edge.to - edge.from, from - edge.from);  // positive inside
        const double end = cross(edge.to - edge.from, to - edge.from);
        if (start < 0 && end < 0) return std::nullopt;
        if (start < 0) part.from = std::max(part.from, start / (start - end));
        if (end < 0) part.to = std::min(part.to, start / (start - end));
    }
    if (part.from >= part.to) return std::nullopt;
    return part;
}

/// The branch's path in parts, in the trunk and out of it by turns.
struct Part {
    bool free;
    std::vector<Vec2> path_mm;
};
std::vector<Part> parts_of(const std::vector<Vec2>& path_mm, const Polygon& trunk) {
    std::vector<Part> parts;
    const auto add = [&](bool free, Vec2 from, Vec2 to) {
        if (distance(from, to) < shortest_mm) return;
        if (parts.empty() || parts.back().free != free) parts.push_back({free, {from}});
        parts.back().path_mm.push_back(to);
    };
    for (std::size_t i = 1; i < path_mm.size(); ++i) {
        const Vec2 from = path_mm[i - 1];
        const Vec2 to = path_mm[i];
        const std::optional<Inside> inside = part_inside(from, to, trunk);
        if (!inside) {
            add(true, from, to);
            continue;
        }
        const Vec2 enters = from + inside->from * (to - from);
        const Vec2 leaves = from + inside->to * (to - from);
        add(true, from, enters);
        add(false, enters, leaves);
        add(true, leaves, to);
    }
    return parts;
}

}  // namespace

std::vector<FreeStretch> free_stretches(const std::vector<Vec2>& path_mm, const Polygon& trunk) {
    std::vector<FreeStretch> free;
    const std::vector<Part> parts = parts_of(path_mm, trunk);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (!parts[i].free) continue;
        FreeStretch& stretch = free.emplace_back();
        stretch.path_mm = parts[i].path_mm;
        const bool starts_in_the_trunk = i > 0;
        const bool ends_in_the_trunk = i + 1 < parts.size();
        if (starts_in_the_trunk && ends_in_the_trunk) {
            stretch.clamp = FreeStretch::Clamp::at_both_ends;
        } else if (ends_in_the_trunk) {
            stretch.reversed = true;
            std::reverse(stretch.path_mm.begin(), stretch.path_mm.end());
        } else if (!starts_in_the_trunk) {
            stretch.clamp = FreeStretch::Clamp::adrift;
        }
    }
    return free;
}

std::vector<Vec2> bent_path(const std::vector<Vec2>& path_mm, const Polygon& trunk,
                            const std::vector<std::vector<Vec2>>& bent) {
    std::vector<Vec2> path;
    std::size_t next = 0;
    const std::vector<FreeStretch> stretches = free_stretches(path_mm, trunk);
    for (const Part& part : parts_of(path_mm, trunk)) {
        std::vector<Vec2> points = part.path_mm;
        if (part.free) {
            points = bent[next];
            if (stretches[next].reversed) std::reverse(points.begin(), points.end());
            ++next;
        }
        for (const Vec2 point : points)
            if (path.empty() || distance(path.back(), point) >= shortest_mm) path.push_back(point);
    }
    return path.size() < 2 ? path_mm : path;
}

}  // namespace boughwork
