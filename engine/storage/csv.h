// SPDX-License-Identifier: MIT
#pragma once
// Rows of text as comma-separated values: RFC 4180, section 2. What csv_text() writes, read_csv()
// reads back cell by cell.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "engine/result.h"

namespace boughwork {

using CsvRow = std::vector<std::string>;

/// Every row ends in CR LF. A cell is quoted when it holds a comma, a quote or a line break. A cell
/// that a spreadsheet would take for a formula (it begins with = + - @, a tab or a line break) gets
/// an apostrophe in front (common practice, no source), so no cell may be a number below zero.
std::string csv_text(const std::vector<CsvRow>& rows);

/// More cells than any table has, and few enough that their strings cannot fill the memory.
inline constexpr std::size_t most_csv_cells = 200'000;

/// Lines may end in LF alone, a byte order mark is passed over, and the separator may be a semicolon
/// or a tab: the first of the three that stands outside quotes in the first line. The apostrophe
/// before a formula is taken away again. Refused, with the line: a quote that does not end, one
/// inside an unquoted cell, something behind a closing one, what is no UTF-8, too many cells.
/// Rows may have different numbers of cells; an empty line is none.
Result<std::vector<CsvRow>> read_csv(std::string_view text);

}  // namespace boughwork
