// SPDX-License-Identifier: MIT
// All that the drawer of ready pieces claims, for every ruler it may meet.
#include "rules/ready_pieces.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <set>
#include <utility>

#include "engine/geometry/shape.h"
#include "rules/measure.h"

using namespace boughwork;

namespace {

const std::vector<Step> metric_steps{{1, 1, Unit::mm}, {5, 1, Unit::mm}, {1, 1, Unit::cm}};
const std::vector<Step> inch_steps{{1, 8, Unit::in}, {1, 4, Unit::in}, {1, 2, Unit::in}, {1, 1, Unit::in}};

/// How far a length is from where its reading tips over, in steps: 0 on a tie, 0.5 on a line of the ruler.
double from_a_tie(Length length, const Step& step) {
    const StepSize size = size_of(step);
    const double steps = static_cast<double>(length.half_um) * static_cast<double>(size.denominator) /
                         static_cast<double>(size.numerator);
    return std::abs(steps - std::floor(steps) - 0.5);
}

void check_set(Unit unit, const std::vector<Step>& steps, double least_from_a_tie) {
    const std::vector<ReadyPiece>& pieces = ready_pieces(unit);
    CHECK(pieces.size() == 21);
    for (const ReadyPiece& piece : pieces) {
        INFO(to_mm(piece.triangle.sides[0])
             << ", " << to_mm(piece.triangle.sides[1]) << ", " << to_mm(piece.triangle.sides[2]));
        REQUIRE(possible(piece.triangle));
        for (const double angle_rad : angles_rad(piece.triangle)) {
            const double deg = angle_rad * degrees_per_radian;
            CHECK((deg < 85 || deg > 95 || std::abs(deg - 90) < 0.001));
        }
        for (const Step& step : steps) {
            INFO("step " << step.numerator << "/" << step.denominator);
            for (const Length side : piece.triangle.sides) CHECK(from_a_tie(side, step) >= least_from_a_tie);
            for (const double within_deg : {2.0, 1.0, 0.1}) {
                Challenge challenge;
                challenge.step = step;
                challenge.right_within_deg = within_deg;
                const TriangleKinds kinds = *measure(piece.triangle, challenge).kinds;
                CHECK(kinds.by_sides == piece.by_sides);
                CHECK(kinds.by_angles == piece.by_angles);
                CHECK_FALSE(kinds.close_call);
            }
        }
    }
}

/// A hypotenuse is allowed not to be whole; nothing else is.
void check_whole(Unit unit, std::size_t most_not_whole) {
    const std::int64_t one = length_of(unit).half_um;
    std::size_t not_whole = 0;
    for (const ReadyPiece& piece : ready_pieces(unit))
        for (const Length side : piece.triangle.sides) {
            if (side.half_um % one == 0) continue;
            ++not_whole;
            CHECK(piece.by_angles == Kind::right);
            CHECK(side == *std::max_element(piece.triangle.sides.begin(), piece.triangle.sides.end()));
        }
    CHECK(not_whole <= most_not_whole);
}

}  // namespace

TEST_CASE("Ready pieces in centimetres: kinds hold at 1 mm, 5 mm and 1 cm, a fifth of a step from any tie") {
    check_set(Unit::cm, metric_steps, 0.2);
    check_whole(Unit::cm, 3);  // right isosceles: the root of 2 is no fraction
    CHECK(&ready_pieces(Unit::mm) == &ready_pieces(Unit::cm));
}

TEST_CASE("Ready pieces in inches: kinds hold at 1/8, 1/4, 1/2 and 1 inch, a sixteenth of a step from any tie") {
    // Three right isosceles triangles with whole legs of at most 5 inches cannot all stay farther away.
    check_set(Unit::in, inch_steps, 1.0 / 16);
    check_whole(Unit::in, 4);
}

TEST_CASE("The drawer holds all seven pairs of kinds that exist, each from small to large") {
    for (const Unit unit : {Unit::cm, Unit::in}) {
        std::set<std::pair<Kind, Kind>> pairs;
        const std::vector<ReadyPiece>& pieces = ready_pieces(unit);
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            pairs.insert({pieces[i].by_sides, pieces[i].by_angles});
            CHECK(pieces[i].size == static_cast<Size>(i % 3));
            if (i % 3 == 0) continue;
            CHECK(pieces[i].by_sides == pieces[i - 1].by_sides);
            CHECK(pieces[i].by_angles == pieces[i - 1].by_angles);
            CHECK(area_mm2(pieces[i].triangle) > area_mm2(pieces[i - 1].triangle));
        }
        CHECK(pairs.size() == 7);
    }
}
