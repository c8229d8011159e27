// SPDX-License-Identifier: MIT
#include "engine/typed_number.h"

#include <catch2/catch.hpp>

using namespace boughwork;

TEST_CASE("a count is a whole number and nothing else") {
    CHECK(parse_count("4").value() == 4);
    CHECK(parse_count(" 12 ").value() == 12);
    CHECK(parse_count("0").value() == 0);
    CHECK(parse_count("1000000").value() == 1000000);
    for (const char* typed : {"", " ", "-1", "2.5", "four", "1 2", "1000001", "99999999999999999999"}) {
        INFO(typed);
        REQUIRE_FALSE(parse_count(typed));
        CHECK_FALSE(parse_count(typed).problem().to_do.empty());
    }
}

TEST_CASE("a number is read as the plan file reads its digits") {
    CHECK(parse_number("0.1").value() == 0.1);
    CHECK(parse_number("0,1").value() == 0.1);
    CHECK(parse_number("33.3").value() == 33.3);
    CHECK(parse_number(".5").value() == 0.5);
    CHECK(parse_number("2.").value() == 2);
    CHECK(parse_number("-3").value() == -3);
    for (const char* typed : {"", "-", ".", "1.2.3", "1-2", "2 5", "ten", "1e5", "1234567890"}) {
        INFO(typed);
        CHECK_FALSE(parse_number(typed));
    }
}

TEST_CASE("a number that was typed is shown as it was typed") {
    for (const char* typed : {"0", "2.5", "-3", "0.1", "33.333", "100"})
        CHECK(typed_number(parse_number(typed).value()) == typed);
}

TEST_CASE("a step is a length, in lowest terms, in its own unit") {
    CHECK(parse_step("2 mm", Unit::cm).value() == Step{2, 1, Unit::mm, ""});
    CHECK(parse_step("0.5", Unit::cm).value() == Step{1, 2, Unit::cm, ""});
    CHECK(parse_step("1/16 in", Unit::mm).value() == Step{1, 16, Unit::in, ""});
    CHECK(parse_step("2 1/2", Unit::in).value() == Step{5, 2, Unit::in, ""});
    for (const char* typed : {"", "0", "-1", "a bit", "1/3 in"}) {
        INFO(typed);
        CHECK_FALSE(parse_step(typed, Unit::mm));
    }
}

TEST_CASE("a step in words can be typed again") {
    for (const Step& step :
         {Step{1, 1, Unit::mm, ""}, Step{5, 1, Unit::mm, ""}, Step{1, 4, Unit::in, ""}, Step{5, 2, Unit::cm, ""}}) {
        INFO(step_words(step));
        CHECK(parse_step(step_words(step), Unit::in).value() == step);
    }
    CHECK(step_words({1, 4, Unit::in, ""}) == "1/4 in");
}
