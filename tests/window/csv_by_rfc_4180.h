// SPDX-License-Identifier: MIT
#pragma once
// A reader of CSV of the tests' own, which shares nothing with the program's.

#include <catch2/catch.hpp>
#include <string>
#include <vector>

namespace boughwork {

/// RFC 4180, section 2: rows end in CR LF, a cell with a comma or a quote stands in quotes, a quote in it twice.
inline std::vector<std::vector<std::string>> rows_of(const std::string& csv) {
    std::vector<std::vector<std::string>> rows{{""}};
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const bool twice = csv[i] == '"' && i + 1 < csv.size() && csv[i + 1] == '"';
        if (quoted && twice)
            rows.back().back() += csv[i++];
        else if (csv[i] == '"')
            quoted = !quoted;
        else if (quoted)
            rows.back().back() += csv[i];
        else if (csv[i] == ',')
            rows.back().emplace_back();
        else if (csv.compare(i, 2, "\r\n") == 0)
            rows.push_back({""}), ++i;
        else
            rows.back().back() += csv[i];
    }
    CHECK_FALSE(quoted);
    CHECK(rows.back() == std::vector<std::string>{""});  // the last row ends too
    rows.pop_back();
    return rows;
}

}  // namespace boughwork
