// SPDX-License-Identifier: MIT
#include "engine/geometry/interval.h"

#include <catch2/catch.hpp>
#include <random>

namespace boughwork {
namespace {

const Polygon square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};

Vec2 at(const Segment& segment, double from_mm) { return segment.from + from_mm * direction(segment); }

double distance_to_segment(Vec2 p, const Segment& s) {
    const Vec2 along = s.to - s.from;
    const double share = std::fmin(1, std::fmax(0, dot(p - s.from, along) / dot(along, along)));
    return distance(p, s.from + share * along);
}

TEST_CASE("Two stretches share what lies in both") {
    CHECK(intersection({0, 5}, {3, 8}) == Interval{3, 5});
    CHECK(intersection({0, 10}, {3, 8}) == Interval{3, 8});
    CHECK(intersection({0, 3}, {5, 8}).empty());
    CHECK(intersection({0, 3}, {5, 8}).size() == 0);
    CHECK(intersection({0, 3}, {3, 8}).empty());
}

TEST_CASE("What is left of a stretch without its parts is given in order") {
    CHECK(without({0, 10}, {}) == std::vector<Interval>{{0, 10}});
    CHECK(without({0, 10}, {{4, 6}}) == std::vector<Interval>{{0, 4}, {6, 10}});
    CHECK(without({0, 10}, {{7, 8}, {2, 3}}) == std::vector<Interval>{{0, 2}, {3, 7}, {8, 10}});
    CHECK(without({0, 10}, {{2, 6}, {4, 7}, {3, 5}}) == std::vector<Interval>{{0, 2}, {7, 10}});
}

TEST_CASE("Parts at and past the ends of a stretch leave no empty stretches behind") {
    CHECK(without({0, 10}, {{-5, 3}, {8, 20}}) == std::vector<Interval>{{3, 8}});
    CHECK(without({0, 10}, {{0, 5}, {5, 10}}).empty());
    CHECK(without({0, 10}, {{-1, 11}}).empty());
    CHECK(without({0, 10}, {{11, 12}, {-4, -3}}) == std::vector<Interval>{{0, 10}});
    CHECK(without({0, 10}, {{6, 4}}) == std::vector<Interval>{{0, 10}});
}

TEST_CASE("A line that crosses a square is inside between its two sides") {
    CHECK(inside_convex({{-5, 5}, {15, 5}}, square) == Interval{5, 15});
    CHECK(inside_convex({{2, 5}, {8, 5}}, square) == Interval{0, 6});
    CHECK(inside_convex({{5, 5}, {5, 30}}, square) == Interval{0, 5});
    CHECK(inside_convex({{-5, 11}, {15, 11}}, square).empty());
    CHECK(inside_convex({{11, 5}, {15, 5}}, square).empty());
    CHECK(inside_convex({{8, -5}, {18, 5}}, square).empty());
}

TEST_CASE("A line is near another from where it comes within reach to where it leaves it") {
    const Segment other{{0, 0}, {10, 0}};
    CHECK(within_reach({{-5, 0.5}, {15, 0.5}}, other, 0.5) == Interval{5, 15});
    // Past the ends the reach is round: at height 0.6, a reach of 1 goes 0.8 farther.
    const Interval rounded = within_reach({{-5, 0.6}, {15, 0.6}}, other, 1);
    CHECK(rounded.low == Approx(4.2));
    CHECK(rounded.high == Approx(15.8));
    CHECK(within_reach({{-5, 1.1}, {15, 1.1}}, other, 1).empty());
    CHECK(within_reach({{12, 0}, {15, 0}}, other, 1).empty());
    // Straight up from the middle.
    const Interval upwards = within_reach({{5, 0}, {5, 20}}, other, 3);
    CHECK(upwards.low == Approx(0).margin(1e-12));
    CHECK(upwards.high == Approx(3));
}

TEST_CASE("Stretches inside a triangle and within reach agree with looking at every point") {
    std::mt19937 dice(20);
    std::uniform_real_distribution<double> place(-20, 20);
    const double step_mm = 0.05;
    int met = 0;
    for (int round = 0; round < 500; ++round) {
        const Segment line{{place(dice), place(dice)}, {place(dice), place(dice)}};
        const Segment other{{place(dice), place(dice)}, {place(dice), place(dice)}};
        Polygon triangle{other.from, other.to, {place(dice), place(dice)}};
        if (cross(triangle[1] - triangle[0], triangle[2] - triangle[0]) < 0) std::swap(triangle[0], triangle[1]);
        const double reach_mm = 4;
        const Interval inside = inside_convex(line, triangle);
        const Interval near = within_reach(line, other, reach_mm);
        met += !inside.empty();
        for (double s = 0; s <= length(line); s += step_mm) {
            const Vec2 p = at(line, s);
            double depth = 1e9;  // Least distance inward from the triangle's sides; negative outside.
            for (std::size_t i = 0; i < 3; ++i) {
                const Segment edge = side(triangle, i);
                depth = std::fmin(depth, -dot(outward_normal(edge), p - edge.from));
            }
            if (depth > 1e-6) REQUIRE((inside.low <= s && s <= inside.high));
            if (depth < -1e-6) REQUIRE((inside.empty() || s < inside.low || s > inside.high));
            const double away = distance_to_segment(p, other);
            if (away < reach_mm - 1e-6) REQUIRE((near.low <= s && s <= near.high));
            if (away > reach_mm + 1e-6) REQUIRE((near.empty() || s < near.low || s > near.high));
        }
    }
    CHECK(met > 50);  // Else the comparison has seen next to nothing.
}

}  // namespace
}  // namespace boughwork
