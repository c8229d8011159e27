// SPDX-License-Identifier: MIT
#include "gui/console/report_text.h"

#include <algorithm>
#include <cassert>

#include "engine/storage/fingerprint.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/report_words.h"
#include "gui/session/table_rows.h"
#include "rules/description.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

using Row = std::vector<std::string>;

std::size_t letters(const std::string& utf8) {
    return static_cast<std::size_t>(
        std::count_if(utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// Columns as wide as their widest cell, two blanks between them; those in `to_the_right` end alike.
std::string in_columns(std::vector<Row> rows, const std::vector<std::size_t>& to_the_right) {
    for (Row& row : rows)
        for (std::string& cell : row) cell = plain_line(cell);
    std::vector<std::size_t> widths(rows.front().size());
    for (const Row& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], letters(row[i]));
    std::string text;
    for (const Row& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string blanks(widths[i] - letters(row[i]), ' ');
            const bool right = std::count(to_the_right.begin(), to_the_right.end(), i) > 0;
            line += "  " + (right ? blanks + row[i] : row[i] + blanks);
        }
        while (!line.empty() && line.back() == ' ') line.pop_back();
        text += line + "\n";
    }
    return text;
}

std::string findings_text(const Report& report, const std::vector<std::optional<Remedy>>& remedies) {
    std::string text = "\n" + say("The referee says") + "\n";
    if (report.findings.empty()) {
        const bool any = std::any_of(report.pieces.begin(), report.pieces.end(), [](const PieceReport& piece) {
            return piece.state != PieceState::in_the_envelope;
        });
        return text + "  " + (any ? say("Every hung piece counts.") : say("No piece hangs yet.")) + "\n";
    }
    for (std::size_t i = 0; i < report.findings.size(); ++i) {
        const std::string number = std::to_string(i + 1) + ". ";
        text += "  " + number + plain_line(report.findings[i].says) + "\n";
        if (remedies[i])
            text += "  " + std::string(number.size(), ' ') +
                    say("Fix: {0}, {1}.", {in_words(remedies[i]->piece), remedies[i]->says}) + "\n";
    }
    for (const WayOut& way : report.ways_out) text += "  " + say("Another way: {0}", {way.says}) + "\n";
    return text;
}

std::string challenge_text(const Challenge& challenge, const Report& report) {
    const std::string name = plain_line(challenge.name);
    const std::string text = "\n" + (name.empty() ? say("The challenge") : say("The challenge: {0}", {name})) + "\n  " +
                             say("fingerprint {0}", {fingerprint(challenge)}) + "\n";
    if (report.challenge.empty()) return text + "  " + say("It asks nothing of the plan as a whole.") + "\n";
    std::vector<Row> rows;
    for (const ChallengeLine& line : report.challenge)
        rows.push_back({!line.met ? say("? not judged") : *line.met ? say("+ met") : say("! not met"), line.says});
    return text + in_columns(rows, {});
}

std::string bonuses_text(const Report& report) {
    if (report.bonuses.empty()) return "";
    std::vector<Row> rows;
    for (const BonusLine& bonus : report.bonuses) rows.push_back({number_in_words(bonus.points), bonus.words});
    return "\n" + say("Bonuses") + "\n" + in_columns(rows, {0});
}

std::string pieces_text(const Scene& scene, const Plan& plan, const Report& report) {
    const Challenge& challenge = scene.challenge;
    std::vector<Row> rows{{say("No."), say("sides, {0}", {symbol_of(challenge.units)}), say("kind"), say("hangs from"),
                           say("points"), ""}};
    for (const PieceReport& piece : report.pieces) {
        std::string sides;
        for (const std::int64_t steps : piece.measures.sides_in_steps)
            sides += (sides.empty() ? "" : ", ") + measured_words(steps, challenge);
        const Piece* made = find_piece(scene, piece.number);
        assert(made && "the report is on pieces of this scene");
        std::string kind = describe(made->shape, piece.measures, challenge).name;
        if (piece.measures.kinds && piece.measures.kinds->close_call) kind = say("{0} (close call)", {kind});
        const bool waits = piece.state == PieceState::in_the_envelope;
        rows.push_back({std::to_string(piece.number.value), sides, kind, hangs_from_words(plan, piece),
                        waits ? "" : number_in_words(piece.points),
                        piece.broken.empty() ? "" : say("does not count: {0}", {reasons_words(piece)})});
    }
    return "\n" + say("Pieces") + "\n" + in_columns(rows, {0, 4}) + "  " + kinds_words(challenge) + "\n";
}

}  // namespace

std::string plain_line(const std::string& words) {
    std::string line = words;
    for (char& c : line)
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
    return line;
}

std::string report_text(const Scene& scene, const Plan& plan, const Report& report,
                        const std::vector<std::optional<Remedy>>& remedies) {
    assert(remedies.size() == report.findings.size());
    return plain_line(scene.title) + "\n" + plain_line(plan.name) + ": " + score_words(report.score) + ". " +
           counts_words(report) + "\n" + findings_text(report, remedies) + challenge_text(scene.challenge, report) +
           bonuses_text(report) + pieces_text(scene, plan, report);
}

}  // namespace boughwork
