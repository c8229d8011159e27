// SPDX-License-Identifier: MIT
#pragma once
// Below the data table: a line plot of the sides, what the kinds mean here or what is to be looked at
// again, and the table as CSV, out and in.

#include <string>

#include "gui/window/cell_keys.h"
#include "gui/window/commands.h"

namespace boughwork {

struct TableFootWords {
    std::string problem;  ///< Before anything else.
    std::string hint;     ///< Else, if there is one.
};

void draw_table_foot(const Session& session, const TableFootWords& words, const PixelBox& box, CellKeys& keys,
                     Widgets& widgets, Commands& commands);

}  // namespace boughwork
