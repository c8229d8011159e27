// SPDX-License-Identifier: MIT
#include "gui/console/table_rows.h"

#include <algorithm>
#include <cassert>
#include <cstdio>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/report_words.h"
#include "rules/description.h"
#include "rules/measure.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

std::string decimal(double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.12g", value);
    return text;
}

void add(std::string& words, const std::string& more) {
    if (more.empty()) return;
    words += (words.empty() ? "" : "; ") + more;
}

std::size_t most_sides(const Report& report) {
    std::size_t most = 0;
    for (const PieceReport& piece : report.pieces) most = std::max(most, piece.measures.sides_in_steps.size());
    return most;
}

std::vector<std::string> heading(std::size_t sides) {
    std::vector<std::string> row{"number"};
    for (std::size_t i = 1; i <= sides; ++i) row.push_back("side " + std::to_string(i));
    for (const char* name : {"unit", "by sides", "by angles", "close call", "perimeter", "height", "area", "hangs from",
                             "state", "reasons", "points", "note", "kinds here"})
        row.push_back(name);
    return row;
}

std::vector<std::string> row_of(const PieceReport& piece, std::size_t sides, const Scene& scene, const Plan& plan) {
    const Challenge& challenge = scene.challenge;
    const Measures& m = piece.measures;
    const Piece* made = find_piece(scene, piece.number);
    assert(made && "the report is on pieces of this scene");
    const Description told = describe(made->shape, m, challenge);
    const auto length = [&](std::int64_t steps) { return decimal(in_units(steps, challenge.step, challenge.units)); };

    std::vector<std::string> row{std::to_string(piece.number.value)};
    for (std::size_t i = 0; i < sides; ++i)
        row.push_back(i < m.sides_in_steps.size() ? length(m.sides_in_steps[i]) : "");
    row.push_back(symbol_of(challenge.units));
    row.push_back(m.kinds ? name_of(m.kinds->by_sides) : told.name);
    row.push_back(m.kinds ? name_of(m.kinds->by_angles) : "");
    row.push_back(m.kinds && m.kinds->close_call ? "close call" : "");
    row.push_back(length(m.perimeter_in_steps));
    row.push_back(m.sides_in_steps.size() == 3 ? length(m.height_in_steps) : "");
    row.push_back(decimal(area_in_units(m.area_in_half_square_steps, challenge.step, challenge.units)));
    row.push_back(hangs_from_words(plan, piece));
    row.push_back(name_of(piece.state));
    row.push_back(reasons_words(piece));
    row.push_back(decimal(piece.points));

    std::string notes = made->note;
    for (const std::string& note : told.notes) add(notes, note);
    row.push_back(notes);
    row.push_back(m.kinds ? kinds_words(challenge) : "");
    return row;
}

}  // namespace

std::string hangs_from_words(const Plan& plan, const PieceReport& piece) {
    if (piece.state == PieceState::in_the_envelope) return say("in the envelope");
    if (!piece.hangs_from) return say("nothing");
    const Support& support = *piece.hangs_from;
    if (support.piece)
        return say("piece {0}, side {1}", {std::to_string(support.piece->value), std::to_string(support.side)});
    return plan.tree.branches[support.branch].name;
}

const char* name_of(PieceState state) {
    switch (state) {
        case PieceState::counts: return "counts";
        case PieceState::does_not_count: return "does not count";
        case PieceState::in_the_envelope: return "in the envelope";
    }
    return "";
}

std::string reasons_words(const PieceReport& piece) {
    std::string words;
    for (const Rule rule : piece.broken) add(words, said(rule));
    return words;
}

std::vector<std::vector<std::string>> table_rows(const Scene& scene, const Plan& plan, const Report& report) {
    const std::size_t sides = most_sides(report);
    std::vector<std::vector<std::string>> rows{heading(sides)};
    for (const PieceReport& piece : report.pieces) rows.push_back(row_of(piece, sides, scene, plan));
    return rows;
}

}  // namespace boughwork
