// SPDX-License-Identifier: MIT
#include "engine/storage/csv.h"

#include <algorithm>

#include "engine/utf8.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// Also behind apostrophes, so that the one that is put in front can be told from a person's own.
bool may_run(const std::string& cell) {
    const std::size_t first = cell.find_first_not_of('\'');
    return first != std::string::npos && std::string_view("=+-@\t\r\n").find(cell[first]) != std::string_view::npos;
}

std::string defused(const std::string& cell) { return may_run(cell) ? "'" + cell : cell; }
std::string armed_again(std::string cell) {
    return cell.size() > 1 && cell.front() == '\'' && may_run(cell) ? cell.substr(1) : cell;
}

std::string quoted(const std::string& cell) {
    if (cell.find_first_of(",\"\r\n") == std::string::npos) return cell;
    std::string text = "\"";
    for (const char c : cell) {
        if (c == '"') text += '"';
        text += c;
    }
    return text + "\"";
}

char separator_of(std::string_view text) {
    bool in_quotes = false;
    for (const char c : text) {
        if (c == '"') in_quotes = !in_quotes;
        if (in_quotes) continue;
        if (c == ',' || c == ';' || c == '\t') return c;
        if (c == '\n') break;
    }
    return ',';
}

Problem refused(const std::string& found) {
    return {found, "", say("Save the table as CSV once more, and take that in.")};
}

/// Goes through the text once, cell by cell.
class CsvText {
public:
    explicit CsvText(std::string_view text) : text_(text), separator_(separator_of(text)) {}

    bool at_end() const { return at_ == text_.size(); }
    std::size_t line() const { return line_; }

    /// Past the break, if one stands here.
    bool take_break() {
        if (at_ < text_.size() && text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n') ++at_;
        if (at_ >= text_.size() || text_[at_] != '\n') return false;
        ++at_;
        ++line_;
        return true;
    }
    bool take_separator() { return take(separator_); }

    Result<std::string> cell() { return take('"') ? quoted_cell() : plain_cell(); }

private:
    bool take(char c) {
        if (at_ >= text_.size() || text_[at_] != c) return false;
        ++at_;
        return true;
    }
    bool at_cell_end() const {
        if (at_ == text_.size()) return true;
        const std::string_view rest = text_.substr(at_, 2);
        return rest[0] == separator_ || rest[0] == '\n' || rest == "\r\n";
    }
    Result<std::string> plain_cell() {
        const std::size_t from = at_;
        for (; !at_cell_end(); ++at_)
            if (text_[at_] == '"')
                return refused(say("Line {0}: there is a quotation mark inside a cell.", {std::to_string(line_)}));
        return std::string(text_.substr(from, at_ - from));
    }
    Result<std::string> quoted_cell() {
        const std::string began = std::to_string(line_);
        std::string cell;
        while (!at_end()) {
            const char c = text_[at_++];
            if (c == '"' && !take('"')) {
                if (at_cell_end()) return cell;
                return refused(say("Line {0}: something stands behind a closing quotation mark.", {began}));
            }
            if (c == '\n') ++line_;
            cell += c;
        }
        return refused(say("Line {0}: a quotation mark opens there and is never closed.", {began}));
    }

    std::string_view text_;
    char separator_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
};

}  // namespace

std::string csv_text(const std::vector<CsvRow>& rows) {
    std::string text;
    for (const CsvRow& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (i > 0) text += ',';
            text += quoted(defused(row[i]));
        }
        text += "\r\n";
    }
    return text;
}

Result<std::vector<CsvRow>> read_csv(std::string_view text) {
    if (const std::size_t good = well_formed_utf8(text); good != text.size()) {
        const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(good), '\n');
        return refused(say("Line {0}: this is no text in UTF-8.", {std::to_string(line)}));
    }
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark) text.remove_prefix(byte_order_mark.size());

    std::vector<CsvRow> rows;
    std::size_t cells = 0;
    CsvText csv(text);
    while (!csv.at_end()) {
        if (csv.take_break()) continue;
        CsvRow& row = rows.emplace_back();
        do {
            if (++cells > most_csv_cells)
                return refused(
                    say("Line {0}: a table of pieces has no more cells than that.", {std::to_string(csv.line())}));
            Result<std::string> cell = csv.cell();
            if (!cell) return cell.problem();
            row.push_back(armed_again(std::move(cell).value()));
        } while (csv.take_separator());
        csv.take_break();
    }
    return rows;
}

}  // namespace boughwork
