// SPDX-License-Identifier: MIT
#include "rules/hand_measured.h"

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

/// A ruler in centimetres that is read to such a step.
Challenge ruler(std::int64_t numerator, std::int64_t denominator, Unit unit) {
    Challenge challenge;
    challenge.units = unit == Unit::in ? Unit::in : Unit::cm;
    challenge.step = {.numerator = numerator, .denominator = denominator, .unit = unit};
    return challenge;
}

Reading read(const Piece& piece, double by_hand_mm, const Challenge& challenge) {
    return reading_of(piece.shape, 0, length_from_mm(by_hand_mm), challenge);
}

TEST_CASE("A side fits when it is the nearest step, and no other step does") {
    const Challenge challenge = ruler(5, 1, Unit::mm);
    const Piece piece = triangle(1, 72, 60, 50);  // between 70 and 75: 70 is nearer
    CHECK(read(piece, 70, challenge) == Reading::fits);
    CHECK(read(piece, 75, challenge) == Reading::does_not_fit);
    CHECK(read(piece, 65, challenge) == Reading::does_not_fit);
    CHECK(read(piece, 72, challenge) == Reading::fits);  // read more finely than asked
    CHECK(reading_of(piece.shape, 0, std::nullopt, challenge) == Reading::none);
}

TEST_CASE("Of a side exactly half-way between two steps both are right, a hair off only one is") {
    const Challenge challenge = ruler(5, 1, Unit::mm);
    const Piece tie = triangle(1, 72.5, 60, 50);
    CHECK(read(tie, 70, challenge) == Reading::fits);
    CHECK(read(tie, 75, challenge) == Reading::fits);
    CHECK(read(tie, 65, challenge) == Reading::does_not_fit);
    const Piece above{.number = {1}, .shape = Triangle{{Length{145001}, length_from_mm(60), length_from_mm(50)}}};
    CHECK(read(above, 70, challenge) == Reading::does_not_fit);
    CHECK(read(above, 75, challenge) == Reading::fits);
}

TEST_CASE("A tie of eighths of an inch is decided exactly") {
    // 1 inch = 25.4 mm exactly (NBS, Addendum to Circular 572, 1959): 2 1/16 in lies half-way between 2 and 2 1/8.
    const Challenge challenge = ruler(1, 8, Unit::in);
    const Piece tie{.number = {1}, .shape = Triangle{{Length{33 * 3175}, Length{50800 * 2}, Length{50800 * 2}}}};
    const auto eighths = [&](int count) { return reading_of(tie.shape, 0, Length{count * 6350}, challenge); };
    CHECK(eighths(16) == Reading::fits);
    CHECK(eighths(17) == Reading::fits);
    CHECK(eighths(15) == Reading::does_not_fit);
}

TEST_CASE("A side of an outline that is a root is held against its steps as well") {
    // The diagonal of a 3 by 4 cm right corner is 5 cm (Euclid I.47); that of a 3 by 3 one 4.243 cm.
    const Challenge challenge = ruler(1, 1, Unit::mm);
    const Piece five = outline(1, {{0, 0}, {40, -30}, {0, -30}});
    CHECK(read(five, 50, challenge) == Reading::fits);
    CHECK(read(five, 51, challenge) == Reading::does_not_fit);
    const Piece root = outline(2, {{0, 0}, {30, -30}, {0, -30}});
    CHECK(read(root, 42, challenge) == Reading::fits);
    CHECK(read(root, 43, challenge) == Reading::does_not_fit);
}

TEST_CASE("Typical slips are told apart: another unit, and beginning at 1") {
    const Challenge challenge = ruler(1, 1, Unit::mm);
    const Piece piece = triangle(1, 80, 70, 60);
    CHECK(read(piece, 800, challenge) == Reading::other_unit);   // 80 mm written as 80 cm
    CHECK(read(piece, 8, challenge) == Reading::other_unit);     // 8 written where millimetres are meant
    CHECK(read(piece, 31, challenge) == Reading::other_unit);    // 3.1 read off the inches
    CHECK(read(piece, 90, challenge) == Reading::began_at_one);  // one centimetre too much
    CHECK(read(piece, 70, challenge) == Reading::does_not_fit);  // one too little has another cause
    CHECK(read(piece, 85, challenge) == Reading::does_not_fit);
    const Challenge inches = ruler(1, 4, Unit::in);
    const Piece three = triangle(2, 76.2, 70, 60);
    CHECK(read(three, 4 * 25.4, inches) == Reading::began_at_one);
    CHECK(read(three, 7.5 * 25.4, inches) == Reading::other_unit);  // 7.5 read off the centimetres
}

TEST_CASE("What is said of a slip names the side and not its length") {
    const std::string words = measure_again_words({4}, 1, Reading::does_not_fit);
    CHECK(words == "Measure side 2 of piece 4 again.");
    CHECK(contains(measure_again_words({4}, 1, Reading::began_at_one), "Begin at 0"));
    CHECK(contains(measure_again_words({4}, 1, Reading::other_unit), "unit"));
    CHECK(measure_again_words({4}, 1, Reading::fits).empty());
    CHECK(measure_again_words({4}, 1, Reading::none).empty());
}

TEST_CASE("Every side of a piece has its reading, measured or not") {
    Piece piece = triangle(1, 80, 70, 60);
    CHECK(readings_of(piece, ruler(1, 1, Unit::mm)) == std::vector<Reading>(3, Reading::none));
    piece.by_hand.sides = {std::nullopt, length_from_mm(70), length_from_mm(66)};
    CHECK(readings_of(piece, ruler(1, 1, Unit::mm)) ==
          std::vector<Reading>{Reading::none, Reading::fits, Reading::does_not_fit});
}

TEST_CASE("The known sides are those measured by hand, and the planned ones only where they are told") {
    SceneBuilder builder;
    builder.keep(triangle(1, 80, 70, 60)).keep(triangle(2, 50, 40, 30));
    builder.scene.pieces[0].by_hand.sides = {length_from_mm(81), std::nullopt, std::nullopt};
    CHECK(sides_known_in_steps(builder.scene, builder.check()) == std::vector<std::int64_t>{81, 70, 60, 50, 40, 30});
    builder.challenge().shown.lengths = Shows::after_an_answer;
    CHECK(sides_known_in_steps(builder.scene, builder.check()) == std::vector<std::int64_t>{81});
}

TEST_CASE("The signs of those who measure go round") {
    CHECK(next_hand_symbol("") == "star");
    CHECK(next_hand_symbol("star") == "moon");
    CHECK(next_hand_symbol("heart") == "star");
    CHECK(is_hand_symbol("leaf"));
    CHECK_FALSE(is_hand_symbol("Anna"));
}

}  // namespace
}  // namespace boughwork::testing
