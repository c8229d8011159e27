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

FourSides four_sides(const Polygon& outline, std::size_t first) {
    FourSides four;
    for (std::size_t lane = 0; lane < abreast; ++lane) {
        const Segment s = side(outline, std::min(first + lane, outline.size() - 1));
        const Vec2 along = s.to - s.from;
        const double per_mm = 1 / length(along);  // one division for both coordinates
        const Vec2 normal{per_mm * along.y, -per_mm * along.x};
        four.from_x[lane] = s.from.x;
        four.from_y[lane] = s.from.y;
        four.normal_x[lane] = normal.x;
        four.normal_y[lane] = normal.y;
        four.beyond[lane] = dot(normal, s.from);
    }
    return four;
}

/// True when a corner of `corners` is within `reach` of a side of `sides`, which it lies outside of.
bool corner_within(ConvexView corners, ConvexView sides, double reach) {
    for (std::size_t k = 0; k < sides.corners; ++k) {
        const Vec2 from = sides.corner(k);
        const Vec2 normal = sides.normal(k);
        const double long_mm = distance(from, sides.corner(k + 1 < sides.corners ? k + 1 : 0));
        for (std::size_t i = 0; i < corners.corners; ++i) {
            const Vec2 off = corners.corner(i) - from;
            const double out = dot(off, normal);
            if (out > reach) continue;
            const double along = dot(off, quarter_turned_ccw(normal));
            const double past = along - std::clamp(along, 0.0, long_mm);
            if (out * out + past * past <= reach * reach) return true;
        }
    }
    return false;
}

}  // namespace

void ConvexSet::add(const Polygon& outline) {
    first_block_.push_back(static_cast<std::uint32_t>(blocks_.size()));
    corners_.push_back(static_cast<std::uint32_t>(outline.size()));
    for (std::size_t first = 0; first < outline.size(); first += abreast) blocks_.push_back(four_sides(outline, first));
}

void ConvexSet::replace(std::size_t i, const Polygon& outline) {
    assert(outline.size() == corners_[i]);
    for (std::size_t block = 0; block < blocks_for(outline.size()); ++block)
        blocks_[first_block_[i] + block] = four_sides(outline, block * abreast);
}

double separation(ConvexView a, ConvexView b, double enough) {
    const auto less = [](double x, double y) { return x < y ? x : y; };  // one instruction for several lanes
    const auto more = [](double x, double y) { return x > y ? x : y; };
    double widest = -std::numeric_limits<double>::infinity();
    for (std::size_t block = 0; block < blocks_for(a.corners) && widest <= enough; ++block) {
        const FourSides& s = a.blocks[block];
        FourSides::Lanes least;
        least.fill(std::numeric_limits<double>::infinity());
        for (std::size_t others = 0; others < blocks_for(b.corners); ++others) {
            const FourSides& c = b.blocks[others];  // a corner that is repeated changes nothing
            for (std::size_t lane = 0; lane < abreast; ++lane) {
                const auto towards = [&](std::size_t i) {
                    return s.normal_x[lane] * c.from_x[i] + s.normal_y[lane] * c.from_y[i];
                };
                const double nearest = less(less(towards(0), towards(1)), less(towards(2), towards(3)));
                least[lane] = less(least[lane], nearest - s.beyond[lane]);
            }
        }
        widest = more(widest, more(more(least[0], least[1]), more(least[2], least[3])));
    }
    return widest;
}

std::optional<Contact> contact_within(double reach_mm, ConvexView a, ConvexView b, double tolerance_mm) {
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
