// SPDX-License-Identifier: MIT
#include "gui/picture/data_table.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/report_words.h"
#include "rules/description.h"
#include "rules/hand_measured.h"
#include "rules/measure.h"
#include "rules/tally.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

using State = TableCell::State;

void add(std::string& words, const std::string& more) {
    if (!more.empty()) words += (words.empty() ? "" : "; ") + more;
}

std::string held_by(const Plan& plan, const PieceReport& piece) {
    if (piece.state == PieceState::in_the_envelope) return say("in the envelope");
    if (!piece.hangs_from) return say("nothing");
    const Support& support = *piece.hangs_from;
    if (support.piece)
        return say("piece {0}, side {1}", {std::to_string(support.piece->value), std::to_string(support.side)});
    return say("branch {0}", {plan.tree.branches[support.branch].name});
}

struct RowOf {
    const Scene& scene;
    const Plan& plan;
    const PieceReport& report;
    const Piece& piece;

    bool told(Mathematics what) const { return is_told(scene, what, piece); }
    std::string length(std::int64_t steps) const { return measured_words(steps, scene.challenge); }

    /// What the program says, or the pupil's answer, or the question.
    TableCell asked(Asked what, const std::string& words, const std::string& below = "") const {
        if (is_told(scene, what, piece)) return {State::told, words, below};
        if (is_answered(what, piece.answers))
            return {State::answered, answer_words(scene.challenge, piece.answers, what), ""};
        return {State::your_turn, say("your turn"), ""};
    }
    TableCell with_sums(const std::string& words) const {
        return told(Mathematics::sums) ? TableCell{State::told, words, ""} : TableCell{State::kept_back, "…", ""};
    }

    TableCell sides() const {
        if (!told(Mathematics::lengths)) return {State::kept_back, say("measure them"), ""};
        std::string words;
        for (const std::int64_t steps : report.measures.sides_in_steps)
            words += (words.empty() ? "" : "  ") + length(steps);
        return {State::told, words, ""};
    }
    TableCell by_sides() const {
        const auto& kinds = report.measures.kinds;
        if (!kinds) return {State::told, describe(piece.shape, report.measures, scene.challenge).name, ""};
        return asked(Asked::by_sides, say(name_of(kinds->by_sides)));
    }
    TableCell by_angles() const {
        const auto& kinds = report.measures.kinds;
        if (!kinds) return {};
        return asked(Asked::by_angles, say(name_of(kinds->by_angles)), kinds->close_call ? say("close call") : "");
    }
    TableCell points() const {
        if (!can_be_asked(Asked::points, report)) return {State::told, "–", ""};
        return asked(Asked::points, number_in_words(report.points));
    }

    std::string to_do() const {
        std::string words;
        for (const Rule rule : report.broken) add(words, say(name_of(rule)));
        const std::vector<Reading> readings = readings_of(piece, scene.challenge);
        for (std::size_t i = 0; i < readings.size(); ++i)
            if (readings[i] != Reading::none && readings[i] != Reading::fits)
                add(words, say("measure side {0} again", {std::to_string(i + 1)}));
        for (const Asked what : all_asked) {
            const auto judgement = judged(scene.challenge, piece, report, what);
            if (!judgement || judgement->judged == AnswerIs::right) continue;
            const std::string about = words_for(what);
            const std::string answer = answer_words(scene.challenge, piece.answers, what);
            add(words, is_told(scene, what, piece)             ? say("{0}: you said {1}", {about, answer})
                       : judgement->judged == AnswerIs::nearly ? say("{0}: nearly", {about})
                                                               : say("{0}: not yet", {about}));
        }
        return words;
    }

    TableRow row() const {
        const Measures& m = report.measures;
        const Challenge& challenge = scene.challenge;
        TableRow row{.number = report.number, .state = report.state};
        row.sides = sides();
        row.by_sides = by_sides();
        row.by_angles = by_angles();
        row.perimeter = asked(Asked::perimeter, length(m.perimeter_in_steps));
        if (m.sides_in_steps.size() == 3) row.height = with_sums(length(m.height_in_steps));
        row.area =
            with_sums(number_in_words(area_in_units(m.area_in_half_square_steps, challenge.step, challenge.units)));
        row.points = points();
        row.hangs_from = held_by(plan, report);
        row.to_do = to_do();
        return row;
    }
};

TableTotals totals_of(const Scene& scene, const Plan& plan, const Report& report) {
    const auto how_many = [&](auto is) {
        return std::to_string(std::count_if(report.pieces.begin(), report.pieces.end(), is));
    };
    TableTotals totals;
    totals.counts = say("hanging: {0}, counting: {1}",
                        {how_many([](const PieceReport& piece) { return piece.hangs_from.has_value(); }),
                         how_many([](const PieceReport& piece) { return piece.state == PieceState::counts; })});
    if (is_told(scene, Mathematics::sums, plan))
        totals.perimeter = measured_words(counting_perimeter_in_steps(report), scene.challenge);
    if (is_told(scene, Mathematics::points, plan)) {
        double bonuses = 0;
        for (const BonusLine& line : report.bonuses) bonuses += line.points;
        totals.points = number_in_words(counting_points(scene.challenge, report));
        totals.score =
            say("bonuses {0}", {number_in_words(bonuses)}) + "\n" + say("score {0}", {number_in_words(report.score)});
    }
    return totals;
}

}  // namespace

DataTable data_table(const Scene& scene, const Plan& plan, const Report& report, TableOrder order) {
    DataTable table;
    for (const PieceNumber number : in_order(scene, report, order))
        table.rows.push_back(RowOf{scene, plan, *find_piece(report, number), *find_piece(scene, number)}.row());
    table.totals = totals_of(scene, plan, report);
    return table;
}

const TableCell& cell_about(const TableRow& row, Asked what) {
    switch (what) {
        case Asked::by_sides: return row.by_sides;
        case Asked::by_angles: return row.by_angles;
        case Asked::perimeter: return row.perimeter;
        case Asked::points: return row.points;
    }
    return row.points;
}

}  // namespace boughwork
