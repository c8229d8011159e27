// SPDX-License-Identifier: MIT
#pragma once
// The data table as it is read: what stands in each cell, what waits for a pupil's answer, what is
// struck out, and the totals. The page (gui/window/table_panel.h) only gives it its places.

#include <optional>
#include <string>
#include <vector>

#include "gui/session/table_order.h"
#include "rules/answers.h"

namespace boughwork {

struct TableCell {
    enum class State {
        empty,  ///< The piece has no such thing.
        told,
        your_turn,  ///< Kept back until it is answered, and not answered.
        answered,   ///< A pupil's answer, while the program's own is kept back.
        kept_back,  ///< Nothing to answer here: it comes by measuring, or with an answer beside it.
    };
    State state = State::empty;
    std::string words;
    std::string below;  ///< A second line: "close call".
};

struct TableRow {
    PieceNumber number;
    PieceState state = PieceState::in_the_envelope;
    TableCell sides;
    TableCell by_sides;
    TableCell by_angles;
    TableCell perimeter;
    TableCell height;
    TableCell area;
    TableCell points;
    std::string hangs_from;
    std::string to_do;  ///< Why it does not count; what to measure or to answer again.
};

struct TableTotals {
    std::string counts;                    ///< "10 pieces hang, 9 count"
    std::optional<std::string> perimeter;  ///< Absent: kept back.
    std::optional<std::string> points;
    std::optional<std::string> score;  ///< "bonuses 21", and below it "score 108"
};

struct DataTable {
    std::vector<TableRow> rows;
    TableTotals totals;
};

DataTable data_table(const Scene& scene, const Plan& plan, const Report& report, TableOrder order);

const TableCell& cell_about(const TableRow& row, Asked what);

}  // namespace boughwork
