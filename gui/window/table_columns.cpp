// SPDX-License-Identifier: MIT
#include "gui/window/table_columns.h"

#include <algorithm>

#include "engine/words/say.h"

namespace boughwork {
namespace {

struct Widths {
    TablePart part;
    double least_px;  ///< At scale 1; all together as wide as the smallest page.
    double share;     ///< Of what is left over.
};
constexpr std::array<Widths, table_parts> widths{{{TablePart::number, 48, 0.2},
                                                  {TablePart::shape, 52, 0.6},
                                                  {TablePart::sides, 96, 0.8},
                                                  {TablePart::by_hand, 172, 1.2},
                                                  {TablePart::by_sides, 90, 0.8},
                                                  {TablePart::by_angles, 98, 0.6},
                                                  {TablePart::perimeter, 80, 0.3},
                                                  {TablePart::height, 54, 0.3},
                                                  {TablePart::area, 58, 0.3},
                                                  {TablePart::hangs_from, 82, 1.6},
                                                  {TablePart::points, 70, 0.3},
                                                  {TablePart::to_do, 78, 3}}};

}  // namespace

std::array<TableColumn, table_parts> table_columns(double left_px, double width_px, double scale) {
    double least = 0;
    double shares = 0;
    for (const Widths& column : widths) {
        least += column.least_px * scale;
        shares += column.share;
    }
    const double more = std::max(0.0, width_px - least);
    std::array<TableColumn, table_parts> columns;
    double x = left_px;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double width = widths[i].least_px * scale + more * widths[i].share / shares;
        columns[i] = {widths[i].part, x, width};
        x += width;
    }
    return columns;
}

std::optional<Column> sorts_by(TablePart part) {
    switch (part) {
        case TablePart::number: return Column::number;
        case TablePart::sides: return Column::sides;
        case TablePart::by_sides: return Column::by_sides;
        case TablePart::by_angles: return Column::by_angles;
        case TablePart::perimeter: return Column::perimeter;
        case TablePart::height: return Column::height;
        case TablePart::area: return Column::area;
        case TablePart::hangs_from: return Column::hangs_from;
        case TablePart::points: return Column::points;
        case TablePart::to_do: return Column::to_do;
        case TablePart::shape:
        case TablePart::by_hand: break;
    }
    return std::nullopt;
}

bool stands_right(TablePart part) {
    return part == TablePart::perimeter || part == TablePart::height || part == TablePart::area ||
           part == TablePart::points;
}

const char* label_of(TablePart part) {
    switch (part) {
        case TablePart::number: return "number";
        case TablePart::shape: return "shape";
        case TablePart::sides: return "sides";
        case TablePart::by_hand: return "by hand";
        case TablePart::by_sides: return "kind by sides";
        case TablePart::by_angles: return "kind by angles";
        case TablePart::perimeter: return "perimeter";
        case TablePart::height: return "height";
        case TablePart::area: return "area";
        case TablePart::hangs_from: return "place";
        case TablePart::points: return "points";
        case TablePart::to_do: return "to do";
    }
    return "";
}

std::string heading_words(TablePart part, const std::string& unit) {
    switch (part) {
        case TablePart::number: return say("No.");
        case TablePart::shape: return say("shape");
        case TablePart::sides: return say("sides as planned, {0}", {unit});
        case TablePart::by_hand: return say("measured by hand, {0}", {unit});
        case TablePart::by_sides: return say("by sides");
        case TablePart::by_angles: return say("by angles");
        case TablePart::perimeter: return say("perimeter") + "\n" + unit;
        case TablePart::height: return say("height") + "\n" + unit;
        case TablePart::area: return say("area") + "\n" + unit + "²";
        case TablePart::hangs_from: return say("hangs from");
        case TablePart::points: return say("points");
        case TablePart::to_do: return say("to do");
    }
    return "";
}

}  // namespace boughwork
