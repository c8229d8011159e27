// SPDX-License-Identifier: MIT
#include "engine/length.h"

#include <catch2/catch.hpp>
#include <cstdint>

namespace boughwork {
namespace {

// 1 inch = 25.4 mm exactly since 1 July 1959: National Bureau of Standards, Addendum to Circular 572.
TEST_CASE("An inch is exactly 25.4 mm, a centimetre exactly 10") {
    CHECK(length_of(Unit::in) == length_from_mm(25.4));
    CHECK(length_of(Unit::in).half_um == 50'800);
    CHECK(length_of(Unit::cm) == length_from_mm(10));
    CHECK(length_of(Unit::mm).half_um == 2'000);
}

TEST_CASE("Every sixteenth of an inch is held exactly") {
    for (std::int64_t sixteenths = 1; sixteenths <= 16 * 39'370; sixteenths += 7) {
        const double mm = static_cast<double>(sixteenths) * 25.4 / 16;
        REQUIRE(length_from_mm(mm).half_um == sixteenths * 3'175);
    }
}

TEST_CASE("Typed decimals add up as on paper, not as binary fractions do") {
    REQUIRE(0.1 + 0.2 != 0.3);  // What the lengths have to mend.
    CHECK(length_from_mm(0.1) + length_from_mm(0.2) == length_from_mm(0.3));
    CHECK(length_from_mm(80.7) - length_from_mm(80.6) == length_from_mm(0.1));
}

TEST_CASE("Every length that a file may hold comes back as it was typed") {
    for (const double mm : {0.0005, 0.1, 7.5, 25.4, 63.5, 412.7, 999'999.9995, 1e6, -1e6})
        CHECK(to_mm(length_from_mm(mm)) == mm);
}

TEST_CASE("A length half-way between two that can be held goes away from zero") {
    CHECK(length_from_mm(0.00025).half_um == 1);
    CHECK(length_from_mm(-0.00025).half_um == -1);
    CHECK(length_from_mm(0.0002).half_um == 0);
}

TEST_CASE("Lengths are put in order by how long they are") {
    CHECK(length_from_mm(25.4) > length_from_mm(25));
    CHECK(length_from_mm(25.4) <= length_of(Unit::in));
}

}  // namespace
}  // namespace boughwork
