// SPDX-License-Identifier: MIT
#include "gui/session/corner_pulling.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "engine/geometry/shape.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

namespace {

const Step one_cm{1, 1, Unit::cm};
const Step one_mm{1, 1, Unit::mm};
const Step one_inch{1, 1, Unit::in};

/// The drawn corners are as far apart as the sides say.
void check_drawn_true(const PulledTriangle& pulled) {
    for (std::size_t i = 0; i < 3; ++i)
        CHECK(distance(pulled.corners_mm[i], pulled.corners_mm[(i + 1) % 3]) ==
              Approx(to_mm(pulled.triangle.sides[i])).margin(1e-6));
    CHECK(possible(pulled.triangle));
}

bool whole(const Triangle& triangle, const Step& step) {
    for (const Length side : triangle.sides)
        if (side.half_um % multiple_of(step, 1).half_um != 0) return false;
    return true;
}

}  // namespace

TEST_CASE("a pulled corner comes near the hand, and both its sides stop at the step") {
    const PulledTriangle start = laid_out(triangle_mm(80, 60, 50));
    const Vec2 hand = start.corners_mm[2] + Vec2{11, -18};
    const PulledTriangle pulled = corner_pulled(start, 2, hand, one_cm);
    check_drawn_true(pulled);
    CHECK(whole(pulled.triangle, one_cm));
    CHECK(pulled.triangle.sides[0] == length_from_mm(80));
    CHECK(distance(pulled.corners_mm[2], hand) < 10);
    CHECK(pulled.corners_mm[0] == start.corners_mm[0]);
    CHECK(pulled.corners_mm[1] == start.corners_mm[1]);
    // Exactly: the corner lies where the hand is.
    const PulledTriangle exact = corner_pulled(start, 2, hand, {});
    CHECK(near(exact.corners_mm[2], hand, 0.002));
}

TEST_CASE("whatever a hand does, there is a triangle that can be cut") {
    std::mt19937 dice(3);
    std::uniform_real_distribution<double> place(-150, 150);
    std::uniform_int_distribution<std::size_t> corner(0, 2);
    for (const Stop& stop : {Stop{one_cm}, Stop{one_mm}, Stop{one_inch}, Stop{}}) {
        PulledTriangle pulled = first_to_pull(stop);
        check_drawn_true(pulled);
        for (int i = 0; i < 500; ++i) {
            pulled = corner_pulled(pulled, corner(dice), {place(dice), place(dice)}, stop);
            check_drawn_true(pulled);
            if (stop) CHECK(whole(pulled.triangle, *stop));
        }
        // Onto another corner, onto the line of the other two, and off the paper.
        for (const Vec2 hand :
             {pulled.corners_mm[1], 0.5 * (pulled.corners_mm[1] + pulled.corners_mm[2]), Vec2{1e9, 0}})
            check_drawn_true(corner_pulled(pulled, 0, hand, stop));
    }
}

TEST_CASE("a corner pulled across the opposite side makes the mirrored piece that is seen") {
    const PulledTriangle start = laid_out(triangle_mm(80, 60, 50));
    CHECK(as_seen(start) == triangle_mm(80, 60, 50));
    const Vec2 third = start.corners_mm[2];
    const double line_y = start.corners_mm[0].y;
    const PulledTriangle across = corner_pulled(start, 2, {third.x, 2 * line_y - third.y}, one_mm);
    CHECK(as_seen(across) == triangle_mm(80, 50, 60));
}

TEST_CASE("an arrow key moves a corner by a step that way") {
    const PulledTriangle start = laid_out(triangle_mm(80, 60, 60));
    for (const Step& step : {one_cm, one_mm})
        for (const Vec2 arrow : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}})
            for (std::size_t corner = 0; corner < 3; ++corner) {
                INFO("corner " << corner + 1 << ", arrow " << arrow.x << ", " << arrow.y);
                const PulledTriangle moved = corner_stepped(start, corner, arrow, step, step);
                check_drawn_true(moved);
                CHECK(whole(moved.triangle, step));
                const Vec2 by = moved.corners_mm[corner] - start.corners_mm[corner];
                CHECK(dot(unit(by), arrow) > 0.6);  // within 53 degrees of the arrow
                // No side changes by more than a step.
                for (std::size_t i = 0; i < 3; ++i)
                    CHECK(std::abs(to_mm(moved.triangle.sides[i] - start.triangle.sides[i])) < step_mm(step) + 0.001);
            }
    const PulledTriangle exact = corner_stepped(start, 2, {1, 0}, one_cm, {});
    CHECK(near(exact.corners_mm[2], start.corners_mm[2] + Vec2{10, 0}, 0.002));
}

TEST_CASE("other sides keep the place of the first") {
    const PulledTriangle start = corner_pulled(laid_out(triangle_mm(80, 60, 50)), 1, {70, 60}, one_mm);
    const PulledTriangle made = with_sides(start, triangle_mm(60, 60, 60));
    check_drawn_true(made);
    CHECK(near(made.corners_mm[0] + made.corners_mm[1], start.corners_mm[0] + start.corners_mm[1]));
    CHECK(cross(made.corners_mm[1] - made.corners_mm[0], start.corners_mm[1] - start.corners_mm[0]) ==
          Approx(0).margin(1e-6));
}
