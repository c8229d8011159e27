// SPDX-License-Identifier: MIT
#include "gui/session/table_reader.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <utility>

#include "engine/geometry/shape.h"
#include "engine/limits.h"
#include "engine/storage/csv.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/session/table_rows.h"
#include "rules/description.h"
#include "rules/hand_measured.h"
#include "rules/measure.h"

namespace boughwork {
namespace {

/// Each edit is tried on the whole scene: more rows than a class has pieces would take minutes.
constexpr std::size_t most_rows = 2000;

std::string plain(const std::string& cell) {
    const std::size_t first = cell.find_first_not_of(" \t");
    if (first == std::string::npos) return "";
    std::string words = cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
    std::transform(words.begin(), words.end(), words.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return words;
}

/// Where a table's columns stand, by their headings.
class Columns {
public:
    explicit Columns(const CsvRow& heading) : heading_(heading) {
        for (std::string& name : heading_) name = plain(name);
    }
    bool has(const std::string& name) const { return at(name) < heading_.size(); }
    /// Empty where the row or the column does not reach.
    std::string cell(const CsvRow& row, const std::string& name) const {
        const std::size_t index = at(name);
        if (index >= row.size()) return "";
        return row[index].find_first_not_of(" \t") == std::string::npos ? "" : row[index];
    }
    /// Of "side 1", "side 2" ... up to the last that is not empty.
    std::vector<std::string> cells(const CsvRow& row, const std::string& name) const {
        std::vector<std::string> found;
        for (std::size_t i = 1; i <= most_corners; ++i)
            if (std::string cell = this->cell(row, name + " " + std::to_string(i)); !cell.empty()) {
                found.resize(i);
                found.back() = std::move(cell);
            }
        return found;
    }

private:
    std::size_t at(const std::string& name) const {
        return static_cast<std::size_t>(std::find(heading_.begin(), heading_.end(), name) - heading_.begin());
    }
    CsvRow heading_;
};

std::optional<int> number_in(const std::string& cell) {
    const std::string digits = plain(cell);
    if (digits.empty() || digits.size() > 7 || digits.find_first_not_of("0123456789") != std::string::npos)
        return std::nullopt;
    const int number = std::stoi(digits);
    return number >= 1 && number <= greatest_count ? std::optional(number) : std::nullopt;
}

Unit unit_in(const std::string& cell, Unit otherwise) {
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::in})
        if (plain(cell) == symbol_of(unit)) return unit;
    return otherwise;
}

/// Without what the table notes of a piece by itself, behind what was written on it.
std::string written_note(std::string cell, const Piece& piece, const Challenge& challenge) {
    const SpeakingIn english(Language::english);  // as the table was written
    std::vector<std::string> notes = describe(piece.shape, measure(piece.shape, challenge), challenge).notes;
    for (auto note = notes.rbegin(); note != notes.rend(); ++note) {
        if (cell == *note) return "";
        const std::string behind = "; " + *note;
        if (cell.size() > behind.size() && cell.compare(cell.size() - behind.size(), behind.size(), behind) == 0)
            cell.resize(cell.size() - behind.size());
    }
    return cell;
}

class Taking {
public:
    Taking(const Scene& scene, const Columns& columns) : columns_(columns), scene_(scene) {}

    void take(const CsvRow& row, std::size_t row_number) {
        row_ = std::to_string(row_number);
        const std::string cell = columns_.cell(row, "number");
        const std::optional<int> number = number_in(cell);
        if (!number) return leave(say("\"{0}\" is not the number of a piece.", {cell}));
        if (!seen_.insert(*number).second) return leave(say("piece {0} stood in a row before.", {plain(cell)}));
        const Unit unit = unit_in(columns_.cell(row, "unit"), scene_.challenge.units);
        PieceNumber piece{*number};
        if (!find_piece(scene_, piece)) {
            const std::optional<PieceNumber> made = make(row, *number, unit);
            if (!made) return;
            piece = *made;
        } else {
            look_at_sides(row, piece, unit);
        }
        measure_by_hand(row, piece, unit);
        write_note(row, piece);
    }

    TakenIn taken;

private:
    void leave(const std::string& why) { taken.left.push_back(say("Row {0}: {1}", {row_, why})); }

    bool carry_out(const Edit& edit) {
        Result<Scene> next = boughwork::apply(scene_, edit);
        if (!next) {
            leave(in_words(next.problem()));
            return false;
        }
        scene_ = std::move(next).value();
        taken.edits.push_back(edit);
        return true;
    }

    std::optional<PieceNumber> make(const CsvRow& row, int number, Unit unit) {
        std::vector<std::string> sides = columns_.cells(row, "side");
        if (sides.size() != 3 || std::count(sides.begin(), sides.end(), std::string()) > 0) {
            leave(say("there is no piece {0} here; three sides would make one.", {std::to_string(number)}));
            return std::nullopt;
        }
        Triangle triangle;
        for (std::size_t i = 0; i < sides.size(); ++i) {
            const Result<Length> side = parse_length(sides[i], unit);
            if (!side) {
                leave(in_words(side.problem()));
                return std::nullopt;
            }
            triangle.sides[i] = *side;
        }
        const PieceNumber fresh = next_number(scene_);
        if (!carry_out(AddPiece{triangle})) return std::nullopt;
        const std::string here = std::to_string(fresh.value);
        taken.taken.push_back(fresh.value == number
                                  ? say("Piece {0} is new.", {here})
                                  : say("Piece {0} is new: {1} in that table.", {here, std::to_string(number)}));
        return fresh;
    }

    /// What is planned is not changed by a table; that is said where it would be.
    void look_at_sides(const CsvRow& row, PieceNumber number, Unit unit) {
        const Challenge& challenge = scene_.challenge;
        const Measures measures = measure(find_piece(scene_, number)->shape, challenge);
        const std::vector<std::string> cells = columns_.cells(row, "side");
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].empty()) continue;
            const Result<Length> side = parse_length(cells[i], unit);
            if (i < measures.sides_in_steps.size() && side &&
                measured_length(*side, challenge.step) == measures.sides_in_steps[i])
                continue;
            return leave(say("the sides of piece {0} stay as planned.", {std::to_string(number.value)}));
        }
    }

    void measure_by_hand(const CsvRow& row, PieceNumber number, Unit unit) {
        const Piece& piece = *find_piece(scene_, number);
        HandMeasured by_hand = piece.by_hand;
        by_hand.sides.resize(corner_count(piece.shape));
        const std::vector<std::string> cells = columns_.cells(row, "by hand");
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].empty()) continue;
            if (i >= by_hand.sides.size()) {
                leave(say("piece {0} has no side {1}.", {std::to_string(number.value), std::to_string(i + 1)}));
                continue;
            }
            if (by_hand.sides[i] && cells[i] == table_length(*by_hand.sides[i], scene_.challenge.units)) continue;
            const Result<Length> length = parse_length(cells[i], unit);
            if (length)
                by_hand.sides[i] = *length;
            else
                leave(in_words(length.problem()));
        }
        if (const std::string by = plain(columns_.cell(row, "measured by")); is_hand_symbol(by))
            by_hand.by = by;
        else if (!by.empty() && by != plain(by_hand.by))
            leave(say("who measured is told by a sign, such as star or moon, and not by a name."));

        const bool measured =
            std::any_of(by_hand.sides.begin(), by_hand.sides.end(), [](const auto& side) { return side.has_value(); });
        if (!measured) by_hand.sides.clear();
        if (by_hand == piece.by_hand || !carry_out(SetHandMeasured{number, by_hand})) return;
        taken.taken.push_back(say("Piece {0}: measured by hand.", {std::to_string(number.value)}));
    }

    void write_note(const CsvRow& row, PieceNumber number) {
        const Piece& piece = *find_piece(scene_, number);
        const std::string note = written_note(columns_.cell(row, "note"), piece, scene_.challenge);
        if (note.empty() || note == piece.note || !carry_out(SetNote{number, note})) return;
        taken.taken.push_back(say("Piece {0}: a note.", {std::to_string(number.value)}));
    }

    const Columns& columns_;
    Scene scene_;  // with what was taken so far
    std::set<int> seen_;
    std::string row_;
};

}  // namespace

Result<TakenIn> taken_in(const Scene& scene, const std::string& csv) {
    const Result<std::vector<CsvRow>> rows = read_csv(csv);
    if (!rows) return rows.problem();
    const Columns columns(rows->empty() ? CsvRow{} : rows->front());
    if (!columns.has("number"))
        return Problem{say("This is no table of pieces: its first row has no column \"number\"."), "",
                       say("Save a table as CSV here, fill it in, and take that in.")};
    if (rows->size() > most_rows)
        return Problem{say("The table has more rows than a class has pieces."), "", say("Take in a part of it.")};
    Taking taking(scene, columns);
    for (std::size_t i = 1; i < rows->size(); ++i) taking.take((*rows)[i], i + 1);
    return std::move(taking.taken);
}

}  // namespace boughwork
