// SPDX-License-Identifier: MIT
// Chance itself: the published outputs of the generators, and that errors are normal and rounded.
#include "rules/hand_errors.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "tests/hands/chances.h"

namespace boughwork::testing {

TEST_CASE("The generator gives its author's numbers") {
    // pcg32-demo of O'Neill's C implementation, round 1: state 42, stream 54.
    Pcg32 random(42, 54);
    for (const std::uint32_t published : {0xa15c02b7U, 0x7b47f409U, 0xba1d3330U, 0x83d2f293U, 0xbfa4784bU, 0xcbed606eU})
        CHECK(random.next() == published);
    // SplitMix64 from state 1234567 (Rosetta Code, "Pseudo-random numbers/Splitmix64"); its state goes on by a
    // constant.
    std::uint64_t state = 1234567;
    for (const std::uint64_t published : {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                          4593380528125082431U, 16408922859458223821U}) {
        CHECK(spread(state) == published);
        state += 0x9E3779B97F4A7C15U;
    }
}

TEST_CASE("Errors have the mean, the spread and the tails of the normal distribution") {
    // Of n draws: the mean within 3 / sqrt n, the variance within 3 sqrt(2 / n), the fourth moment, 3, within
    // 3 sqrt(96 / n), each in standard deviations; and one of 20 builds past 1.959964 either way.
    constexpr int n = 100'000;
    for (const int seed : {1, 2, 777}) {
        double sum = 0;
        double squares = 0;
        double fourths = 0;
        int far = 0;
        for (int build = 0; build < n / 10; ++build) {
            HandErrors errors(seed, build, build % 7);
            for (int i = 0; i < 10; ++i) {
                const double z = errors.mm(2) / 2;
                sum += z;
                squares += z * z;
                fourths += z * z * z * z;
                far += std::abs(z) > 1.959964;
            }
        }
        CHECK(std::abs(sum / n) < 3 / std::sqrt(n));
        CHECK(std::abs(squares / n - 1) < 3 * std::sqrt(2.0 / n));
        CHECK(std::abs(fourths / n - 3) < 3 * std::sqrt(96.0 / n));
        check_within_three_errors({far, n}, 0.05);
    }
}

TEST_CASE("The first errors of builds, of pieces and of seeds that follow each other have nothing in common") {
    // The correlation of n independent pairs stays within 3 / sqrt n.
    constexpr int n = 20'000;
    double builds = 0;
    double pieces = 0;
    double seeds = 0;
    for (int i = 0; i < n; ++i) {
        const double here = HandErrors(1, i, 1).mm(1);
        builds += here * HandErrors(1, i + 1, 1).mm(1);
        pieces += here * HandErrors(1, i, 2).mm(1);
        seeds += here * HandErrors(2, i, 1).mm(1);
    }
    for (const double sum : {builds, pieces, seeds}) CHECK(std::abs(sum / n) < 3 / std::sqrt(n));
}

TEST_CASE("Errors are whole half-micrometres and millionths of a degree; steady hands do not err") {
    HandErrors errors(3, 4, 5);
    for (int i = 0; i < 100; ++i) {
        const double half_um = errors.mm(1) * 2000;
        CHECK(half_um == Approx(std::round(half_um)).margin(1e-9));
        const double millionths = errors.deg(0.5) * 1e6;
        CHECK(millionths == Approx(std::round(millionths)).margin(1e-6));
        CHECK(errors.mm(0) == 0);
        CHECK(errors.deg(0) == 0);
    }
}

}  // namespace boughwork::testing
