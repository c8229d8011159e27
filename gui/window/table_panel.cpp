// SPDX-License-Identifier: MIT
#include "gui/window/table_panel.h"

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/table_foot.h"

namespace boughwork {
namespace {

constexpr double headings_px = 52;
constexpr double totals_px = 48;
constexpr double foot_px = 156;
constexpr double scroll_bar_px = 14;

void draw_line(const PixelBox& box, double y, double width, Widgets& widgets) {
    widgets.draw({Stroke{{{box.x, y}, {box.x + box.width, y}}, palette::ink, width}});
}

}  // namespace

void TablePanel::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    hand_fields_.begin_frame();
    keys_.begin_frame();
    const DataTable table = data_table(session.scene(), session.plan(), session.report(), session.table_order());
    const double gap = widgets.px(8);
    const double foot = widgets.px(foot_px);
    PixelBox sheet = layout.sheet;
    sheet.height -= foot + gap;
    widgets.sheet(sheet, palette::paper);
    const double edge = widgets.px(4);
    const TableColumns columns =
        table_columns(sheet.x + edge, sheet.width - edge - widgets.px(scroll_bar_px), widgets.scale());
    choose_faces(table, columns, widgets);

    const PixelBox headings{sheet.x, sheet.y, sheet.width, widgets.px(headings_px)};
    const PixelBox totals{sheet.x, sheet.y + sheet.height - widgets.px(totals_px), sheet.width, widgets.px(totals_px)};
    const double top = headings.y + headings.height + widgets.px(2);
    draw_headings(session, columns, headings, widgets, commands);
    const PixelBox rows{sheet.x, top, sheet.width, totals.y - top};
    draw_rows(table, {session, columns, faces_, hand_fields_, keys_, widgets, commands, rows}, rows);
    draw_totals(table.totals, columns, totals, widgets);

    const std::optional<Problem>& typed = hand_fields_.problem();
    const std::optional<Problem>& problem = typed ? typed : session.problem();
    draw_table_foot(session, {problem ? in_words(*problem) : "", hand_fields_.measure_again(session)},
                    {sheet.x, sheet.y + sheet.height + gap, sheet.width, foot}, keys_, widgets, commands);
}

void TablePanel::choose_faces(const DataTable& table, const TableColumns& columns, const Widgets& widgets) {
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const TablePart part = columns[i].part;
        const double room = columns[i].width_px - 2 * widgets.px(cell_pad_px);
        const bool all = std::all_of(table.rows.begin(), table.rows.end(), [&](const TableRow& row) {
            const TableCell* cell = cell_of(row, part);
            const std::string& words = cell ? cell->words : row.hangs_from;
            return widgets.lettering().width_px(words, Face::body) <= room;
        });
        faces_[i] = all ? Face::body : Face::small;
    }
}

void TablePanel::draw_headings(const Session& session, const TableColumns& columns, const PixelBox& box,
                               Widgets& widgets, Commands& commands) {
    keys_.begin_line();
    const std::string unit = symbol_of(session.scene().challenge.units);
    const double pad = widgets.px(cell_pad_px);
    for (const TableColumn& column : columns) {
        const PixelBox cell{column.x_px, box.y, column.width_px, box.height};
        const std::optional<Column> sorts = sorts_by(column.part);
        if (sorts) {
            const std::string label = std::string("sort by ") + label_of(column.part);
            if (widgets.area(label, cell).pressed) commands.push_back(SortTable{*sorts});
            keys_.reach(label);
        }
        std::string words = heading_words(column.part, unit);
        if (sorts && session.table_order().by == *sorts) {
            words += session.table_order().backwards ? " ↑" : " ↓";
            widgets.sheet({cell.x + pad, cell.y + cell.height - widgets.px(5), cell.width - 2 * pad, widgets.px(5)},
                          palette::ink, 0);
        }
        double room = cell.width - pad;
        if (column.part == TablePart::by_hand) {
            const double sign = widgets.px(HandFields::sign_px);
            const std::string who = say("who");
            const double half = widgets.lettering().width_px(who, Face::small) / 2;
            const double who_x = cell.x + cell.width - sign / 2 - widgets.px(8);
            room = who_x - half - 2 * pad - cell.x;  // so that the two are not read as one
            widgets.write({who_x, middle(cell).y}, who, Face::small, palette::ink, TextAlign::centre);
        }
        write_in_cell(widgets.lettering().lines(words, Face::small, room, 2).words, column, middle(cell).y, Face::small,
                      palette::ink, widgets);
    }
    draw_line(box, box.y + box.height, 2 * widgets.scale(), widgets);
}

void TablePanel::draw_rows(const DataTable& table, TableRowDrawing drawing, const PixelBox& box) {
    Widgets& widgets = drawing.widgets;
    if (table.rows.empty()) {
        widgets.write({box.x + widgets.px(20), box.y + widgets.px(30)}, say("There are no pieces yet."), Face::body,
                      palette::quiet_text);
        return;
    }
    std::vector<double> heights;
    double sum = 0;
    for (const TableRow& row : table.rows) {
        heights.push_back(drawing.height_px(row));
        sum += heights.back();
    }
    const Vec2 start = widgets.begin_scroll("table rows", box, sum);
    PixelBox line{start.x, start.y, box.width - widgets.px(scroll_bar_px), 0};
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        line.height = heights[i];
        drawing.draw(table.rows[i], line);
        line.y += line.height;
    }
    widgets.end_scroll();
}

void TablePanel::draw_totals(const TableTotals& totals, const TableColumns& columns, const PixelBox& box,
                             Widgets& widgets) {
    draw_line(box, box.y, 2 * widgets.scale(), widgets);
    const double y = middle(box).y;
    for (const TableColumn& column : columns) {
        if (column.part == TablePart::perimeter)
            write_in_cell({totals.perimeter.value_or("…")}, column, y, Face::body, palette::ink, widgets);
        if (column.part == TablePart::points)
            write_in_cell({totals.points.value_or("…")}, column, y, Face::body, palette::ink, widgets);
    }
    const TableColumn& last = columns.back();
    const std::string score = totals.score.value_or(say("score: not told yet"));
    const double room = last.width_px;  // and the scroll bar's place beside it
    const bool large = widgets.lettering().lines(score, Face::body, room, 3).words.size() <= 2;
    const Face face = large ? Face::body : Face::small;
    const Lines lines = widgets.lettering().lines(score, face, room, 2);
    if (!lines.shortened) write_in_cell(lines.words, last, y, face, palette::ink, widgets);
    // Where its column is too narrow the score stands at the left, behind the counts.
    std::string counts = totals.counts;
    if (lines.shortened) counts += "\n" + score;
    for (std::size_t end = counts.find('\n'); end != std::string::npos; end = counts.find('\n'))
        counts.replace(end, 1, " · ");
    widgets.write({box.x + widgets.px(16), y}, counts, Face::body, palette::ink);
}

bool TablePanel::follow_key(const KeyPress& press, const Layout& layout, Widgets& widgets) const {
    if (keys_.follow(press, widgets)) return true;
    const double page = layout.sheet.height / 2;
    const double row = layout.px(palette::target_px);
    switch (press.key) {
        case SDLK_PAGEUP: widgets.scroll_by_keys(-page); return true;
        case SDLK_PAGEDOWN: widgets.scroll_by_keys(page); return true;
        case SDLK_UP: widgets.scroll_by_keys(-row); return true;
        case SDLK_DOWN: widgets.scroll_by_keys(row); return true;
        default: return false;
    }
}

}  // namespace boughwork
