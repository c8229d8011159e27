// SPDX-License-Identifier: MIT
#include "engine/geometry/shape.h"

#include <catch2/catch.hpp>
#include <initializer_list>

#include "engine/length.h"
#include "tests/engine/triangle_mm.h"

namespace boughwork {
namespace {

Outline outline(std::initializer_list<Vec2> corners_mm) {
    Outline made;
    for (const Vec2 c : corners_mm) made.corners.push_back({length_from_mm(c.x), length_from_mm(c.y)});
    return made;
}

Cone cone(double radius, double slant) { return {length_from_mm(radius), length_from_mm(slant)}; }

bool is_possible(const Shape& shape) { return static_cast<bool>(possible(shape)); }

TEST_CASE("A triangle needs any two sides longer together than the third") {
    // Euclid, Elements I.20 (Heath): so a flat triangle is none.
    CHECK(is_possible(triangle_mm(3, 4, 5)));
    CHECK_FALSE(is_possible(triangle_mm(10, 20, 30)));
    CHECK_FALSE(is_possible(triangle_mm(10, 20, 31)));
    CHECK_FALSE(is_possible(triangle_mm(31, 10, 20)));
    CHECK_FALSE(is_possible(triangle_mm(20, 31, 10)));
    CHECK_FALSE(is_possible(triangle_mm(0, 20, 20)));
    CHECK_FALSE(is_possible(triangle_mm(-30, 50, 20)));
}

TEST_CASE("A triangle is decided to the last half-micrometre") {
    const auto halves = [](std::int64_t a, std::int64_t b, std::int64_t c) { return Triangle{{{{a}, {b}, {c}}}}; };
    CHECK(is_possible(halves(2'000'000'000, 1'999'999'999, 2)));
    CHECK_FALSE(is_possible(halves(2'000'000'000, 1'999'999'999, 1)));
    // 0.1 + 0.2 = 0.3 is flat, though it is not in binary fractions.
    CHECK_FALSE(is_possible(triangle_mm(0.1, 0.2, 0.3)));
    CHECK(is_possible(triangle_mm(0.1, 0.2, 0.2995)));
}

// W. Kahan, "Miscalculating Area and Angles of a Needle-like Triangle" (1999); the areas in exact decimals
// recomputed apart from this program. His numbers are scaled to whole half-micrometres.
TEST_CASE("Kahan's rows that are no triangles are refused") {
    const auto row = [](std::int64_t a, std::int64_t b, std::int64_t c) {
        return is_possible(Triangle{{{{a}, {b}, {c}}}});
    };
    CHECK_FALSE(row(-3, 5, 2));
    CHECK_FALSE(row(9'999'999'999, 9'999'999'999, 20'000'000'000));  // 99999.99999 99999.99999 200000
    CHECK_FALSE(row(527'864'055, 9'472'135'941, 9'999'999'996));     // 5278.64055 94721.35941 99999.99996
    CHECK(row(10'000'000'000, 9'999'999'979, 29));                   // 100000 99999.99979 0.00029
    CHECK(row(10'000'000'000, 5'000'000'001, 15'000'000'000));       // 10000 5000.000001 15000
}

TEST_CASE("Kahan's needles have their area to twelve digits") {
    struct Row {
        std::int64_t a, b, c;
        double scale;  // Half-micrometres in one of Kahan's units.
        double area;
    };
    const Row rows[] = {
        {1'000'000, 1'000'000, 1'000'000, 1e5, 43.3012701892219},
        {10'000'000'000, 9'999'999'979, 29, 1e5, 9.99999998950},
        {10'000'000'000, 10'000'000'000, 100'005, 1e5, 50002.4999993749},
        {9'999'999'996, 9'999'999'994, 3, 1e5, 1.11803398819},
        {10'000'000'000, 5'000'000'001, 15'000'000'000, 1e6, 612.372435721310},
    };
    for (const Row& row : rows) {
        CAPTURE(row.a, row.b, row.c);
        const double mm2 = row.area * row.scale * row.scale / (half_um_per_mm * half_um_per_mm);
        CHECK(area_mm2(Triangle{{{{row.a}, {row.b}, {row.c}}}}) == Approx(mm2).epsilon(1e-11));
        CHECK(area_mm2(Triangle{{{{row.c}, {row.a}, {row.b}}}}) == Approx(mm2).epsilon(1e-11));
        CHECK(area_mm2(Triangle{{{{row.b}, {row.c}, {row.a}}}}) == Approx(mm2).epsilon(1e-11));
    }
}

TEST_CASE("The angles of a needle make two right angles, and its corners lie where its sides say") {
    // Euclid, Elements I.32. The needle is Kahan's second row, at the size of a sheet of paper.
    const Triangle needle{{{{1'000'000}, {999'979}, {29}}}};
    const std::vector<double> angles = angles_rad(needle);
    CHECK(angles[0] + angles[1] + angles[2] == Approx(pi).epsilon(1e-14));
    // The law of sines, with the sides opposite to corners 1, 2 and 3.
    CHECK(std::sin(angles[1]) / 29 == Approx(std::sin(angles[0]) / 999'979).epsilon(1e-9));
    CHECK(std::sin(angles[1]) / 29 == Approx(std::sin(angles[2]) / 1'000'000).epsilon(1e-9));
}

TEST_CASE("Triangles of whole sides and whole area have exactly that area") {
    // Heronian triangles; the counts by perimeter are OEIS A051516. 13-14-15 is Heron's own example.
    struct Row {
        int a, b, c, area;
    };
    const Row rows[] = {{3, 4, 5, 6},    {5, 5, 6, 12},    {5, 5, 8, 12},    {6, 8, 10, 24},
                        {5, 12, 13, 30}, {4, 13, 15, 24},  {10, 10, 12, 48}, {9, 10, 17, 36},
                        {9, 12, 15, 54}, {10, 10, 16, 48}, {10, 13, 13, 60}, {8, 15, 17, 60},
                        {7, 15, 20, 42}, {13, 14, 15, 84}, {11, 13, 20, 66}, {10, 17, 21, 84}};
    for (const Row& row : rows) {
        CAPTURE(row.a, row.b, row.c);
        CHECK(area_mm2(triangle_mm(row.a, row.b, row.c)) == Approx(row.area).epsilon(1e-13));
        CHECK(area_mm2(triangle_mm(row.c, row.a, row.b)) == Approx(row.area).epsilon(1e-13));
        // (4 A)^2 in half-micrometres^4: a whole number, so without any rounding.
        const auto four = static_cast<Uint128>(row.area) * 4 * 2000 * 2000;
        CHECK((four_areas_squared(triangle_mm(row.a, row.b, row.c)) == four * four));
    }
}

TEST_CASE("The corner opposite to the hypotenuse is exactly right in Pythagorean triples, and in no other") {
    // R. Clark, Rock Valley College, "One- and Two-digit Pythagorean Triples".
    const std::array<int, 3> triples[] = {{3, 4, 5},    {5, 12, 13},  {8, 15, 17}, {7, 24, 25},
                                          {20, 21, 29}, {12, 35, 37}, {9, 40, 41}};
    for (const auto& [a, b, c] : triples) {
        CAPTURE(a, b, c);
        // Side 1 is the hypotenuse: the right angle is at corner 3 (from 0: 2).
        CHECK(short_of_right_rad(triangle_mm(c, a, b), 2) == 0);
        CHECK(short_of_right_rad(triangle_mm(a, b, c), 1) == 0);
        CHECK(short_of_right_rad(triangle_mm(a, b, c + 0.0005), 1) < 0);
        CHECK(short_of_right_rad(triangle_mm(a, b, c - 0.0005), 1) > 0);
        CHECK(short_of_right_rad(triangle_mm(a, b, c), 0) > 0);
        CHECK(angles_rad(triangle_mm(a, b, c))[1] == Approx(pi / 2).epsilon(1e-15));
    }
}

TEST_CASE("An outline must be convex, clockwise and without a straight corner") {
    CHECK(is_possible(outline({{0, 0}, {40, 0}, {40, -30}, {0, -30}})));
    CHECK(is_possible(outline({{0, 0}, {40, 0}, {20, -30}})));
    CHECK_FALSE(is_possible(outline({{0, 0}, {0, -30}, {40, -30}, {40, 0}})));             // Counter-clockwise.
    CHECK_FALSE(is_possible(outline({{0, 0}, {40, 0}, {40, -30}, {20, -10}, {0, -30}})));  // A notch.
    CHECK_FALSE(is_possible(outline({{0, 0}, {20, 0}, {40, 0}, {40, -30}, {0, -30}})));    // Straight.
    CHECK_FALSE(is_possible(outline({{0, 0}, {40, 0}, {40, 0}, {40, -30}, {0, -30}})));    // A corner twice.
    CHECK_FALSE(is_possible(outline({{0, 0}, {40, 0}})));
    CHECK_FALSE(is_possible(outline({{0, 0}, {40, 0}, {80, 0}})));
    CHECK_FALSE(is_possible(outline({})));
}

TEST_CASE("A refused outline names the corner that is wrong") {
    const auto found = [](std::initializer_list<Vec2> corners) { return possible(outline(corners)).problem().found; };
    CHECK(found({{0, 0}, {20, 0}, {40, 0}, {40, -30}, {0, -30}}).find("orner 2") != std::string::npos);
    CHECK(found({{0, 0}, {40, 0}, {40, -30}, {20, -10}, {0, -30}}).find("orner 4") != std::string::npos);
}

TEST_CASE("A nearly straight corner is decided to the last half-micrometre") {
    CHECK(is_possible(outline({{0, 0}, {20, 0.0005}, {40, 0}, {40, -30}, {0, -30}})));
    CHECK_FALSE(is_possible(outline({{0, 0}, {20, -0.0005}, {40, 0}, {40, -30}, {0, -30}})));
}

TEST_CASE("A star that turns the same way at every corner is not convex") {
    // Every corner of a pentagram is a right turn, but it goes round twice.
    CHECK_FALSE(is_possible(outline({{0, 0}, {95, 0}, {18, -56}, {47.5, 35}, {77, -56}})));
}

TEST_CASE("A cone's slant must be longer than its radius") {
    CHECK(is_possible(cone(20, 60)));
    CHECK(is_possible(cone(20, 20.0005)));
    CHECK_FALSE(is_possible(cone(20, 20)));
    CHECK_FALSE(is_possible(cone(20, 10)));
    CHECK_FALSE(is_possible(cone(0, 10)));
    CHECK_FALSE(is_possible(cone(-5, 10)));
}

TEST_CASE("A refusal says why") {
    const Result<Done> refused = possible(triangle_mm(10, 20, 30));
    REQUIRE_FALSE(refused);
    CHECK_FALSE(refused.problem().found.empty());
    CHECK_FALSE(refused.problem().to_do.empty());
}

TEST_CASE("An unturned piece hangs from its first side: corner 3 lies below") {
    const std::vector<Vec2> corners = corners_mm(triangle_mm(80, 60, 50));
    REQUIRE(corners.size() == 3);
    CHECK(corners[0] == Vec2{0, 0});
    CHECK(corners[1] == Vec2{80, 0});
    CHECK(corners[2].y < 0);
    CHECK(distance(corners[1], corners[2]) == Approx(60));
    CHECK(distance(corners[2], corners[0]) == Approx(50));
}

TEST_CASE("A cone is seen from the side as a triangle 2 r, s, s") {
    const std::vector<Vec2> corners = corners_mm(cone(20, 60));
    REQUIRE(corners.size() == 3);
    CHECK(distance(corners[0], corners[1]) == Approx(40));
    CHECK(distance(corners[1], corners[2]) == Approx(60));
    CHECK(distance(corners[2], corners[0]) == Approx(60));
    CHECK(corners[2].x == Approx(20));
    CHECK(corners[2].y < 0);
    CHECK(hanging_sides(cone(20, 60)) == 1);
    CHECK(hanging_sides(triangle_mm(3, 4, 5)) == 3);
    CHECK(hanging_sides(outline({{0, 0}, {40, 0}, {40, -30}, {0, -30}})) == 4);
}

TEST_CASE("A pose turns counter-clockwise about corner 1, and mirrors first when flipped") {
    const Outline flag = outline({{0, 0}, {40, 0}, {0, -30}});
    const std::vector<Vec2> turned = corners_mm(flag, {.at_mm = {100, 200}, .turn_ccw_deg = 90});
    CHECK(distance(turned[0], {100, 200}) < 1e-12);
    CHECK(distance(turned[1], {100, 240}) < 1e-12);
    CHECK(distance(turned[2], {130, 200}) < 1e-12);
    const std::vector<Vec2> flipped = corners_mm(flag, {.at_mm = {100, 200}, .turn_ccw_deg = 90, .flipped = true});
    CHECK(distance(flipped[0], {100, 200}) < 1e-12);
    CHECK(distance(flipped[1], {100, 160}) < 1e-12);
    CHECK(distance(flipped[2], {130, 200}) < 1e-12);
}

TEST_CASE("A posed outline runs counter-clockwise and remembers the numbers of its sides") {
    const Triangle shape = triangle_mm(80, 60, 50);
    for (const bool flipped : {false, true}) {
        const PosedShape there = posed(shape, {.at_mm = {10, 20}, .turn_ccw_deg = 33, .flipped = flipped});
        REQUIRE(there.outline.size() == 3);
        CHECK(signed_area(there.outline) > 0);
        int seen = 0;
        for (std::size_t i = 0; i < 3; ++i) {
            const int number = there.side_number(i);
            seen += number;
            REQUIRE((number >= 1 && number <= 3));
            CHECK(length(side(there.outline, i)) == Approx(to_mm(shape.sides[static_cast<std::size_t>(number - 1)])));
        }
        CHECK(seen == 1 + 2 + 3);
    }
}

TEST_CASE("Distances between corners are exact") {
    CHECK((squared_distance(triangle_mm(3, 4, 5), 0, 1) == Int128{6'000} * 6'000));
    CHECK((squared_distance(triangle_mm(3, 4, 5), 2, 0) == Int128{10'000} * 10'000));
    const Outline wide = outline({{0, 0}, {1e6, 0}, {1e6, -1e6}, {0, -1e6}});
    CHECK((squared_distance(wide, 0, 2) == Int128{8} * 1'000'000'000 * 1'000'000'000));
    CHECK(corner_count(wide) == 4);
}

TEST_CASE("Regular polygons have the area that tables give") {
    // Side 1: Engineering ToolBox, "Regular Polygons". Here side 100 mm, corners to half a micrometre.
    const std::pair<int, double> table[] = {{3, 0.433012702}, {4, 1},           {5, 1.720477401},
                                            {6, 2.598076211}, {8, 4.828427125}, {12, 11.196152423}};
    for (const auto& [n, area] : table) {
        Outline regular;
        Vec2 corner;
        for (int i = 0; i < n; ++i) {
            regular.corners.push_back({length_from_mm(corner.x), length_from_mm(corner.y)});
            corner = corner + turned_ccw({100, 0}, -2 * pi * i / n);
        }
        CAPTURE(n);
        REQUIRE(is_possible(regular));
        CHECK(area_mm2(regular) == Approx(area * 100 * 100).epsilon(1e-5));
    }
}

TEST_CASE("The shoelace is positive counter-clockwise") {
    // Art of Problem Solving wiki, "Shoelace Theorem"; points of the second: Rosetta Code.
    CHECK(signed_area({{2, 1}, {2, 3}, {1, 2}, {0, 0}}) == Approx(2.5));
    CHECK(signed_area({{3, 4}, {5, 11}, {12, 8}, {9, 5}, {5, 6}}) == Approx(-30));
}

TEST_CASE("The middle of a shape is where it would balance") {
    CHECK(distance(centroid({{0, 0}, {9, 0}, {0, 6}}), {3, 2}) < 1e-12);
    CHECK(distance(centroid({{100, 0}, {104, 0}, {104, 2}, {100, 2}}), {102, 1}) < 1e-12);
    // Half of a regular trapezium's worth: a 2 x 1 rectangle and a right triangle of legs 3 and 1 beside it.
    const double area = 2 + 1.5;
    const double x = (2 * 1 + 1.5 * 3) / area;
    const double y = (2 * 0.5 + 1.5 / 3) / area;
    CHECK(distance(centroid({{0, 0}, {5, 0}, {2, 1}, {0, 1}}), {x, y}) < 1e-12);
}

TEST_CASE("The least height is the one on the longest side") {
    CHECK(least_height_mm(triangle_mm(30, 40, 50)) == Approx(24));
    CHECK(least_height_mm(triangle_mm(50, 30, 40)) == Approx(24));
    CHECK(least_height_mm(outline({{0, 0}, {40, 0}, {40, -30}, {0, -30}})) == Approx(30));
    // A flat kite: its narrowest is between a side and the corner farthest from it.
    const Outline strip = outline({{0, 0}, {90, 0}, {100, -10}, {0, -10}});
    CHECK(least_height_mm(strip) == Approx(10));
}

}  // namespace
}  // namespace boughwork
