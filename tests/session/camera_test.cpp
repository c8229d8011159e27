// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/session/camera.h"

using namespace boughwork;

namespace {

const PixelBox view = {.x = 100, .y = 50, .width = 800, .height = 600};
const Camera camera = {.centre_mm = {30, 250}, .px_per_mm = 2, .view = view};

bool same_place(Vec2 a, Vec2 b) { return distance(a, b) < 1e-9; }

}  // namespace

TEST_CASE("The middle of the view shows the centre, and up in the plan is up on the screen") {
    CHECK(same_place(to_px(camera, {30, 250}), {500, 350}));
    CHECK(same_place(to_px(camera, {30, 260}), {500, 330}));
    CHECK(same_place(to_px(camera, {40, 250}), {520, 350}));
}

TEST_CASE("A pixel's place in the plan is shown at that pixel") {
    for (const Vec2 px : {Vec2{100, 50}, Vec2{123.5, 611.25}, Vec2{900, 650}})
        CHECK(same_place(to_px(camera, to_mm(camera, px)), px));
}

TEST_CASE("Zooming keeps the place under the pointer where it is") {
    const Vec2 pointer = {731, 122};
    const Camera closer = zoomed(camera, 3, pointer);
    CHECK(closer.px_per_mm == Approx(6));
    CHECK(same_place(to_mm(closer, pointer), to_mm(camera, pointer)));
}

TEST_CASE("Zooming stops at the limits, and still keeps the place") {
    const Vec2 pointer = {200, 600};
    CHECK(zoomed(camera, 1e6, pointer).px_per_mm == most_px_per_mm);
    CHECK(zoomed(camera, 1e-6, pointer).px_per_mm == least_px_per_mm);
    CHECK(same_place(to_mm(zoomed(camera, 1e6, pointer), pointer), to_mm(camera, pointer)));
}

TEST_CASE("Panning moves the picture with the finger") {
    const Camera moved = panned(camera, {40, -30});
    CHECK(same_place(to_px(moved, {30, 250}), {540, 320}));
}

TEST_CASE("Showing a box shows all of it, as large as the margins allow") {
    const Box box = {{-300, 0}, {400, 500}};
    const Camera all = showing(box, view, 20);
    const Vec2 low = to_px(all, box.low);
    const Vec2 high = to_px(all, box.high);
    CHECK(low.x >= 120 - 1e-9);
    CHECK(high.x <= 880 + 1e-9);
    CHECK(high.y >= 70 - 1e-9);
    CHECK(low.y <= 630 + 1e-9);
    // 760 px for 700 mm is the tighter of the two.
    CHECK(all.px_per_mm == Approx(760.0 / 700.0));
}
