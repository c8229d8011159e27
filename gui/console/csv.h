// SPDX-License-Identifier: MIT
#pragma once
// Rows of text as comma-separated values: RFC 4180, section 2.

#include <string>
#include <vector>

namespace boughwork {

/// Every row ends in CR LF. A cell is quoted when it holds a comma, a quote or a line break. A cell
/// that a spreadsheet would take for a formula (it begins with = + - @, a tab or a line break) gets
/// an apostrophe in front (common practice, no source), so no cell may be a number below zero.
std::string csv_text(const std::vector<std::vector<std::string>>& rows);

}  // namespace boughwork
