// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "tests/session/fair_table.h"

namespace boughwork {

TEST_CASE("pieces are spread evenly along their branch, in their order, as one step") {
    FairTable table;  // the under-edge ends at x = 320; each piece takes up 80
    table.add(80, 60, 50);
    table.add(80, 60, 50);
    table.hang(1, 200);
    table.hang(2, 20);
    table.hang(3, 101);
    table.choose(3);
    table.press(Action::spread_out);
    const auto x = [&](int piece) { return table.pose(piece).at_mm.x; };
    const double gap = 320 - (x(1) + 80);
    CHECK(gap > 1);
    CHECK(x(3) - (x(2) + 80) == Approx(gap));
    CHECK(x(1) - (x(3) + 80) == Approx(gap));
    for (const int piece : {1, 2, 3}) CHECK(table.counts(piece));
    table.press(Action::undo);
    CHECK(table.pose(1).at_mm.x == 200);
    CHECK(table.pose(3).at_mm.x == 101);
}

TEST_CASE("where there is no room to spread, nothing moves and that is said") {
    FairTable table;
    table.add(149, 120, 100);
    table.add(149, 120, 100);
    table.hang(2, 20.8);
    table.hang(3, 170.2);
    table.choose(2);
    table.press(Action::spread_out);
    CHECK(table.pose(2).at_mm.x == 20.8);
    REQUIRE(table.session.problem());
    CHECK(table.session.problem()->found.find("no room") != std::string::npos);
}

TEST_CASE("a chain is spread as one") {
    FairTable table;
    table.hang_a_chain();
    const Vec2 apart = table.pose(2).at_mm - table.pose(1).at_mm;
    table.choose(1);
    table.press(Action::spread_out);
    CHECK(near(table.pose(2).at_mm - table.pose(1).at_mm, apart, 1e-9));
    CHECK(table.report(2).depth == 2);
    CHECK(table.pose(1).at_mm.x > 31);
}

}  // namespace boughwork
