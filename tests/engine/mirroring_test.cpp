// SPDX-License-Identifier: MIT
#include "engine/geometry/mirroring.h"

#include <catch2/catch.hpp>

#include "engine/geometry/shape.h"
#include "tests/engine/triangle_mm.h"

using namespace boughwork;

namespace {

Outline outline(const std::vector<Vec2>& corners_mm) {
    Outline shape;
    for (const Vec2 c : corners_mm) shape.corners.push_back({length_from_mm(c.x), length_from_mm(c.y)});
    return shape;
}

}  // namespace

TEST_CASE("A scalene triangle has a mirror image that is another piece; the first side stays the first") {
    const auto image = mirror_image(triangle_mm(80, 60, 50));
    REQUIRE(image);
    CHECK(*image == Shape(triangle_mm(80, 50, 60)));
    CHECK(*mirror_image(*image) == Shape(triangle_mm(80, 60, 50)));
}

TEST_CASE("What looks the same in a mirror has no mirror image of its own") {
    CHECK_FALSE(mirror_image(triangle_mm(80, 60, 60)));
    CHECK_FALSE(mirror_image(triangle_mm(60, 80, 60)));
    CHECK_FALSE(mirror_image(triangle_mm(60, 60, 60)));
    CHECK_FALSE(mirror_image(Cone{length_from_mm(20), length_from_mm(60)}));
    CHECK_FALSE(mirror_image(outline({{0, 0}, {40, 0}, {40, -30}, {0, -30}})));
}

TEST_CASE("A lopsided outline is seen in a mirror, corners clockwise from its first side") {
    // A right trapezium.
    const Outline lopsided = outline({{0, 0}, {60, 0}, {40, -30}, {0, -30}});
    const auto image = mirror_image(lopsided);
    REQUIRE(image);
    CHECK(*image == Shape(outline({{0, 0}, {60, 0}, {60, -30}, {20, -30}})));
    CHECK(possible(*image));
    CHECK(*mirror_image(*image) == Shape(lopsided));
}
