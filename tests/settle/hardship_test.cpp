// SPDX-License-Identifier: MIT
// Trees that no table has seen: in bounded time they come to rest, or it is said that they do not.
#include <cmath>

#include "tests/settle/cantilevers.h"

namespace boughwork {
namespace {

/// Runs to the end, and looks that nothing is shown that cannot be.
Settling::State endured(const StandingTree& standing, double within_mm) {
    Settling settling(standing);
    settling.run_to_the_end();
    CHECK(settling.state() != Settling::State::moving);
    CHECK(settling.steps() <= 25 * 120 + 1);
    const TreePlaces now = settling.now();
    for (const std::vector<Vec2>& nodes : now.rods_mm)
        for (const Vec2 node : nodes) {
            CHECK(std::isfinite(node.x));
            CHECK(std::abs(node.x) <= within_mm);
            CHECK(std::abs(node.y) <= within_mm);
        }
    if (settling.trusted())
        for (const Sag& sag : settling.sags()) {
            CHECK(std::isfinite(sag.tip_mm));
            CHECK(sag.error_mm <= std::max(0.1, 0.02 * std::abs(sag.tip_mm)));
        }
    return settling.state();
}

}  // namespace

TEST_CASE("A branch without any stiffness hangs down like a string") {
    const StandingTree standing = with_tip_load(level_rod(300, 0, 1e-4), 0.01);
    endured(standing, 1500);
    Settling settling(standing);
    settling.run_to_the_end();
    const Vec2 end = settling.now().rods_mm.front().back();
    CHECK(end.y < 1000 - 290);
    CHECK(std::abs(end.x) < 60);
}

TEST_CASE("A rope of a branch with a stone at its end, a beam with a fly: no blow-up") {
    for (const double stiffness : {1e-6, 1.0, 1e3, 1e6, 1e9, 1e12})
        for (const double load_n : {1e-9, 1e-3, 1.0, 1e3}) {
            INFO("E I " << stiffness << ", load " << load_n);
            endured(with_tip_load(level_rod(300, stiffness, 1e-5), load_n), 2000);
        }
}

TEST_CASE("A hundred pieces in chains on twenty branches come to rest") {
    StandingTree standing;
    for (int b = 0; b < 20; ++b) {
        standing.rods.push_back(level_rod(300, 20000, 1e-4, 1000 + 40 * b));
        for (int k = 0; k < 5; ++k) {
            Sheet sheet = small_sheet({20 + 60.0 * k, 990 + 40.0 * b}, 0.002);
            sheet.rod = static_cast<std::size_t>(b);
            standing.sheets.push_back(std::move(sheet));
        }
    }
    CHECK(endured(standing, 2000) == Settling::State::at_rest);
}

TEST_CASE("A chain of forty swinging pieces ends in bounded time") {
    StandingTree standing{.rods = {level_rod(300, 20000, 1e-4, 3000)}, .sheets = {}};
    Vec2 corner{290, 3000};
    for (int k = 0; k < 40; ++k) {
        const Vec2 next = corner + Vec2{40, -20};
        Sheet sheet{.outline = {corner, corner + Vec2{5, -25}, next},
                    .weight_n = 0.002,
                    .grip = Grip::by_a_point,
                    .at_mm = corner};
        if (k == 0) {
            sheet.rod = 0;
        } else {
            sheet.sheet = static_cast<std::size_t>(k - 1);
        }
        standing.sheets.push_back(std::move(sheet));
        corner = next;
    }
    endured(standing, 8000);
}

TEST_CASE("Nothing at all is at rest, and every number of it may be told") {
    Settling settling{StandingTree{}};
    settling.run_to_the_end();
    CHECK(settling.state() == Settling::State::at_rest);
    CHECK(settling.trusted());
    CHECK(settling.sags().empty());
}

}  // namespace boughwork
