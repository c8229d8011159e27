// SPDX-License-Identifier: MIT
#pragma once
// One row of the data table on the screen.

#include <array>

#include "gui/picture/data_table.h"
#include "gui/window/cell_keys.h"
#include "gui/window/commands.h"
#include "gui/window/hand_fields.h"
#include "gui/window/table_columns.h"

namespace boughwork {

using TableColumns = std::array<TableColumn, table_parts>;
/// The largest in which all words of a column fit.
using TableFaces = std::array<Face, table_parts>;

inline constexpr double cell_pad_px = 6;
inline constexpr double cell_line_px = 21;

/// Words as narrow as their column, one below the other.
void write_in_cell(const std::vector<std::string>& lines, const TableColumn& column, double middle_y, Face face,
                   Colour colour, Widgets& widgets);

/// What stands in a row's cell, or nothing where it is more than words.
const TableCell* cell_of(const TableRow& row, TablePart part);

struct TableRowDrawing {
    const Session& session;
    const TableColumns& columns;
    const TableFaces& faces;
    HandFields& hand_fields;
    CellKeys& keys;
    Widgets& widgets;
    Commands& commands;
    PixelBox view;  ///< What lies outside is not drawn, and can still be reached.

    double height_px(const TableRow& row) const;
    void draw(const TableRow& row, const PixelBox& line);

private:
    void draw_part(const TableRow& row, const TableColumn& column, const PixelBox& box);
    void draw_cell(const TableRow& row, const TableCell& cell, const TableColumn& column, const PixelBox& box);
    void draw_question(const TableRow& row, const TableCell& cell, Asked what, const PixelBox& box);
    std::vector<std::string> to_do_lines(const TableRow& row) const;
};

}  // namespace boughwork
