// SPDX-License-Identifier: MIT
#pragma once
// In which order the data table lists the pieces. A value that is kept back orders nothing, or the
// order would tell it.

#include <vector>

#include "rules/report.h"

namespace boughwork {

enum class Column { number, sides, by_sides, by_angles, perimeter, height, area, hangs_from, points, to_do };

struct TableOrder {
    Column by = Column::number;
    bool backwards = false;
    friend bool operator==(const TableOrder&, const TableOrder&) = default;
};

/// A column's heading was pressed: by that column, or, when it is so already, the other way.
TableOrder pressed(TableOrder order, Column column);

/// Every piece of the report once: by their longest side, by name of their kind, by what holds them ...
/// What has no such value comes last either way; equal ones stand by number.
std::vector<PieceNumber> in_order(const Scene& scene, const Report& report, TableOrder order);

}  // namespace boughwork
