// SPDX-License-Identifier: MIT
#include "gui/session/table_rows.h"

#include <algorithm>
#include <cassert>
#include <cstdio>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "rules/description.h"
#include "rules/measure.h"
#include "rules/told.h"
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
    for (std::size_t i = 1; i <= sides; ++i) row.push_back("by hand " + std::to_string(i));
    row.push_back("measured by");
    return row;
}

struct RowOf {
    const Scene& scene;
    const Plan& plan;
    std::size_t sides;
    Telling telling;

    std::string length(std::int64_t steps) const {
        return decimal(in_units(steps, scene.challenge.step, scene.challenge.units));
    }

    std::vector<std::string> operator()(const PieceReport& piece) const {
        const Challenge& challenge = scene.challenge;
        const Measures& m = piece.measures;
        const Piece* made = find_piece(scene, piece.number);
        assert(made && "the report is on pieces of this scene");
        const auto told = [&](Mathematics what) {
            return telling == Telling::everything || is_told(scene, what, *made);
        };
        const bool lengths = told(Mathematics::lengths);
        const bool kinds = told(Mathematics::kinds);
        const bool sums = told(Mathematics::sums);

        std::vector<std::string> row{std::to_string(piece.number.value)};
        for (std::size_t i = 0; i < sides; ++i)
            row.push_back(lengths && i < m.sides_in_steps.size() ? length(m.sides_in_steps[i]) : "");
        row.push_back(symbol_of(challenge.units));
        row.push_back(!kinds ? "" : m.kinds ? name_of(m.kinds->by_sides) : describe(made->shape, m, challenge).name);
        row.push_back(m.kinds && kinds ? name_of(m.kinds->by_angles) : "");
        row.push_back(m.kinds && kinds && m.kinds->close_call ? "close call" : "");
        row.push_back(sums ? length(m.perimeter_in_steps) : "");
        row.push_back(sums && m.sides_in_steps.size() == 3 ? length(m.height_in_steps) : "");
        row.push_back(sums ? decimal(area_in_units(m.area_in_half_square_steps, challenge.step, challenge.units)) : "");
        row.push_back(hangs_from_words(plan, piece));
        row.push_back(name_of(piece.state));
        row.push_back(reasons_words(piece));
        row.push_back(told(Mathematics::points) ? decimal(piece.points) : "");
        row.push_back(table_note(*made, m, challenge));
        row.push_back(m.kinds ? kinds_words(challenge) : "");

        const auto& by_hand = made->by_hand.sides;
        for (std::size_t i = 0; i < sides; ++i)
            row.push_back(i < by_hand.size() && by_hand[i] ? table_length(*by_hand[i], challenge.units) : "");
        row.push_back(made->by_hand.by);
        return row;
    }
};

}  // namespace

std::string table_length(Length length, Unit unit) {
    return decimal(static_cast<double>(length.half_um) / static_cast<double>(length_of(unit).half_um));
}

std::string table_note(const Piece& piece, const Measures& measures, const Challenge& challenge) {
    std::string notes = piece.note;
    for (const std::string& note : describe(piece.shape, measures, challenge).notes) add(notes, note);
    return notes;
}

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

std::vector<std::vector<std::string>> table_rows(const Scene& scene, const Plan& plan, const Report& report,
                                                 Telling telling) {
    const std::size_t sides = most_sides(report);
    std::vector<std::vector<std::string>> rows{heading(sides)};
    const RowOf row_of{scene, plan, sides, telling};
    for (const PieceReport& piece : report.pieces) rows.push_back(row_of(piece));
    return rows;
}

}  // namespace boughwork
