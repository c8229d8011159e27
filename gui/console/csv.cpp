// SPDX-License-Identifier: MIT
#include "gui/console/csv.h"

namespace boughwork {
namespace {

std::string defused(const std::string& cell) {
    const bool may_run = !cell.empty() && std::string("=+-@\t\r\n").find(cell[0]) != std::string::npos;
    return may_run ? "'" + cell : cell;
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

}  // namespace

std::string csv_text(const std::vector<std::vector<std::string>>& rows) {
    std::string text;
    for (const std::vector<std::string>& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (i > 0) text += ',';
            text += quoted(defused(row[i]));
        }
        text += "\r\n";
    }
    return text;
}

}  // namespace boughwork
