// SPDX-License-Identifier: MIT
// The least costly choice, against trying every choice.
#include <cstdint>
#include <random>

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A rectangle in a row under the level branch, in whole mm.
struct Placed {
    int number;
    int left;
    int width;
    int height;
    bool wrong_size;

    int points() const { return wrong_size ? 0 : 2 * (width + height); }
};

constexpr int least_width = 12;  // The least side that the challenge allows.

/// Nearer than 2 mm two rectangles of a row touch along a side, or overlap.
bool too_near(const Placed& a, const Placed& b) {
    return a.left < b.left + b.width + 2 && b.left < a.left + a.width + 2;
}

std::vector<Placed> random_row(std::mt19937& dice, int pieces) {
    const auto up_to = [&](int most) { return std::uniform_int_distribution<int>(0, most)(dice); };
    std::vector<int> numbers;
    for (int i = 0; i < pieces; ++i) numbers.push_back(i + 1);
    std::shuffle(numbers.begin(), numbers.end(), dice);
    std::vector<Placed> row;
    for (const int number : numbers) {
        const bool wrong_size = up_to(7) == 0;
        // Few different sizes, so that there are many ties.
        const int width = wrong_size ? least_width - 2 : least_width + 8 * up_to(3);
        row.push_back({number, 10 + 4 * up_to(40), width, 40, wrong_size});
    }
    return row;
}

/// The rulebook's choice: least points, then fewest pieces, then the higher numbers, the highest compared first.
std::vector<int> least_costly(const std::vector<Placed>& row) {
    struct Choice {
        int points;
        std::size_t pieces;
        std::vector<int> descending;
    };
    std::optional<Choice> best;
    for (std::uint32_t chosen = 0; chosen < 1u << row.size(); ++chosen) {
        Choice choice{0, 0, {}};
        bool leaves_none = true;
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (chosen >> i & 1u) {
                choice.points += row[i].points();
                choice.descending.push_back(row[i].number);
                continue;
            }
            for (std::size_t j = 0; j < i; ++j)
                leaves_none = leaves_none && (chosen >> j & 1u || !too_near(row[i], row[j]));
        }
        if (!leaves_none) continue;
        choice.pieces = choice.descending.size();
        std::sort(choice.descending.rbegin(), choice.descending.rend());
        const auto better = [&] {
            if (choice.points != best->points) return choice.points < best->points;
            if (choice.pieces != best->pieces) return choice.pieces < best->pieces;
            return choice.descending > best->descending;
        };
        if (!best || better()) best = choice;
    }
    std::vector<int> numbers = best->descending;
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

SceneBuilder hung(const std::vector<Placed>& row) {
    SceneBuilder plan = with_level_branch();
    plan.challenge().at_fault = AtFault::fewest_points;
    plan.challenge().limits.side.least = length_from_mm(least_width);
    for (const Placed& one : row) plan.hang(rectangle(one.number, one.width, one.height), under(one.left));
    return plan;
}

TEST_CASE("The pieces at fault cost the least, for many small rows") {
    std::mt19937 dice(27);
    int had_to_choose = 0;
    for (int round = 0; round < 1500; ++round) {
        const std::vector<Placed> row = random_row(dice, 2 + round % 8);
        const std::vector<int> expected = least_costly(row);
        had_to_choose += expected.size() > 1;
        const Report report = hung(row).check();
        std::vector<int> at_fault;
        for (const PieceReport& one : report.pieces) {
            REQUIRE(one.hangs_from);
            if (breaks(report, one.number.value, Rule::touching) || breaks(report, one.number.value, Rule::overlap))
                at_fault.push_back(one.number.value);
        }
        CAPTURE(round);
        REQUIRE(at_fault == expected);
        // The ways out together are the same choice.
        std::vector<int> told;
        for (const WayOut& way : report.ways_out)
            for (const int number : values(way.take_down)) told.push_back(number);
        std::sort(told.begin(), told.end());
        REQUIRE(told == expected);
    }
    CHECK(had_to_choose > 500);
}

TEST_CASE("The least costly choice is found among forty pieces in a heap, too") {
    std::mt19937 dice(28);
    SceneBuilder plan = with_level_branch();
    plan.challenge().at_fault = AtFault::fewest_points;
    // Forty rectangles of one place: all but one must go, and the widest stays.
    for (int number = 1; number <= 40; ++number)
        plan.hang(rectangle(number, 20 + (number * 7) % 41, 40), under(100 + number * 0.25));
    const Report report = plan.check();
    int stays = 0;
    for (const PieceReport& one : report.pieces)
        if (one.state == PieceState::counts) {
            CHECK(stays == 0);
            stays = one.number.value;
        }
    // (number x 7) mod 41 is 40 for number 35 alone.
    CHECK(stays == 35);
}

}  // namespace
}  // namespace boughwork::testing
