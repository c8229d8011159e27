// SPDX-License-Identifier: MIT
#include "engine/typed_length.h"

#include <catch2/catch.hpp>

using namespace boughwork;

namespace {

std::int64_t half_um(const std::string& typed, Unit unit) {
    const auto length = parse_length(typed, unit);
    INFO(typed);
    REQUIRE(length);
    return length->half_um;
}

}  // namespace

TEST_CASE("a typed decimal is held exactly") {
    CHECK(half_um("7.5", Unit::cm) == 150'000);
    CHECK(half_um("7,5", Unit::cm) == 150'000);
    CHECK(half_um(" 12 ", Unit::mm) == 24'000);
    CHECK(half_um("0.1", Unit::mm) == 200);
    CHECK(half_um(".5", Unit::mm) == 1'000);
    CHECK(half_um("0.0005", Unit::mm) == 1);
    // 1 in = 25.4 mm exactly: NBS, Addendum to Circular 572 (1959).
    CHECK(half_um("1", Unit::in) == 50'800);
    CHECK(half_um("0.1", Unit::in) == 5'080);
}

TEST_CASE("a typed fraction of an inch is held exactly") {
    CHECK(half_um("2 1/2", Unit::in) == 127'000);
    CHECK(half_um("1/16", Unit::in) == 3'175);
    CHECK(half_um("15/16", Unit::in) == 47'625);
    CHECK(half_um("3/2", Unit::in) == 76'200);
    CHECK(half_um("2 / 4", Unit::in) == 25'400);
    CHECK(half_um("1/2", Unit::cm) == 10'000);
    CHECK(half_um("3/6", Unit::in) == 25'400);
}

TEST_CASE("a unit typed behind the number wins over the challenge's") {
    CHECK(half_um("75 mm", Unit::cm) == 150'000);
    CHECK(half_um("75mm", Unit::in) == 150'000);
    CHECK(half_um("2 1/2 in", Unit::cm) == 127'000);
    CHECK(half_um("7.5cm", Unit::mm) == 150'000);
}

TEST_CASE("what is no length is refused with what to do") {
    const std::string typed = GENERATE("", "  ", "abc", "7.", "7.5.1", "-3", "0", "0.000", "1/0", "2 3/2", "2 1", "1e3",
                                       "7 ft", "7.5 cm x", "nan", "1000001", "99999999999", "0/4");
    const auto length = parse_length(typed, Unit::mm);
    INFO("'" << typed << "'");
    REQUIRE_FALSE(length);
    CHECK_FALSE(length.problem().found.empty());
    CHECK_FALSE(length.problem().to_do.empty());
}

TEST_CASE("what is finer than half a micrometre is refused, not rounded") {
    CHECK_FALSE(parse_length("0.0001", Unit::mm));
    CHECK_FALSE(parse_length("1/32", Unit::in));
    CHECK_FALSE(parse_length("1/3", Unit::cm));
    CHECK_FALSE(parse_length("1.123456789", Unit::in));
}

TEST_CASE("a thousand metres is the longest length") {
    CHECK(half_um("1000000", Unit::mm) == 2'000'000'000);
    CHECK_FALSE(parse_length("1000000.5", Unit::mm));
    CHECK_FALSE(parse_length("39370 1/8", Unit::in));  // 1e6 mm is 39 370.0787 in
}

TEST_CASE("lengths are written as people write them") {
    CHECK(length_words({150'000}, Unit::cm) == "7.5 cm");
    CHECK(length_words({150'000}, Unit::mm) == "75 mm");
    CHECK(length_words({127'000}, Unit::in) == "2 1/2 in");
    CHECK(length_number({25'400}, Unit::in) == "1/2");
    CHECK(length_number({50'800}, Unit::in) == "1");
    CHECK(length_number({1}, Unit::mm) == "0.0005");
    CHECK(length_number({1}, Unit::cm) == "0.00005");
    CHECK(length_number({160'000}, Unit::in) == "3.15");  // 80 mm; 80 / 25.4 = 3.1496...
    CHECK(length_number({0}, Unit::cm) == "0");
    CHECK(length_number({-150'000}, Unit::cm) == "-7.5");
}

TEST_CASE("what is written in millimetres or centimetres reads back as the same length") {
    for (std::int64_t n = 1; n < 2'000'000'000; n = n * 3 + 7) {
        CHECK(half_um(length_number({n}, Unit::mm), Unit::mm) == n);
        CHECK(half_um(length_number({n}, Unit::cm), Unit::cm) == n);
    }
}

TEST_CASE("sixteenths of an inch read back as the same length") {
    for (std::int64_t sixteenths = 1; sixteenths < 600; ++sixteenths)
        CHECK(half_um(length_number({sixteenths * 3'175}, Unit::in), Unit::in) == sixteenths * 3'175);
}
