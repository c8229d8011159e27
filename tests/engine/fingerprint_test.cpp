// SPDX-License-Identifier: MIT
#include "engine/storage/fingerprint.h"

#include <catch2/catch.hpp>

#include "engine/storage/plan_file.h"
#include "tests/engine/plan_file_example.h"

using namespace boughwork;

TEST_CASE("the hash is FNV-1a with 64 bits") {
    // IETF draft-eastlake-fnv-19, its table of 64-bit test vectors.
    CHECK(fnv1a_64("") == 0xCBF29CE484222325);
    CHECK(fnv1a_64("a") == 0xAF63DC4C8601EC8C);
    CHECK(fnv1a_64("foobar") == 0x85944171F73967E8);
}

TEST_CASE("a fingerprint is two groups of four, without look-alikes and vowels") {
    Challenge challenge;
    for (int i = 0; i < 200; ++i) {
        challenge.name = std::to_string(i);
        const std::string print = fingerprint(challenge);
        INFO(print);
        REQUIRE(print.size() == 9);
        CHECK(print[4] == ' ');
        for (const std::size_t at : {0, 1, 2, 3, 5, 6, 7, 8})
            CHECK(std::string("23456789BCDFGHJKMNPQRSTVWXYZ").find(print[at]) != std::string::npos);
    }
}

TEST_CASE("whatever is asked differently changes the fingerprint") {
    const Challenge before;
    Challenge after;
    SECTION("the name") { after.name = "Big fair"; }
    SECTION("the step") { after.step.numerator = 5; }
    SECTION("the tolerance") { after.tolerance_mm = 1.5; }
    SECTION("a limit") { after.limits.sheets = 3; }
    SECTION("a criterion") { after.criteria.push_back({KindAppears{}, ""}); }
    SECTION("a bonus") { after.score.bonuses.push_back({PerDepth{}, 3, ""}); }
    SECTION("who does the mathematics") { after.shown.kinds = Shows::after_an_answer; }
    SECTION("lengths measured by hand") { after.hand_lengths_score = true; }
    SECTION("gravity") { after.holds_after_settling = true; }
    CHECK(fingerprint(after) != fingerprint(before));
}

TEST_CASE("the seal, a save and fields of another program leave the fingerprint as it was") {
    const auto scene = read_plan(example_text);
    REQUIRE(scene);
    Challenge challenge = scene->challenge;
    const std::string print = fingerprint(challenge);
    CHECK(fingerprint(read_plan(write_plan(*scene))->challenge) == print);
    challenge.sealed = true;
    challenge.unknown_fields = R"({"colour": "red"})";
    challenge.step.unknown_fields = R"({"ruler": "wood"})";
    for (Criterion& criterion : challenge.criteria) criterion.unknown_fields = R"({"picture": 4})";
    for (Bonus& bonus : challenge.score.bonuses) bonus.unknown_fields = R"({"picture": 4})";
    CHECK(fingerprint(challenge) == print);
}
