// SPDX-License-Identifier: MIT
// What is not taped by a side: it swings until its middle hangs below the corner, or falls to the ground.
#include <algorithm>
#include <cmath>

#include "tests/settle/cantilevers.h"

namespace boughwork {
namespace {

Polygon triangle_at(Vec2 corner) { return {corner, corner + Vec2{80, -10}, corner + Vec2{30, -60}}; }

Polygon moved(const Polygon& outline, const Motion& motion) {
    Polygon all;
    for (const Vec2 corner : outline) all.push_back(motion.of(corner));
    return all;
}

double lowest(const Polygon& outline) {
    double y = outline.front().y;
    for (const Vec2 corner : outline) y = std::min(y, corner.y);
    return y;
}

}  // namespace

TEST_CASE("A piece that is held by one corner comes to rest with its middle below that corner") {
    for (const double turn_deg : {0.0, 100.0, 179.0, 250.0}) {
        INFO("begins turned by " << turn_deg);
        const Vec2 corner{120, 500};
        Polygon outline = triangle_at(corner);
        for (Vec2& one : outline) one = corner + turned_ccw(one - corner, turn_deg / degrees_per_radian);
        const StandingTree standing{
            .rods = {}, .sheets = {{.outline = outline, .weight_n = 0.002, .grip = Grip::by_a_point, .at_mm = corner}}};
        Settling settling(standing);
        settling.run_to_the_end();
        REQUIRE(settling.state() == Settling::State::at_rest);
        const Polygon now = moved(outline, settling.now().sheets.front());
        CHECK(distance(now.front(), corner) < 0.05);
        const Vec2 down = centroid(now) - now.front();
        CHECK(std::abs(std::atan2(down.x, -down.y)) * degrees_per_radian < 0.5);
    }
}

TEST_CASE("What hangs taped from a swinging piece swings with it, and the two together hang straight") {
    const Vec2 corner{0, 500};
    const Polygon upper = triangle_at(corner);
    const Polygon lower = triangle_at(upper[2]);
    StandingTree standing{.rods = {},
                          .sheets = {{.outline = upper, .weight_n = 0.002, .grip = Grip::by_a_point, .at_mm = corner},
                                     {.outline = lower, .weight_n = 0.006, .grip = Grip::fast, .at_mm = upper[2]}}};
    standing.sheets[1].sheet = 0;
    Settling settling(standing);
    settling.run_to_the_end();
    REQUIRE(settling.state() == Settling::State::at_rest);
    const TreePlaces now = settling.now();
    const Vec2 middle = 0.25 * centroid(moved(upper, now.sheets[0])) + 0.75 * centroid(moved(lower, now.sheets[1]));
    CHECK(std::abs(std::atan2(middle.x, 500 - middle.y)) * degrees_per_radian < 0.5);
    CHECK(now.sheets[0].turn_ccw_rad == now.sheets[1].turn_ccw_rad);
}

TEST_CASE("A loose piece falls to the ground and lies there on a side; a taped one stays to the last digit") {
    StandingTree standing{.rods = {{.path_mm = {{0, 500}, {300, 500}}}},  // does not bend
                          .sheets = {{.outline = triangle_at({50, 400}), .weight_n = 0.002},
                                     {.outline = triangle_at({50, 500}), .weight_n = 0.002, .grip = Grip::fast}}};
    standing.sheets[1].at_mm = {90, 500};
    standing.sheets[1].rod = 0;
    Settling settling(standing);
    settling.run_to_the_end();
    REQUIRE(settling.state() == Settling::State::at_rest);
    const Polygon fallen = moved(standing.sheets[0].outline, settling.now().sheets[0]);
    CHECK(std::abs(lowest(fallen)) < 0.2);
    CHECK(std::count_if(fallen.begin(), fallen.end(), [](Vec2 corner) { return std::abs(corner.y) < 0.3; }) == 2);
    CHECK(settling.now().sheets[1].turn_ccw_rad == 0);
    CHECK(settling.now().sheets[1].shift_mm == Vec2{0, 0});
    CHECK(settling.now().rods_mm.front() == standing.rods.front().path_mm);
}

TEST_CASE("A branch that sags onto the ground is borne by it, and its numbers say so") {
    // Free, its end would sag 90 mm; the load hangs 40 mm below the rod, so that it meets the ground at 60 mm.
    StandingTree standing{.rods = {level_rod(300, 20000, 0, 100)}, .sheets = {small_sheet({300, 61}, 0.2)}};
    standing.sheets.front().rod = 0;
    standing.sheets.front().at_mm = {300, 100};
    const Sag sag = settled_sag(standing);
    CHECK(sag.grounded);
    CHECK(sag.tip_mm > 55);
    CHECK(sag.tip_mm < 65);
}

TEST_CASE("The same tree settles in the same steps, every time") {
    const auto places = [] {
        Settling settling(with_tip_load(level_rod(300, 20000, 1e-4), 0.05));
        std::vector<Vec2> ends;
        while (settling.state() == Settling::State::moving) {
            settling.step();
            ends.push_back(settling.now().rods_mm.front().back());
        }
        return ends;
    };
    CHECK(places() == places());
}

}  // namespace boughwork
