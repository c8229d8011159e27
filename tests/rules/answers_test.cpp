// SPDX-License-Identifier: MIT
#include "rules/answers.h"

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

struct Asking {
    SceneBuilder builder = with_level_branch();

    explicit Asking(const Piece& made, bool hung = true) {
        builder.challenge().units = Unit::cm;
        if (hung)
            builder.hang(made, under(100));
        else
            builder.keep(made);
    }
    Challenge& challenge() { return builder.challenge(); }
    std::optional<Judgement> judge(const Answers& answers, Asked what) {
        Piece& piece = builder.scene.pieces[0];
        piece.answers = answers;
        const Report report = builder.check();
        return judged(builder.scene.challenge, piece, report.pieces[0], what);
    }
    AnswerIs by_sides(Kind kind) { return judge({.by_sides = kind}, Asked::by_sides)->judged; }
    AnswerIs by_angles(Kind kind) { return judge({.by_angles = kind}, Asked::by_angles)->judged; }
    AnswerIs perimeter(double mm) { return judge({.perimeter = length_from_mm(mm)}, Asked::perimeter)->judged; }
    AnswerIs points(double value) { return judge({.points = value}, Asked::points)->judged; }
};

TEST_CASE("A kind by sides is right, and an equilateral one called isosceles nearly is") {
    Asking two(triangle(1, 90, 70, 70));
    CHECK(two.by_sides(Kind::isosceles) == AnswerIs::right);
    CHECK(two.by_sides(Kind::equilateral) == AnswerIs::not_yet);
    CHECK(two.by_sides(Kind::scalene) == AnswerIs::not_yet);
    Asking three(triangle(1, 80, 80, 80));
    CHECK(three.by_sides(Kind::equilateral) == AnswerIs::right);
    CHECK(three.by_sides(Kind::isosceles) == AnswerIs::nearly);
    CHECK(three.by_sides(Kind::scalene) == AnswerIs::not_yet);
    three.challenge().equilateral_is_isosceles = true;
    CHECK(three.by_sides(Kind::isosceles) == AnswerIs::right);
}

TEST_CASE("A kind by angles is right; of a close call both neighbours are") {
    Asking obtuse(triangle(1, 100, 60, 60));
    CHECK(obtuse.by_angles(Kind::obtuse) == AnswerIs::right);
    CHECK(obtuse.by_angles(Kind::right) == AnswerIs::not_yet);
    CHECK(obtuse.by_angles(Kind::acute) == AnswerIs::not_yet);
    // By the law of cosines the largest angle of 95, 80, 50 is 90.86 degrees: right within 1, truly obtuse.
    Asking close(triangle(1, 95, 80, 50));
    CHECK(close.by_angles(Kind::right) == AnswerIs::right);
    CHECK(close.by_angles(Kind::obtuse) == AnswerIs::right);
    CHECK(close.by_angles(Kind::acute) == AnswerIs::not_yet);
    close.challenge().right_within_deg = 0.1;
    CHECK(close.by_angles(Kind::right) == AnswerIs::right);
    CHECK(close.by_angles(Kind::acute) == AnswerIs::not_yet);
}

TEST_CASE("A perimeter is right, one step off nearly right, and one in another unit is pointed at") {
    Asking piece(triangle(1, 100, 80, 60));
    CHECK(piece.perimeter(240) == AnswerIs::right);
    CHECK(piece.perimeter(241) == AnswerIs::nearly);
    CHECK(piece.perimeter(239) == AnswerIs::nearly);
    CHECK(piece.perimeter(242) == AnswerIs::not_yet);
    CHECK(contains(piece.judge({.perimeter = length_from_mm(2400)}, Asked::perimeter)->says, "unit"));
    CHECK_FALSE(contains(piece.judge({.perimeter = length_from_mm(250)}, Asked::perimeter)->says, "unit"));
}

TEST_CASE("A perimeter may be the sum of what the pupils measured themselves") {
    Asking piece(triangle(1, 100, 80, 60));
    piece.builder.scene.pieces[0].by_hand.sides = {length_from_mm(100), length_from_mm(90), length_from_mm(60)};
    CHECK(piece.perimeter(250) == AnswerIs::right);
    CHECK(piece.perimeter(240) == AnswerIs::right);
    CHECK(piece.perimeter(245) == AnswerIs::not_yet);
}

TEST_CASE("Points are right, rounded ones too; what does not count scores nothing") {
    Asking piece(triangle(1, 100, 80, 60));
    CHECK(piece.points(24) == AnswerIs::right);
    CHECK(piece.points(24.1) == AnswerIs::nearly);
    CHECK(piece.points(25) == AnswerIs::not_yet);
    piece.challenge().limits.side.most = length_from_mm(90);
    CHECK(piece.points(0) == AnswerIs::right);
    CHECK(piece.points(24) == AnswerIs::nearly);
    CHECK(piece.points(10) == AnswerIs::not_yet);
}

TEST_CASE("Points by area are right to two decimals") {
    // Half of the longest side times its height, both measured: 9.5 times 5.4 halves (worked out by hand).
    Asking piece(triangle(1, 95, 72, 72));
    piece.challenge().score.by = ScoreBy::area;
    CHECK(piece.points(25.65) == AnswerIs::right);
    CHECK(piece.points(25.6) == AnswerIs::not_yet);
}

TEST_CASE("Kinds of a hexagon and points of the envelope are not asked for") {
    Asking quad(rectangle(1, 60, 40));
    CHECK_FALSE(quad.judge({.by_sides = Kind::scalene}, Asked::by_sides));
    CHECK(quad.judge({.perimeter = length_from_mm(200)}, Asked::perimeter)->judged == AnswerIs::right);
    Asking kept(triangle(1, 100, 80, 60), false);
    CHECK_FALSE(kept.judge({.points = 24.0}, Asked::points));
    CHECK_FALSE(kept.judge({}, Asked::by_sides));
}

TEST_CASE("What is said of a wrong answer never tells the right one") {
    Asking piece(triangle(1, 100, 80, 60));
    for (const Kind wrong : {Kind::equilateral, Kind::isosceles}) {
        const std::string says = piece.judge({.by_sides = wrong}, Asked::by_sides)->says;
        CHECK_FALSE(contains(says, "scalene"));
    }
    for (const Kind wrong : {Kind::acute, Kind::obtuse})
        CHECK_FALSE(contains(piece.judge({.by_angles = wrong}, Asked::by_angles)->says, "right"));
    CHECK_FALSE(contains(piece.judge({.perimeter = length_from_mm(30)}, Asked::perimeter)->says, "24"));
    CHECK_FALSE(contains(piece.judge({.points = 3.0}, Asked::points)->says, "24"));
}

TEST_CASE("All answers are listed by piece, with what was said and whether it is right") {
    SceneBuilder builder = with_level_branch();
    builder.challenge().units = Unit::cm;
    builder.hang(triangle(2, 90, 70, 70), under(20)).hang(triangle(1, 100, 80, 60), under(200));
    builder.scene.pieces[0].answers = {.by_sides = Kind::isosceles, .perimeter = length_from_mm(231)};
    builder.scene.pieces[1].answers = {.by_angles = Kind::acute, .points = 24.0};
    const std::vector<GivenAnswer> given = given_answers(builder.scene, builder.check());
    REQUIRE(given.size() == 4);
    CHECK(given[0].piece == PieceNumber{1});
    CHECK(given[0].about == Asked::by_angles);
    CHECK(given[0].answer == "acute");
    CHECK(given[0].judgement.judged == AnswerIs::not_yet);
    CHECK(given[1].answer == "24");
    CHECK(given[1].judgement.judged == AnswerIs::right);
    CHECK(given[2].answer == "isosceles");
    CHECK(given[3].answer == "23.1 cm");
    CHECK(given[3].judgement.judged == AnswerIs::nearly);
}

}  // namespace
}  // namespace boughwork::testing
