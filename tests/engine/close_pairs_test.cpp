// SPDX-License-Identifier: MIT
#include "engine/geometry/close_pairs.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <random>

#include "engine/geometry/tolerance.h"
#include "tests/engine/all_differences.h"

namespace boughwork {
namespace {

constexpr double close_mm = 1;
constexpr double reach = 1.5;

/// A convex outline of 3 to 9 corners, of any size, anywhere on a small table.
Polygon some_outline(std::mt19937& dice, std::size_t corners) {
    std::uniform_real_distribution<double> share(0, 1);
    const double size = 5 * std::pow(40, share(dice) * share(dice));
    const Vec2 at{300 * share(dice), 300 * share(dice)};
    Polygon outline;
    while (outline.size() != corners) {
        std::vector<Vec2> points(corners);
        for (Vec2& p : points) p = at + Vec2{size * share(dice), size * share(dice)};
        outline = testing::hull(points);
    }
    return outline;
}

using Pairs = std::map<std::pair<std::size_t, std::size_t>, Contact>;

Pairs found(const ClosePairs& pairs, std::size_t count) {
    Pairs all;
    for (std::size_t i = 0; i < count; ++i) {
        std::optional<std::uint32_t> last;
        for (const ClosePairs::Neighbour& neighbour : pairs.of(i)) {
            CHECK((!last || *last < neighbour.place));
            last = neighbour.place;
            all[{i, neighbour.place}] = neighbour.contact;
        }
    }
    return all;
}

/// Every pair that touches or overlaps is there, as gap() says; none that is plainly out of reach.
void check_against_all(const Pairs& pairs, const std::vector<Polygon>& outlines) {
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        for (std::size_t k = 0; k < outlines.size(); ++k) {
            if (i == k) continue;
            const double d = gap(outlines[i], outlines[k]).distance_mm;
            const auto told = pairs.find({i, k});
            if (d <= reach) REQUIRE(told != pairs.end());
            if (told != pairs.end()) REQUIRE(told->second == contact(d, close_mm));
        }
    }
}

}  // namespace

TEST_CASE("Close pairs are those that comparing all with all finds, before and after moves") {
    std::mt19937 dice(41);
    for (int scene = 0; scene < 60; ++scene) {
        std::vector<Polygon> outlines;
        std::vector<std::size_t> corners(1 + dice() % 40);
        for (std::size_t& n : corners) outlines.push_back(some_outline(dice, n = 3 + dice() % 7));
        std::vector<const Polygon*> pointers;
        for (const Polygon& outline : outlines) pointers.push_back(&outline);
        ClosePairs pairs(pointers, close_mm, reach);
        check_against_all(found(pairs, outlines.size()), outlines);

        for (int move = 0; move < 30; ++move) {
            const std::size_t i = dice() % outlines.size();
            outlines[i] = some_outline(dice, corners[i]);
            pairs.move(i, outlines[i]);
        }
        const Pairs moved = found(pairs, outlines.size());
        check_against_all(moved, outlines);
        CHECK(moved == found(ClosePairs(pointers, close_mm, reach), outlines.size()));
    }
}

TEST_CASE("Neighbours are found wherever the border between two cells falls") {
    std::vector<Polygon> row;
    Vec2 at;
    for (int i = 0; i < 200; ++i) {
        // As far apart as can be and still be close, sideways and upwards in turn.
        const double size = 10 + i % 7;
        row.push_back({at, at + Vec2{size, 0}, at + Vec2{size, size}, at + Vec2{0, size}});
        at = at + (i % 2 == 0 ? Vec2{size + reach, 0} : Vec2{0, size + reach});
    }
    std::vector<const Polygon*> pointers;
    for (const Polygon& outline : row) pointers.push_back(&outline);
    check_against_all(found(ClosePairs(pointers, close_mm, reach), row.size()), row);
}

TEST_CASE("A gap of just the tolerance touches, past a corner as along a side") {
    const Polygon box{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const auto how = [&](Vec2 by, double size = 5) {
        const Polygon other{by, by + Vec2{size, 0}, by + Vec2{size, size}, by + Vec2{0, size}};
        const ClosePairs pairs({&box, &other}, close_mm, reach);
        return pairs.of(0).empty() ? Contact::apart : pairs.of(0)[0].contact;
    };
    CHECK(how({11, 2}) == Contact::touching);
    CHECK(how({11.001, 2}) == Contact::apart);
    CHECK(how({9, 2}) == Contact::touching);
    CHECK(how({8.999, 2}) == Contact::overlapping);
    // 3-4-5: corner to corner, 0.6 across and 0.8 up.
    CHECK(how({10.6, 10.8}) == Contact::touching);
    CHECK(how({10.61, 10.8}) == Contact::apart);
    CHECK(how({2, 2}) == Contact::overlapping);
}

}  // namespace boughwork
