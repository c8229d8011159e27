// SPDX-License-Identifier: MIT
#include "gui/session/table_order.h"

#include "tests/rules/scene_builder.h"
#include "tests/session/fair_table.h"

using namespace boughwork;
using boughwork::testing::SceneBuilder;

namespace {

/// Five pieces: 1, 2 and 4 hang, 5 hangs from nothing, 3 waits.
SceneBuilder fair() {
    using namespace boughwork::testing;
    SceneBuilder builder = with_level_branch();
    builder.branch("b2", {{0, 804}, {400, 804}});
    builder.hang(triangle(4, 60, 50, 40), under(20)).hang(triangle(2, 90, 70, 70), under(200));
    builder.hang(triangle(1, 80, 80, 80), {.at_mm = {20, 800}});
    builder.keep(triangle(3, 100, 80, 60)).hang(triangle(5, 50, 40, 30), {.at_mm = {200, 700}});
    return builder;
}

std::vector<int> order(const SceneBuilder& builder, Column by, bool backwards = false) {
    return boughwork::testing::values(in_order(builder.scene, builder.check(), {by, backwards}));
}

}  // namespace

TEST_CASE("The table is ordered by every column, either way, equal ones by number") {
    const SceneBuilder builder = fair();
    CHECK(order(builder, Column::number) == std::vector{1, 2, 3, 4, 5});
    CHECK(order(builder, Column::number, true) == std::vector{5, 4, 3, 2, 1});
    CHECK(order(builder, Column::sides) == std::vector{5, 4, 1, 2, 3});
    CHECK(order(builder, Column::perimeter) == std::vector{5, 4, 2, 1, 3});
    CHECK(order(builder, Column::perimeter, true) == std::vector{1, 3, 2, 4, 5});
    CHECK(order(builder, Column::area).front() == 5);
    CHECK(order(builder, Column::height).front() == 5);
    CHECK(order(builder, Column::by_sides) == std::vector{1, 2, 3, 4, 5});
    CHECK(order(builder, Column::by_angles) == std::vector{3, 5, 1, 2, 4});
    CHECK(order(builder, Column::hangs_from) == std::vector{2, 4, 1, 5, 3});
    CHECK(order(builder, Column::to_do).front() == 5);
}

TEST_CASE("What has no value comes last either way") {
    const SceneBuilder builder = fair();
    CHECK(order(builder, Column::points) == std::vector{5, 4, 2, 1, 3});
    CHECK(order(builder, Column::points, true) == std::vector{1, 2, 4, 5, 3});
    CHECK(order(builder, Column::hangs_from, true).back() == 3);
}

TEST_CASE("What is kept back orders nothing, so that the order does not tell it") {
    SceneBuilder builder = fair();
    builder.challenge().shown = {.lengths = Shows::after_the_lesson,
                                 .kinds = Shows::after_the_lesson,
                                 .sums = Shows::after_an_answer,
                                 .points = Shows::after_the_lesson};
    const std::vector by_number{1, 2, 3, 4, 5};
    for (const Column column : {Column::sides, Column::by_sides, Column::by_angles, Column::perimeter, Column::height,
                                Column::area, Column::points}) {
        CHECK(order(builder, column) == by_number);
        CHECK(order(builder, column, true) == by_number);
    }
    for (Piece& piece : builder.scene.pieces)
        if (piece.number.value == 3) piece.answers.perimeter = length_from_mm(1);
    CHECK(order(builder, Column::perimeter) == std::vector{3, 1, 2, 4, 5});
}

TEST_CASE("A second press on a heading turns the order round, a third turns it back") {
    FairTable table;
    table.session.perform(SortTable{Column::area});
    CHECK(table.session.table_order() == TableOrder{Column::area, false});
    table.session.perform(SortTable{Column::area});
    CHECK(table.session.table_order() == TableOrder{Column::area, true});
    table.session.perform(SortTable{Column::area});
    CHECK(table.session.table_order() == TableOrder{Column::area, false});
    table.session.perform(SortTable{Column::points});
    CHECK(table.session.table_order() == TableOrder{Column::points, false});
}
