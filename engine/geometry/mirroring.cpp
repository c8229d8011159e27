// SPDX-License-Identifier: MIT
#include "engine/geometry/mirroring.h"

#include <algorithm>
#include <utility>

#include "engine/geometry/shape.h"

namespace boughwork {
namespace {

Outline seen_in_a_mirror(const Outline& outline) {
    // x negated, and the corners backwards from the second, so that they run clockwise from the same side again.
    Outline image;
    const std::size_t n = outline.corners.size();
    const ExactPoint first = outline.corners[1];
    for (std::size_t i = 0; i < n; ++i) {
        const ExactPoint corner = outline.corners[(n + 1 - i) % n];
        image.corners.push_back({first.x - corner.x, corner.y - first.y});
    }
    return image;
}

/// Side and next diagonal at each corner: all that a convex outline is, wherever it lies.
using Lengths = std::vector<std::pair<Int128, Int128>>;

Lengths lengths(const Outline& outline) {
    Lengths all;
    const std::size_t n = outline.corners.size();
    for (std::size_t i = 0; i < n; ++i)
        all.push_back({squared_distance(outline, i, (i + 1) % n), squared_distance(outline, i, (i + 2) % n)});
    return all;
}

bool same_when_turned(const Outline& a, const Outline& b) {
    const Lengths of_a = lengths(a);
    Lengths of_b = lengths(b);
    for (std::size_t i = 0; i < of_b.size(); ++i) {
        if (of_a == of_b) return true;
        std::rotate(of_b.begin(), of_b.begin() + 1, of_b.end());
    }
    return false;
}

struct MirrorImage {
    std::optional<Shape> operator()(const Triangle& triangle) const {
        const auto& [first, second, third] = triangle.sides;
        if (first == second || second == third || third == first) return std::nullopt;
        return Triangle{{first, third, second}};
    }
    std::optional<Shape> operator()(const Outline& outline) const {
        Outline image = seen_in_a_mirror(outline);
        if (same_when_turned(outline, image)) return std::nullopt;
        return image;
    }
    std::optional<Shape> operator()(const Cone&) const { return std::nullopt; }
};

}  // namespace

std::optional<Shape> mirror_image(const Shape& shape) { return std::visit(MirrorImage{}, shape); }

}  // namespace boughwork
