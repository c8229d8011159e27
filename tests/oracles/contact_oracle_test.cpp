// SPDX-License-Identifier: MIT
// How two outlines stand to each other, against exact numbers: CGAL for every pair, Boost.Geometry and CGAL's
// Minkowski sum for every eighth. Distance or depth, contact, kind of touch, the places shown and the way out. For a
// long campaign BOUGHWORK_PAIRS=10 takes ten times as many pairs, and tells what was met.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

#include "tests/oracles/judge.h"

namespace boughwork::oracles {
namespace {

constexpr int families = static_cast<int>(Family::far_from_the_origin) + 1;
constexpr int pairs_of_a_family = 17'000;
static_assert(families * pairs_of_a_family >= 200'000);

int times_as_many() {
    const char* wish = std::getenv("BOUGHWORK_PAIRS");
    return wish ? std::max(1, std::atoi(wish)) : 1;
}

/// How many of a hundred pairs of a family must be met at least, and may be within a hair of a limit at most.
struct Expected {
    double apart = 0;
    double touching = 0;
    double overlapping = 0;
    double along_a_side = 0;
    double corner_to_corner = 0;
    double corner_to_side = 0;
    double within_a_hair = 1;
};

/// Judges as many pairs of a family, the same ones every time.
void judge(Family family, const Expected& per_cent) {
    const int pairs = pairs_of_a_family * times_as_many();
    Dice dice(1959 + static_cast<unsigned>(family));
    Judge judge;
    for (int i = 0; i < pairs; ++i) {
        const std::string complaint = judge.complaint(make_pair(family, dice));
        if (!complaint.empty()) FAIL(complaint);
    }

    const Met& met = judge.met();
    INFO(in_words(met));
    if (times_as_many() > 1) WARN(in_words(met));
    const auto are = [pairs](int some, double hundredths) { return some * 100.0 >= hundredths * pairs; };
    CHECK(met.pairs == pairs);
    CHECK(met.by_all_oracles * 8 == pairs);
    CHECK(met.apart + met.touching + met.overlapping == pairs);
    CHECK(met.along_a_side + met.corner_to_corner + met.corner_to_side + met.two_kinds == met.touching);
    CHECK(are(met.apart, per_cent.apart));
    CHECK(are(met.touching, per_cent.touching));
    CHECK(are(met.overlapping, per_cent.overlapping));
    CHECK(are(met.along_a_side, per_cent.along_a_side));
    CHECK(are(met.corner_to_corner, per_cent.corner_to_corner));
    CHECK(are(met.corner_to_side, per_cent.corner_to_side));
    CHECK_FALSE(are(met.two_contacts + met.two_kinds, per_cent.within_a_hair));
}

TEST_CASE("Outlines anywhere stand to each other as exact numbers say") {
    judge(Family::random, {.apart = 50, .overlapping = 15, .within_a_hair = 0.1});
}

TEST_CASE("Outlines flush along whole sides stand to each other as exact numbers say") {
    judge(Family::flush_along_whole_sides,
          {.apart = 10, .touching = 60, .overlapping = 10, .along_a_side = 60, .within_a_hair = 5});
}

TEST_CASE("Outlines flush along part of a side stand to each other as exact numbers say") {
    judge(Family::flush_along_part_of_a_side, {.apart = 10,
                                               .touching = 60,
                                               .overlapping = 10,
                                               .along_a_side = 40,
                                               .corner_to_corner = 10,
                                               .corner_to_side = 2,
                                               .within_a_hair = 5});
}

TEST_CASE("Outlines corner to corner stand to each other as exact numbers say") {
    judge(Family::corner_to_corner,
          {.apart = 10, .touching = 60, .overlapping = 4, .corner_to_corner = 50, .corner_to_side = 4});
}

TEST_CASE("Outlines corner to side stand to each other as exact numbers say") {
    judge(Family::corner_to_side, {.apart = 10,
                                   .touching = 60,
                                   .overlapping = 10,
                                   .along_a_side = 10,
                                   .corner_to_corner = 10,
                                   .corner_to_side = 40,
                                   .within_a_hair = 5});
}

TEST_CASE("An outline inside another one overlaps it as deep as exact numbers say") {
    judge(Family::contained, {.touching = 1, .overlapping = 90, .within_a_hair = 0.1});
}

TEST_CASE("Equal outlines overlap as deep as exact numbers say") {
    judge(Family::equal, {.touching = 15, .overlapping = 70});
}

TEST_CASE("Needles stand to each other and to others as exact numbers say") {
    judge(Family::needles, {.apart = 10,
                            .touching = 50,
                            .overlapping = 20,
                            .along_a_side = 30,
                            .corner_to_corner = 10,
                            .corner_to_side = 8,
                            .within_a_hair = 2});
}

TEST_CASE("Outlines with nearly parallel sides stand to each other as exact numbers say") {
    judge(Family::nearly_parallel, {.apart = 10,
                                    .touching = 60,
                                    .overlapping = 10,
                                    .along_a_side = 40,
                                    .corner_to_corner = 10,
                                    .corner_to_side = 15,
                                    .within_a_hair = 5});
}

TEST_CASE("Outlines about as far apart or as deep as the tolerance stand to each other as exact numbers say") {
    judge(Family::at_the_tolerance, {.apart = 20,
                                     .touching = 50,
                                     .overlapping = 10,
                                     .along_a_side = 10,
                                     .corner_to_corner = 20,
                                     .corner_to_side = 15,
                                     .within_a_hair = 15});
}

TEST_CASE("Outlines with whole-number corners stand to each other as exact numbers say") {
    judge(Family::whole_numbers, {.apart = 50,
                                  .touching = 12,
                                  .overlapping = 15,
                                  .along_a_side = 1,
                                  .corner_to_corner = 8,
                                  .corner_to_side = 3,
                                  .within_a_hair = 0.5});
}

TEST_CASE("Outlines far from the origin stand to each other as exact numbers say") {
    judge(Family::far_from_the_origin, {.apart = 15,
                                        .touching = 35,
                                        .overlapping = 20,
                                        .along_a_side = 15,
                                        .corner_to_corner = 10,
                                        .corner_to_side = 5,
                                        .within_a_hair = 4});
}

}  // namespace
}  // namespace boughwork::oracles
