// SPDX-License-Identifier: MIT
#include "gui/web/page_text.h"

#include <cstdio>
#include <nlohmann/json.hpp>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/data_table.h"
#include "gui/picture/report_words.h"
#include "gui/window/picture_cards.h"
#include "gui/window/referee_panel.h"
#include "gui/window/table_columns.h"
#include "gui/window/table_row.h"
#include "gui/window/window.h"
#include "rules/told.h"

namespace boughwork {
namespace {

using nlohmann::ordered_json;

std::string json_text(const ordered_json& json) {
    return json.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

std::string score_line(const Session& session) {
    return is_told(session.scene(), Mathematics::points, session.plan()) ? score_words(session.report().score)
                                                                         : say("How many points? You add them up.");
}

std::string one_line(std::string words) {
    for (char& c : words)
        if (c == '\n') c = ' ';
    return words;
}

/// The columns that can be read; the rest is a picture, or fields to write in.
bool is_read(TablePart part) { return part != TablePart::shape && part != TablePart::by_hand; }

std::string cell_words(const TableRow& row, TablePart part) {
    if (part == TablePart::number) return std::to_string(row.number.value);
    if (part == TablePart::hangs_from) return row.hangs_from;
    if (part == TablePart::to_do) return row.to_do;
    const TableCell* cell = cell_of(row, part);
    if (!cell) return "";
    return cell->below.empty() ? cell->words : cell->words + ", " + cell->below;
}

ordered_json table_json(const Session& session) {
    const DataTable table = data_table(session.scene(), session.plan(), session.report(), session.table_order());
    const std::string unit = symbol_of(session.scene().challenge.units);
    ordered_json head = ordered_json::array();
    ordered_json rows = ordered_json::array();
    for (std::size_t i = 0; i < table_parts; ++i)
        if (const auto part = static_cast<TablePart>(i); is_read(part))
            head.push_back(one_line(heading_words(part, unit)));
    for (const TableRow& row : table.rows) {
        ordered_json cells = ordered_json::array();
        for (std::size_t i = 0; i < table_parts; ++i)
            if (const auto part = static_cast<TablePart>(i); is_read(part))
                cells.push_back(one_line(cell_words(row, part)));
        rows.push_back(std::move(cells));
    }
    return {{"head", std::move(head)},
            {"rows", std::move(rows)},
            {"counts", one_line(table.totals.counts)},
            {"score", one_line(table.totals.score.value_or(say("score: not told yet")))}};
}

std::string in_hex(Colour colour) {
    char text[10];
    std::snprintf(text, sizeof text, "#%02x%02x%02x%02x", colour.red, colour.green, colour.blue, colour.alpha);
    return text;
}

ordered_json places(const std::vector<Vec2>& points) {
    ordered_json list = ordered_json::array();
    for (const Vec2 point : points) list.insert(list.end(), {point.x, point.y});
    return list;
}

ordered_json json_of(const Fill& fill) { return {"fill", in_hex(fill.colour), places(fill.corners)}; }

ordered_json json_of(const Stroke& stroke) {
    return {"stroke", in_hex(stroke.colour), places(stroke.points), stroke.width, stroke.closed};
}

ordered_json json_of(const Text& text) {
    const char* align = text.align == TextAlign::left ? "left" : text.align == TextAlign::right ? "right" : "center";
    return {"text", in_hex(text.colour), places({text.at}), text.words, text.size, align};
}

}  // namespace

std::string verdict_as_json(const Session& session) {
    const Report& report = session.report();
    ordered_json findings = ordered_json::array();
    for (const Finding& finding : report.findings) findings.push_back(finding.says);
    ordered_json challenge = ordered_json::array();
    for (const PictureCard& card : picture_cards(session.scene(), report)) {
        const std::string met = !card.met ? "" : *card.met ? say("met") : say("not met");
        challenge.push_back({card.name, card.says, met});
    }
    return json_text({{"title", window_title(session)},
                      {"plan", session.plan().name},
                      {"score", score_line(session)},
                      {"counts", counts_words(report)},
                      {"referee", referee_words(session)},
                      {"findings", std::move(findings)},
                      {"challenge", std::move(challenge)},
                      {"table", table_json(session)}});
}

std::string page_words_as_json() {
    return json_text(
        {{"language", spoken() == Language::spanish ? "es" : "en"},
         {"whose", say("Whose plan is it?")},
         {"whoseHint", say("Every group has a place of its own in this browser, and sees no other.")},
         {"group", say("the group's name")},
         {"begin", say("begin")},
         {"goOn", say("go on")},
         {"takeHome", say("take a copy home")},
         {"wipe", say("wipe")},
         {"wipeSure", say("wipe all that {0} has here")},
         {"keepIt", say("keep it")},
         {"other", say("another group")},
         {"read", say("read the verdict")},
         {"hide", say("hide the verdict")},
         {"picture", say("save a picture")},
         {"print", say("print")},
         {"licences", say("licences")},
         {"close", say("close")},
         {"score", say("Score")},
         {"findings", say("What the referee found")},
         {"none", say("Nothing is wrong.")},
         {"challenge", say("The challenge asks")},
         {"table", say("Data table")},
         {"canvas", say("The planning table. Tab goes from one thing to the next, F1 tells all keys. To leave it press "
                        "Escape, then Tab.")},
         {"drop", say("Let go, and the file is opened.")},
         {"noStorage", say("This browser keeps nothing of this page. Save before you close it.")},
         {"fell", say("Something went wrong here. Load the page again: what you did is kept.")}});
}

std::string drawing_as_json(const Drawing& drawing) {
    ordered_json marks = ordered_json::array();
    for (const Mark& mark : drawing.marks)
        marks.push_back(std::visit([](const auto& one) { return json_of(one); }, mark));
    return json_text({{"width", drawing.width},
                      {"height", drawing.height},
                      {"paper", in_hex(drawing.paper)},
                      {"marks", std::move(marks)}});
}

}  // namespace boughwork
