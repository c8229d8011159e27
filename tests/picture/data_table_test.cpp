// SPDX-License-Identifier: MIT
#include "gui/picture/data_table.h"

#include "gui/picture/symbols.h"
#include "rules/hand_measured.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;
using State = TableCell::State;

namespace {

/// 1 counts, 2 is past the branch's end, 3 waits, 4 is a rectangle that waits.
SceneBuilder fair() {
    SceneBuilder builder = with_level_branch();
    builder.challenge().units = Unit::cm;
    builder.challenge().score.bonuses = {{.for_what = PerPiece{Kind::right}, .points = 5}};
    builder.hang(triangle(1, 100, 80, 60), under(20)).hang(triangle(2, 80, 80, 80), under(340));
    builder.keep(triangle(3, 95, 80, 50)).keep(rectangle(4, 60, 40));
    return builder;
}

DataTable table_of(const SceneBuilder& builder) {
    return data_table(builder.scene, current_plan(builder.scene), builder.check(), {});
}

}  // namespace

TEST_CASE("A row says what a piece is, what holds it and why it does not count") {
    const DataTable table = table_of(fair());
    REQUIRE(table.rows.size() == 4);
    const TableRow& one = table.rows[0];
    CHECK(one.sides.words == "10  8  6");
    CHECK(one.by_sides.words == "scalene");
    CHECK(one.by_angles.words == "right");
    CHECK(one.perimeter.words == "24");
    CHECK(one.height.words == "4.8");
    CHECK(one.area.words == "24");
    CHECK(one.points.words == "24");
    CHECK(one.hangs_from == "branch b1");
    CHECK(one.to_do.empty());
    CHECK(table.rows[1].state == PieceState::does_not_count);
    CHECK(table.rows[1].to_do == "runs past the end");
    CHECK(table.rows[1].points.words == "0");
    CHECK(table.rows[2].hangs_from == "in the envelope");
    CHECK(table.rows[2].by_angles.below == "close call");
    CHECK(table.rows[2].points.words == "–");
    CHECK(table.rows[3].by_sides.words == "quadrilateral");
    CHECK(table.rows[3].by_angles.state == State::empty);
    CHECK(table.rows[3].height.state == State::empty);
}

TEST_CASE("The totals are the report's: what hangs, what counts, perimeters, points, bonuses and score") {
    const SceneBuilder builder = fair();
    const DataTable table = table_of(builder);
    CHECK(table.totals.counts == "hanging: 1, counting: 1");
    CHECK(table.totals.perimeter == "24");
    CHECK(table.totals.points == "24");
    CHECK(table.totals.score == "bonuses 5\nscore 29");
    CHECK(builder.check().score == 29);
}

TEST_CASE("What is kept back is asked for, then shows the answer, then what the program says") {
    SceneBuilder builder = fair();
    builder.challenge().shown = {.lengths = Shows::after_an_answer,
                                 .kinds = Shows::after_an_answer,
                                 .sums = Shows::after_an_answer,
                                 .points = Shows::after_an_answer};
    const DataTable before = table_of(builder);
    for (const Asked what : all_asked) {
        CHECK(cell_about(before.rows[0], what).state == State::your_turn);
        CHECK(cell_about(before.rows[0], what).words == "your turn");
    }
    CHECK(before.rows[0].sides.state == State::kept_back);
    CHECK(before.rows[0].height.state == State::kept_back);
    CHECK(before.rows[0].area.state == State::kept_back);
    CHECK(before.rows[2].by_angles.below.empty());
    CHECK(before.rows[2].points.state == State::told);
    CHECK_FALSE(before.totals.perimeter);
    CHECK_FALSE(before.totals.points);
    CHECK_FALSE(before.totals.score);

    builder.scene.pieces[0].answers.by_sides = Kind::isosceles;
    CHECK(table_of(builder).rows[0].by_sides.state == State::answered);
    CHECK(table_of(builder).rows[0].by_sides.words == "isosceles");
    CHECK(table_of(builder).rows[0].to_do == "by sides: not yet");
    builder.scene.pieces[0].answers.by_angles = Kind::right;
    CHECK(table_of(builder).rows[0].by_sides.words == "scalene");
    CHECK(table_of(builder).rows[0].to_do == "by sides: you said isosceles");
    builder.scene.pieces[0].answers.perimeter = length_from_mm(240);
    CHECK(table_of(builder).rows[0].height.words == "4.8");
}

TEST_CASE("A slip of the ruler is something to do, and tells no length") {
    SceneBuilder builder = fair();
    builder.scene.pieces[0].by_hand.sides = {length_from_mm(100), length_from_mm(90), std::nullopt};
    CHECK(table_of(builder).rows[0].to_do == "measure side 2 again");
}

TEST_CASE("Every sign of those who measure is drawn, within its square, each its own way") {
    for (const char* name : hand_symbols) {
        INFO(name);
        const std::vector<Mark> marks = symbol_marks(name, {50, 50}, 20);
        REQUIRE_FALSE(marks.empty());
        const auto inside = [](const std::vector<Vec2>& corners) {
            for (const Vec2 at : corners) {
                CHECK(at.x >= 39.5);
                CHECK(at.x <= 60.5);
                CHECK(at.y >= 39.5);
                CHECK(at.y <= 60.5);
            }
        };
        for (const Mark& mark : marks) {
            if (const auto* fill = std::get_if<Fill>(&mark)) inside(fill->corners);
            if (const auto* stroke = std::get_if<Stroke>(&mark)) inside(stroke->points);
        }
    }
    CHECK(symbol_marks("Anna", {50, 50}, 20).empty());
}
