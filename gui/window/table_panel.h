// SPDX-License-Identifier: MIT
#pragma once
// The data table page: every piece in a row, what waits for the pupils' own measuring and answering,
// the totals, and below them a line plot, the definitions in force and the table as CSV.

#include "gui/window/layout.h"
#include "gui/window/table_row.h"

namespace boughwork {

class TablePanel {
public:
    void draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands);
    /// Arrows go from cell to cell, page up and down scroll; true when the key was one of these.
    bool follow_key(const KeyPress& press, const Layout& layout, Widgets& widgets) const;

private:
    void choose_faces(const DataTable& table, const TableColumns& columns, const Widgets& widgets);
    void draw_headings(const Session& session, const TableColumns& columns, const PixelBox& box, Widgets& widgets,
                       Commands& commands);
    void draw_rows(const DataTable& table, TableRowDrawing drawing, const PixelBox& box);
    static void draw_totals(const TableTotals& totals, const TableColumns& columns, const PixelBox& box,
                            Widgets& widgets);

    HandFields hand_fields_;
    CellKeys keys_;
    TableFaces faces_{};
};

}  // namespace boughwork
