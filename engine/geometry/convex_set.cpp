// SPDX-License-Identifier: MIT
#include "engine/geometry/convex_set.h"

#include <algorithm>
#include <cassert>
#include <limits>

#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

constexpr std::size_t abreast = 4;

std::size_t blocks_for(std::size_t corners) { return (corners + abreast - 1) / abreast; }

void fill(FourSides* block, const Polygon& outline) {
    const auto set = [block](std::size_t i, Vec2 from, Vec2 normal, double length) {
        FourSides& four = block[i / abreast];
        const std::size_t lane = i % abreast;
        four.from_x[lane] = from.x;
        four.from_y[lane] = from.y;
        four.normal_x[lane] = normal.x;
        four.normal_y[lane] = normal.y;
        four.beyond[lane] = dot(normal, from);
        four.length[lane] = length;
    };
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Segment s = side(outline, i);
        const double long_mm = length(s);
        const Vec2 normal = -1 / long_mm * quarter_turned_ccw(s.to - s.from);
        set(i, s.from, normal, long_mm);
        if (i + 1 < outline.size()) continue;
        for (std::size_t spare = i + 1; spare % abreast != 0; ++spare) set(spare, s.from, normal, long_mm);
    }
}

/// True when a corner of `corners` is within `reach` of a side of `sides`, which it lies outside of.
bool corner_within(const ConvexView& corners, const ConvexView& sides, double reach) {
    for (std::size_t i = 0; i < corners.corners; ++i) {
        const Vec2 p = corners.corner(i);
        for (std::size_t b = 0; b < blocks_for(sides.corners); ++b) {
            const FourSides& s = sides.blocks[b];
            for (std::size_t lane = 0; lane < abreast; ++lane) {
                const Vec2 off{p.x - s.from_x[lane], p.y - s.from_y[lane]};
                const Vec2 normal{s.normal_x[lane], s.normal_y[lane]};
                const double along = dot(off, quarter_turned_ccw(normal));
                const double past = along - std::clamp(along, 0.0, s.length[lane]);
                const double out = dot(off, normal);
                if (out * out + past * past <= reach * reach) return true;
            }
        }
    }
    return false;
}

}  // namespace

void ConvexSet::add(const Polygon& outline) {
    first_block_.push_back(static_cast<std::uint32_t>(blocks_.size()));
    corners_.push_back(static_cast<std::uint32_t>(outline.size()));
    blocks_.resize(blocks_.size() + blocks_for(outline.size()));
    fill(&blocks_[first_block_.back()], outline);
}

void ConvexSet::replace(std::size_t i, const Polygon& outline) {
    assert(outline.size() == corners_[i]);
    fill(&blocks_[first_block_[i]], outline);
}

double separation(const ConvexView& a, const ConvexView& b, double enough) {
    double widest = -std::numeric_limits<double>::infinity();
    for (std::size_t block = 0; block < blocks_for(a.corners); ++block) {
        const FourSides& s = a.blocks[block];
        FourSides::Lanes least;
        least.fill(std::numeric_limits<double>::infinity());
        for (std::size_t i = 0; i < b.corners; ++i) {
            const Vec2 p = b.corner(i);
            for (std::size_t lane = 0; lane < abreast; ++lane) {
                const double out = s.normal_x[lane] * p.x + s.normal_y[lane] * p.y - s.beyond[lane];
                least[lane] = out < least[lane] ? out : least[lane];
            }
        }
        for (const double out : least) widest = out > widest ? out : widest;
        if (widest > enough) break;
    }
    return widest;
}

std::optional<Contact> contact_within(double reach_mm, const ConvexView& a, const ConvexView& b, double tolerance_mm) {
    const double far = reach_mm + hair_mm;
    const double from_a = separation(a, b, far);
    if (from_a > far) return std::nullopt;
    const double from_b = separation(b, a, far);
    if (from_b > far) return std::nullopt;
    const double widest = std::max(from_a, from_b);
    const double near = tolerance_mm + hair_mm;
    if (widest > near) return Contact::apart;
    if (widest <= 0) return widest < -near ? Contact::overlapping : Contact::touching;
    // Outside of a side, but perhaps past its end: two shapes are nearest at a corner of one.
    return corner_within(a, b, near) || corner_within(b, a, near) ? Contact::touching : Contact::apart;
}

}  // namespace boughwork
