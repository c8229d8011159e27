// SPDX-License-Identifier: MIT
// Triangles with whole-number sides, counted against the On-Line Encyclopedia of Integer Sequences
// (OEIS Foundation), up to congruence and strictly non-degenerate; n is the perimeter.
#include <array>
#include <map>

#include "rules/measure.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

Triangle whole(int a, int b, int c) { return std::get<Triangle>(triangle(1, a, b, c).shape); }

struct Counts {
    int all = 0;
    std::map<Kind, int> of;
};

/// One piece of each possible triangle of that perimeter, in mm, named by the referee.
Counts count(int perimeter) {
    SceneBuilder table;
    table.challenge().right_within_deg = 0.001;  // Whole sides up to 60 miss 90 degrees by 0.07 or more.
    int number = 0;
    for (int a = 1; a <= perimeter; ++a)
        for (int b = a; a + b < perimeter; ++b) {
            const int c = perimeter - a - b;
            if (c >= b && possible(whole(a, b, c))) table.keep(triangle(++number, a, b, c));
        }
    Counts counts;
    for (const PieceReport& report : table.check().pieces) {
        REQUIRE(report.measures.kinds);
        ++counts.all;
        ++counts.of[report.measures.kinds->by_sides];
        ++counts.of[report.measures.kinds->by_angles];
    }
    return counts;
}

TEST_CASE("There are as many triangles of each whole perimeter as OEIS A005044 says") {
    const int a005044[] = {0,  0,  0,  1,  0,  1,  1,  2,  1,  3,  2,  4,  3,  5,  4,  7,  5,  8,  7,  10, 8,
                           12, 10, 14, 12, 16, 14, 19, 16, 21, 19, 24, 21, 27, 24, 30, 27, 33, 30, 37, 33, 40};
    for (int n = 0; n < static_cast<int>(std::size(a005044)); ++n) {
        CAPTURE(n);
        const Counts counts = count(n);
        CHECK(counts.all == a005044[n]);
        // Scalene ones: A005044(n - 6).
        const auto of = [&](Kind kind) { return counts.of.count(kind) ? counts.of.at(kind) : 0; };
        CHECK(of(Kind::scalene) == (n < 6 ? 0 : a005044[n - 6]));
        CHECK(of(Kind::acute) + of(Kind::right) + of(Kind::obtuse) == counts.all);
    }
}

TEST_CASE("Isosceles triangles, the equilateral included, are as many as OEIS A059169 says") {
    const int a059169[] = {0, 0, 1, 0, 1, 1, 2, 1, 2, 2, 3, 2, 3, 3, 4, 3, 4, 4, 5, 4, 5, 5, 6, 5, 6, 6, 7, 6, 7, 7};
    for (int n = 1; n <= static_cast<int>(std::size(a059169)); ++n) {
        CAPTURE(n);
        Counts counts = count(n);
        CHECK(counts.of[Kind::isosceles] + counts.of[Kind::equilateral] == a059169[n - 1]);
        CHECK(counts.of[Kind::equilateral] == (n % 3 == 0 ? 1 : 0));
    }
}

TEST_CASE("Acute, right and obtuse triangles are as many as OEIS A070093, A024155 and A070101 say") {
    const int a070093[] = {0, 0, 1, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3,  2, 4,  3,
                           5, 4, 5, 5, 5, 6, 6, 6, 7, 7, 9, 8, 10, 9, 10, 10};
    const int a070101[] = {0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 2,  0, 2,  2, 3,  2,
                           3, 3, 5, 3, 7, 4, 8, 5, 9, 7, 10, 8, 11, 9, 14, 11};
    const std::map<int, int> a024155{{12, 1}, {24, 1}, {30, 1}, {36, 1}, {40, 1}, {48, 1}, {56, 1}, {60, 2}};
    for (int n = 1; n <= 60; ++n) {
        CAPTURE(n);
        Counts counts = count(n);
        if (n <= static_cast<int>(std::size(a070093))) {
            CHECK(counts.of[Kind::acute] == a070093[n - 1]);
            CHECK(counts.of[Kind::obtuse] == a070101[n - 1]);
        }
        CHECK(counts.of[Kind::right] == (a024155.count(n) ? a024155.at(n) : 0));
    }
}

TEST_CASE("Perimeters 3 to 60 give 1650 triangles, each with one name by sides and one by angles") {
    // Recomputed apart from this program.
    std::map<Kind, int> of;
    int all = 0;
    for (int n = 3; n <= 60; ++n) {
        const Counts counts = count(n);
        all += counts.all;
        for (const auto& [kind, how_many] : counts.of) of[kind] += how_many;
    }
    CHECK(all == 1650);
    CHECK(of[Kind::scalene] == 1215);
    CHECK(of[Kind::isosceles] == 415);
    CHECK(of[Kind::equilateral] == 20);
    CHECK(of[Kind::acute] == 699);
    CHECK(of[Kind::right] == 9);
    CHECK(of[Kind::obtuse] == 942);
}

TEST_CASE("Triangles whose longest side is n are as many as OEIS A002620(n + 1) says") {
    const int a002620[] = {1, 2, 4, 6, 9, 12, 16, 20, 25, 30, 36, 42};
    for (int n = 1; n <= static_cast<int>(std::size(a002620)); ++n) {
        int found = 0;
        for (int b = 1; b <= n; ++b)
            for (int a = 1; a <= b; ++a) found += static_cast<bool>(possible(whole(a, b, n)));
        CAPTURE(n);
        CHECK(found == a002620[n - 1]);
    }
}

TEST_CASE("The name does not depend on which side is side 1") {
    const Challenge exact{.right_within_deg = 0.001};
    for (int a = 1; a <= 20; ++a)
        for (int b = a; b <= 20; ++b)
            for (int c = b; c < a + b && c <= 20; ++c) {
                const auto kinds = measure(whole(a, b, c), exact).kinds;
                for (const std::array<int, 3>& o : {std::array{b, c, a}, {c, a, b}, {a, c, b}, {c, b, a}, {b, a, c}})
                    REQUIRE(measure(whole(o[0], o[1], o[2]), exact).kinds == kinds);
            }
}

}  // namespace
}  // namespace boughwork::testing
