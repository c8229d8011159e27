// SPDX-License-Identifier: MIT
#include "gui/console/csv.h"

#include <catch2/catch.hpp>

using namespace boughwork;

namespace {

using Rows = std::vector<std::vector<std::string>>;

/// Reads by the rules of RFC 4180, section 2, and nothing else.
Rows read_csv(const std::string& text) {
    Rows rows{{}};
    std::size_t at = 0;
    while (at < text.size()) {
        std::string field;
        if (text[at] == '"') {
            for (++at; text.at(at) != '"' || (at + 1 < text.size() && text[at + 1] == '"'); ++at) {
                if (text[at] == '"') ++at;
                field += text.at(at);
            }
            ++at;
        } else {
            while (at < text.size() && text[at] != ',' && text[at] != '\r') field += text[at++];
        }
        rows.back().push_back(field);
        if (at == text.size()) break;
        if (text[at] == ',') {
            ++at;
        } else {
            REQUIRE(text.substr(at, 2) == "\r\n");
            at += 2;
            if (at < text.size()) rows.push_back({});
        }
    }
    return rows;
}

}  // namespace

TEST_CASE("Cells are written as the examples of RFC 4180 are read") {
    // RFC 4180 (2005), section 2, rules 1, 6 and 7.
    const std::string plain = "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n";
    CHECK(csv_text({{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}) == plain);

    const std::string with_break = "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n";
    const Rows broken{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    REQUIRE(read_csv(with_break) == broken);
    CHECK(read_csv(csv_text(broken)) == broken);

    const std::string with_quote = "\"aaa\",\"b\"\"bb\",\"ccc\"\r\n";
    const Rows quoted{{"aaa", "b\"bb", "ccc"}};
    REQUIRE(read_csv(with_quote) == quoted);
    CHECK(csv_text(quoted) == "aaa,\"b\"\"bb\",ccc\r\n");
}

TEST_CASE("Blanks belong to the cell, and empty cells are kept") {
    const Rows rows{{" a ", "", "c"}, {"", "", ""}};
    CHECK(csv_text(rows) == " a ,,c\r\n,,\r\n");
    CHECK(read_csv(csv_text(rows)) == rows);
}

TEST_CASE("A cell that a spreadsheet would run as a formula is text") {
    // Common practice, no source.
    for (const char* cell : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"}) {
        const Rows rows = read_csv(csv_text({{"a", cell}}));
        CHECK(rows.at(0).at(1) == std::string("'") + cell);
    }
    CHECK(csv_text({{"=\"a,b\""}}) == "\"'=\"\"a,b\"\"\"\r\n");
    CHECK(csv_text({{"a=b", "1-2"}}) == "a=b,1-2\r\n");
}
