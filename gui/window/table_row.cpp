// SPDX-License-Identifier: MIT
#include "gui/window/table_row.h"

#include <algorithm>

#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/picture/told_report.h"
#include "gui/window/dotted_box.h"
#include "gui/window/layout.h"

namespace boughwork {
namespace {

constexpr double row_px = 46;
constexpr double fields_line_px = 38;
constexpr std::size_t most_to_do_lines = 4;  // of what is to do

std::optional<Asked> asked_in(TablePart part) {
    switch (part) {
        case TablePart::by_sides: return Asked::by_sides;
        case TablePart::by_angles: return Asked::by_angles;
        case TablePart::perimeter: return Asked::perimeter;
        case TablePart::points: return Asked::points;
        default: return std::nullopt;
    }
}

std::string label_of(PieceNumber piece, Asked what) {
    const std::string about = "piece " + std::to_string(piece.value);
    switch (what) {
        case Asked::by_sides: return about + " by sides";
        case Asked::by_angles: return about + " by angles";
        case Asked::perimeter: return about + " perimeter";
        case Asked::points: return about + " points";
    }
    return about;
}

}  // namespace

void write_in_cell(const std::vector<std::string>& lines, const TableColumn& column, double middle_y, Face face,
                   Colour colour, Widgets& widgets) {
    const bool right = stands_right(column.part);
    const double pad = widgets.px(cell_pad_px);
    const double pitch = widgets.px(cell_line_px);
    double y = middle_y - pitch * (static_cast<double>(lines.size()) - 1) / 2;
    for (const std::string& words : lines) {
        widgets.write({right ? column.x_px + column.width_px - pad : column.x_px + pad, y}, words, face, colour,
                      right ? TextAlign::right : TextAlign::left);
        y += pitch;
    }
}

const TableCell* cell_of(const TableRow& row, TablePart part) {
    switch (part) {
        case TablePart::sides: return &row.sides;
        case TablePart::by_sides: return &row.by_sides;
        case TablePart::by_angles: return &row.by_angles;
        case TablePart::perimeter: return &row.perimeter;
        case TablePart::height: return &row.height;
        case TablePart::area: return &row.area;
        case TablePart::points: return &row.points;
        default: return nullptr;
    }
}

std::vector<std::string> TableRowDrawing::to_do_lines(const TableRow& row) const {
    const double room = columns.back().width_px - 2 * widgets.px(cell_pad_px);
    return widgets.lettering().lines(row.to_do, Face::small, room, most_to_do_lines).words;
}

double TableRowDrawing::height_px(const TableRow& row) const {
    const auto words = static_cast<double>(to_do_lines(row).size());
    const auto fields = static_cast<double>(HandFields::lines(*find_piece(session.scene(), row.number)));
    return std::max(
        {widgets.px(row_px), words * widgets.px(cell_line_px) + widgets.px(8), fields * widgets.px(fields_line_px)});
}

void TableRowDrawing::draw(const TableRow& row, const PixelBox& line) {
    if (row.state == PieceState::in_the_envelope) widgets.sheet(line, palette::ruler, 0);
    keys.begin_line();
    for (const TableColumn& column : columns)
        draw_part(row, column, {column.x_px, line.y, column.width_px, line.height});
    const double foot = line.y + line.height;
    widgets.draw({Stroke{{{line.x, foot}, {line.x + line.width, foot}}, palette::squared_line, widgets.scale()}});
}

void TableRowDrawing::draw_part(const TableRow& row, const TableColumn& column, const PixelBox& box) {
    const Piece& piece = *find_piece(session.scene(), row.number);
    const Face face = faces[static_cast<std::size_t>(column.part)];
    switch (column.part) {
        case TablePart::number:
            widgets.write(middle(box), std::to_string(row.number.value), Face::body, palette::ink, TextAlign::centre);
            return;
        case TablePart::shape: {
            if (box.y > view.y + view.height || box.y + box.height < view.y) return;
            PieceReport report = as_told(session.scene(), piece, *find_piece(session.report(), row.number));
            report.number = {};                            // it stands in the column before
            const double height = widgets.px(row_px + 8);  // its margin may reach beyond the row
            widgets.draw(piece_card(piece.shape, report,
                                    {box.x, middle(box).y - height / 2, box.width - widgets.px(4), height},
                                    widgets.scale()));
            return;
        }
        case TablePart::by_hand:
            for (const std::string& label : hand_fields.draw(session, piece, box, widgets, commands)) keys.reach(label);
            return;
        case TablePart::hangs_from:
            write_in_cell(widgets.lettering().lines(row.hangs_from, face, box.width - widgets.px(cell_pad_px), 2).words,
                          column, middle(box).y, face, palette::ink, widgets);
            return;
        case TablePart::to_do:
            write_in_cell(to_do_lines(row), column, middle(box).y, Face::small, palette::ink, widgets);
            return;
        default: break;
    }
    const TableCell& cell = *cell_of(row, column.part);
    const std::optional<Asked> what = asked_in(column.part);
    if (what && (cell.state == TableCell::State::your_turn || cell.state == TableCell::State::answered))
        draw_question(row, cell, *what, box);
    else
        draw_cell(row, cell, column, box);
}

void TableRowDrawing::draw_cell(const TableRow& row, const TableCell& cell, const TableColumn& column,
                                const PixelBox& box) {
    const Face face = faces[static_cast<std::size_t>(column.part)];
    const bool told = cell.state == TableCell::State::told;
    std::vector<std::string> lines =
        widgets.lettering().lines(cell.words, face, box.width - widgets.px(cell_pad_px), 3).words;
    double y = middle(box).y;
    if (!cell.below.empty()) {
        y -= widgets.px(cell_line_px) / 2;
        write_in_cell({widgets.fitted(cell.below, Face::small, box.width - widgets.px(cell_pad_px))}, column,
                      y + widgets.px(cell_line_px), Face::small, palette::quiet_text, widgets);
    }
    write_in_cell(lines, column, y, face, told ? palette::ink : palette::quiet_text, widgets);
    if (!told || row.state != PieceState::does_not_count || column.part == TablePart::points) return;

    // Struck out, and still to be read.
    const double beyond = widgets.px(4);
    const double pitch = widgets.px(cell_line_px);
    y -= pitch * (static_cast<double>(lines.size()) - 1) / 2;
    for (const std::string& words : lines) {
        const double width = widgets.lettering().width_px(words, face);
        const double from = stands_right(column.part) ? box.x + box.width - widgets.px(cell_pad_px) - width
                                                      : box.x + widgets.px(cell_pad_px);
        widgets.draw({Stroke{{{from - beyond, y}, {from + width + beyond, y}}, palette::ink, 1.5 * widgets.scale()}});
        y += pitch;
    }
}

void TableRowDrawing::draw_question(const TableRow& row, const TableCell& cell, Asked what, const PixelBox& box) {
    const double height = widgets.px(36);
    const double pad = widgets.px(5);
    const PixelBox target{box.x + pad, middle(box).y - height / 2, box.width - 2 * pad, height};
    const std::string label = label_of(row.number, what);
    if (widgets.area(label, target).pressed) commands.push_back(Ask{row.number, what});
    keys.reach(label);
    draw_dotted_box(target, widgets);
    const std::vector<std::string> lines =
        widgets.lettering().lines(cell.words, Face::small, target.width - widgets.px(4), 2).words;
    const double pitch = widgets.px(17);
    double y = middle(target).y - pitch * (static_cast<double>(lines.size()) - 1) / 2;
    for (const std::string& words : lines) {
        widgets.write({middle(target).x, y}, words, Face::small,
                      cell.state == TableCell::State::your_turn ? palette::quiet_text : palette::ink,
                      TextAlign::centre);
        y += pitch;
    }
}

}  // namespace boughwork
