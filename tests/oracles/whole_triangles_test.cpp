// SPDX-License-Identifier: MIT
// Every triangle of whole sides up to perimeter 60, as a person types it in each unit, against whole-number
// arithmetic. How many there are of each kind is counted in tests/rules/counting_triangles_test.cpp.
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "engine/geometry/shape.h"
#include "engine/typed_length.h"
#include "rules/description.h"
#include "rules/measure.h"
#include "tests/oracles/exact_measures.h"

namespace boughwork::oracles {
namespace {

using Sides = std::array<int, 3>;

/// a <= b <= c, possible or not.
std::vector<Sides> whole_sides(int perimeter) {
    std::vector<Sides> found;
    for (int a = 1; 3 * a <= perimeter; ++a)
        for (int b = a; a + 2 * b <= perimeter; ++b) found.push_back({a, b, perimeter - a - b});
    return found;
}

ExactTriangle exact(const Sides& sides) { return {{Rational(sides[0]), Rational(sides[1]), Rational(sides[2])}}; }

Triangle typed(const Sides& sides, Unit unit) {
    Triangle triangle;
    for (std::size_t i = 0; i < 3; ++i) triangle.sides[i] = *parse_length(std::to_string(sides[i]), unit);
    return triangle;
}

Challenge measured_by(Step step) {
    Challenge challenge;
    challenge.step = std::move(step);
    challenge.right_within_deg = 0.001;  // Whole sides up to 60 miss 90 degrees by 0.07 or more.
    return challenge;
}

Kind by_sides(const Sides& sides) {
    const auto [a, b, c] = sides;
    return a == c ? Kind::equilateral : a == b || b == c ? Kind::isosceles : Kind::scalene;
}

/// Euclid, Elements I.47 and II.12, 13: by the squares on the sides.
Kind by_angles(const Sides& sides) {
    const auto [a, b, c] = sides;
    const int more = a * a + b * b - c * c;
    return more == 0 ? Kind::right : more > 0 ? Kind::acute : Kind::obtuse;
}

/// Off 90 degrees by 2 or less, but more than 0.1: by the sine of that, which is the cosine of the angle.
bool is_close_call(const Sides& sides) {
    const FiftyDigits off = abs(asin(FiftyDigits(exact(sides).least_cosine()))) * 180 / acos(FiftyDigits(-1));
    return off <= 2 && off > FiftyDigits(0.1);
}

TEST_CASE("Every triangle of whole sides that is typed in a unit is measured and named as whole numbers say") {
    int triangles = 0;
    int flat = 0;
    int close_calls = 0;
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::in}) {
        const Challenge challenge = measured_by({1, 1, unit});
        for (int perimeter = 3; perimeter <= 60; ++perimeter) {
            for (const Sides& sides : whole_sides(perimeter)) {
                CAPTURE(sides[0], sides[1], sides[2], symbol_of(unit));
                const Triangle triangle = typed(sides, unit);
                const bool is_triangle = sides[0] + sides[1] > sides[2];
                REQUIRE(static_cast<bool>(possible(triangle)) == is_triangle);
                if (!is_triangle) {
                    ++flat;
                    continue;
                }
                ++triangles;
                const Measures m = measure(triangle, challenge);
                REQUIRE(m.sides_in_steps == std::vector<std::int64_t>(sides.begin(), sides.end()));
                REQUIRE(m.perimeter_in_steps == perimeter);
                REQUIRE(m.height_in_steps == nearest_to_root_of(exact(sides).squared_height()));
                REQUIRE(m.area_in_half_square_steps == sides[2] * m.height_in_steps);
                REQUIRE(m.kinds);
                REQUIRE(m.kinds->by_sides == by_sides(sides));
                REQUIRE(m.kinds->by_angles == by_angles(sides));
                REQUIRE(m.kinds->close_call == is_close_call(sides));
                close_calls += m.kinds->close_call;
                REQUIRE(describe(triangle, m, challenge).notes.empty());
            }
        }
    }
    CHECK(triangles == 3 * 1650);  // The sum of OEIS A005044 up to 60.
    CHECK(flat > 3 * 1650);
    CHECK(close_calls > 50);
}

TEST_CASE("Triangles of whole sides and whole area are as many as OEIS A051516 says, and have exactly that area") {
    // On-Line Encyclopedia of Integer Sequences (OEIS Foundation), A051516; n is the perimeter, from 1.
    const int a051516[] = {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1,
                           0, 2, 0, 0, 0, 4, 0, 0, 0, 1, 0, 2, 0, 1, 0, 0, 0, 3, 0, 2, 0, 0, 0, 4, 0, 1, 0, 0, 0, 3};
    static_assert(std::size(a051516) == 60);
    for (int n = 1; n <= 60; ++n) {
        int whole_areas = 0;
        for (const Sides& sides : whole_sides(n)) {
            const Triangle triangle = typed(sides, Unit::mm);
            if (!possible(triangle)) continue;
            CAPTURE(sides[0], sides[1], sides[2]);
            const double area = area_mm2(triangle);
            if (area != std::floor(area)) continue;
            ++whole_areas;
            REQUIRE(Rational(area) * Rational(area) == exact(sides).squared_area());
        }
        CAPTURE(n);
        CHECK(whole_areas == a051516[n - 1]);
    }
}

}  // namespace
}  // namespace boughwork::oracles
