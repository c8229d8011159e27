// SPDX-License-Identifier: MIT
#pragma once
// Many convex outlines, made ready for the question that is asked most: how near are these two? The
// sides stand four abreast, so that a processor that counts several numbers at once does so here;
// most outlines are triangles and fit in one such block.

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/geometry/contact.h"
#include "engine/geometry/polygon.h"

namespace boughwork {

/// Four sides of an outline. Where there are fewer, the last one is repeated.
struct alignas(32) FourSides {
    using Lanes = std::array<double, 4>;
    Lanes from_x, from_y;      ///< The first corner.
    Lanes normal_x, normal_y;  ///< The outward unit normal.
    Lanes beyond;              ///< The normal's product with any point of the side.
};

/// One outline of a set: its sides, in blocks of four.
struct ConvexView {
    const FourSides* blocks = nullptr;
    std::size_t corners = 0;

    /// The corner at which side `i` begins, and the side's outward unit normal.
    Vec2 corner(std::size_t i) const { return {blocks[i / 4].from_x[i % 4], blocks[i / 4].from_y[i % 4]}; }
    Vec2 normal(std::size_t i) const { return {blocks[i / 4].normal_x[i % 4], blocks[i / 4].normal_y[i % 4]}; }
};

/// Convex, counter-clockwise outlines with area, named by their place.
class ConvexSet {
public:
    void reserve(std::size_t outlines) {
        first_block_.reserve(outlines);
        corners_.reserve(outlines);
        blocks_.reserve(outlines);
    }
    void add(const Polygon& outline);
    /// The outline at place `i` becomes another one with as many corners.
    void replace(std::size_t i, const Polygon& outline);

    std::size_t size() const { return corners_.size(); }
    ConvexView operator[](std::size_t i) const { return {&blocks_[first_block_[i]], corners_[i]}; }

private:
    std::vector<FourSides> blocks_;
    std::vector<std::uint32_t> first_block_;
    std::vector<std::uint32_t> corners_;
};

/// How far the side of `a` that `b` stays farthest outside of is from it (negative: `b` reaches
/// behind every side). Never more than the distance of the two. Past `enough` any such number will do.
double separation(ConvexView a, ConvexView b, double enough);

/// contact(gap(a, b).distance_mm, tolerance_mm), without the places; nothing when they are surely more
/// than `reach_mm` apart, which is at least the tolerance.
std::optional<Contact> contact_within(double reach_mm, ConvexView a, ConvexView b, double tolerance_mm);

}  // namespace boughwork
