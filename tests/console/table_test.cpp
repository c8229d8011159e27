// SPDX-License-Identifier: MIT
#include "gui/session/table_rows.h"

#include "rules/check.h"
#include "tests/console/run.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

using Row = std::vector<std::string>;

struct Table {
    std::vector<Row> rows;

    explicit Table(const Scene& scene) {
        const Plan& plan = current_plan(scene);
        rows = table_rows(scene, plan, boughwork::check(scene, plan));
    }
    /// Of the piece in that row, 1 for the first.
    std::string cell(std::size_t row, const std::string& column) const {
        const auto found = std::find(rows[0].begin(), rows[0].end(), column);
        INFO(column);
        REQUIRE(found != rows[0].end());
        return rows.at(row).at(static_cast<std::size_t>(found - rows[0].begin()));
    }
};

}  // namespace

TEST_CASE("The table has a row for each piece, hung or not, and as many cells in each") {
    const Table table(fair_scene());
    REQUIRE(table.rows.size() == 4);
    for (const Row& row : table.rows) CHECK(row.size() == table.rows[0].size());
    CHECK(table.rows[0] == Row{"number",    "side 1",     "side 2",     "side 3", "unit",       "by sides",
                               "by angles", "close call", "perimeter",  "height", "area",       "hangs from",
                               "state",     "reasons",    "points",     "note",   "kinds here", "by hand 1",
                               "by hand 2", "by hand 3",  "measured by"});
}

TEST_CASE("A piece that counts has its measures, what holds it and its points") {
    const Table table(fair_scene());
    // A 3-4-5 triangle of twenty times the size: perimeter 240 mm, area 2400 mm2, height on the longest side 48 mm.
    CHECK(table.cell(1, "side 1") == "10");
    CHECK(table.cell(1, "side 3") == "6");
    CHECK(table.cell(1, "unit") == "cm");
    CHECK(table.cell(1, "by sides") == "scalene");
    CHECK(table.cell(1, "by angles") == "right");
    CHECK(table.cell(1, "perimeter") == "24");
    CHECK(table.cell(1, "height") == "4.8");
    CHECK(table.cell(1, "area") == "24");
    CHECK(table.cell(1, "hangs from") == "b1");
    CHECK(table.cell(1, "state") == "counts");
    CHECK(table.cell(1, "reasons").empty());
    CHECK(table.cell(1, "points") == "24");
    CHECK(table.cell(1, "kinds here") ==
          "Here, an isosceles triangle has exactly two equal sides. Right means within 1 degree of 90.");
}

TEST_CASE("A piece that is struck out has its reasons and no points, one in the envelope says so") {
    const Table table(fair_scene());
    CHECK(table.cell(2, "hangs from") == "nothing");
    CHECK(table.cell(2, "state") == "does not count");
    CHECK(table.cell(2, "reasons") == "runs past the end");
    CHECK(table.cell(2, "points") == "0");
    CHECK(table.cell(3, "hangs from") == "in the envelope");
    CHECK(table.cell(3, "state") == "in the envelope");
    CHECK(table.cell(3, "note") == "=nice, \"red\" one");
}

TEST_CASE("A piece that hangs from a piece names it and its side; two reasons are both told") {
    SceneBuilder builder = with_level_branch();
    builder.challenge().depth_limit = 1;
    builder.hang(rectangle(1, 100, 40), under(20)).hang_from(1, 3, triangle(2, 90, 90, 90), {.from_mm = 5});
    builder.challenge().limits.side.most = length_from_mm(80);
    const Table table(builder.scene);
    CHECK(table.cell(2, "hangs from") == "piece 1, side 3");
    CHECK(contains(table.cell(2, "reasons"), "too deep"));
    CHECK(contains(table.cell(2, "reasons"), "; "));
}

TEST_CASE("Polygons and cones are named, have no kind, and leave the sides empty that they lack") {
    SceneBuilder builder;
    builder.keep(rectangle(1, 60, 60)).keep(cone(2, 25, 70)).keep(triangle(3, 80, 80, 80));
    const Table table(builder.scene);
    CHECK(table.cell(1, "by sides") == "square");
    CHECK(table.cell(1, "by angles").empty());
    CHECK(table.cell(1, "height").empty());
    CHECK(table.cell(1, "kinds here").empty());
    CHECK(table.cell(2, "by sides") == "cone");
    CHECK(table.cell(2, "side 1") == "50");
    CHECK(table.cell(3, "side 4").empty());
}

TEST_CASE("Inches are decimals in the table, so that a spreadsheet does not take them for dates") {
    SceneBuilder builder;
    builder.challenge().units = Unit::in;
    builder.challenge().step = {.numerator = 1, .denominator = 8, .unit = Unit::in};
    builder.keep(triangle(1, 25.4 * 2.5, 25.4 * 2.125, 25.4 * 2));
    const Table table(builder.scene);
    CHECK(table.cell(1, "side 1") == "2.5");
    CHECK(table.cell(1, "side 2") == "2.125");
    CHECK(table.cell(1, "unit") == "in");
}

TEST_CASE("A close call is said, and what the ruler cannot make is noted") {
    SceneBuilder builder;
    builder.keep(triangle(1, 95, 80, 50));  // 90.9 degrees: right by a protractor, not by calculation
    CHECK(Table(builder.scene).cell(1, "close call") == "close call");
    CHECK(Table(builder.scene).cell(1, "by angles") == "right");

    SceneBuilder rounded;
    rounded.challenge().step = {.numerator = 10, .denominator = 1, .unit = Unit::mm};
    rounded.keep(triangle(1, 44, 44, 86));  // measured 4, 4, 9 cm: no triangle (triangle inequality)
    CHECK(contains(Table(rounded.scene).cell(1, "note"), "rounded sides can't make this triangle"));
}

TEST_CASE("table --csv prints the rows as RFC 4180 has it, with formulas defused") {
    const Folder folder;
    const Ran ran = run({"table", folder.with("a.bough.json", fair_scene()), "--csv"});
    CHECK(ran.exit_code == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out.rfind("number,side 1,side 2,side 3,unit,", 0) == 0);
    CHECK(contains(ran.out, "\r\n1,10,8,6,cm,scalene,right,,24,4.8,24,b1,counts,,24,,"));
    CHECK(contains(ran.out, ",\"'=nice, \"\"red\"\" one\","));
    CHECK(std::count(ran.out.begin(), ran.out.end(), '\n') == 4);
}

TEST_CASE("What pupils measured, and who, stands behind all else, as exactly as they wrote it") {
    SceneBuilder builder = with_level_branch();
    builder.challenge().units = Unit::cm;
    builder.keep(triangle(1, 100, 80, 60)).keep(rectangle(2, 60, 40));
    builder.scene.pieces[0].by_hand = {.sides = {length_from_mm(100.5), std::nullopt, length_from_mm(60)},
                                       .by = "moon"};
    const Table table(builder.scene);
    CHECK(table.cell(1, "by hand 1") == "10.05");
    CHECK(table.cell(1, "by hand 2").empty());
    CHECK(table.cell(1, "by hand 3") == "6");
    CHECK(table.cell(1, "by hand 4").empty());
    CHECK(table.cell(1, "measured by") == "moon");
    CHECK(table.rows[0].back() == "measured by");
}

TEST_CASE("What is kept back is left empty where pupils look, and the console gives it all the same") {
    Scene scene = fair_scene();
    scene.challenge.shown = {.lengths = Shows::after_an_answer,
                             .kinds = Shows::after_an_answer,
                             .sums = Shows::after_the_lesson,
                             .points = Shows::after_the_lesson};
    scene.pieces[0].answers = {.by_sides = Kind::scalene, .by_angles = Kind::right};
    const Plan& plan = current_plan(scene);
    const Report report = boughwork::check(scene, plan);
    const auto kept = table_rows(scene, plan, report, Telling::what_is_told);
    CHECK(kept[1] == Row{"1",  "",       "", "", "cm", "scalene",   "right", "", "", "", "",
                         "b1", "counts", "", "", "",   kept[1][16], "",      "", "", ""});
    CHECK(kept[2][5].empty());
    CHECK(Table(scene).cell(2, "by sides") == "equilateral");
    CHECK(Table(scene).cell(1, "points") == "24");
}
