// SPDX-License-Identifier: MIT
#pragma once
// Where the columns of the data table lie, as a pure function of its width and the scale.

#include <array>
#include <optional>
#include <string>

#include "gui/session/table_order.h"

namespace boughwork {

enum class TablePart {
    number,
    shape,
    sides,
    by_hand,
    by_sides,
    by_angles,
    perimeter,
    height,
    area,
    hangs_from,
    points,
    to_do,
};
inline constexpr std::size_t table_parts = 12;

struct TableColumn {
    TablePart part = TablePart::number;
    double x_px = 0;
    double width_px = 0;
};

/// From left to right, side by side, all of the width. What is left over beyond the least widths goes where
/// long words stand.
std::array<TableColumn, table_parts> table_columns(double left_px, double width_px, double scale);

/// By what a press on the heading sorts; shape and lengths by hand have no order.
std::optional<Column> sorts_by(TablePart part);
/// Numbers stand at the right of their column, under each other.
bool stands_right(TablePart part);
/// In English, for a heading's label: "perimeter".
const char* label_of(TablePart part);
/// The heading, in one or two lines; `unit` as "cm".
std::string heading_words(TablePart part, const std::string& unit);

}  // namespace boughwork
