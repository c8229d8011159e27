// SPDX-License-Identifier: MIT
#include "engine/storage/csv.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdint>

using namespace boughwork;

namespace {

using Rows = std::vector<CsvRow>;

Rows rows_of(const std::string& text) {
    const Result<Rows> rows = read_csv(text);
    if (!rows) FAIL(in_words(rows.problem()));
    return *rows;
}

std::string refusal(const std::string& text) {
    const Result<Rows> rows = read_csv(text);
    INFO(text);
    REQUIRE_FALSE(rows);
    CHECK_FALSE(rows.problem().to_do.empty());
    return rows.problem().found;
}

}  // namespace

TEST_CASE("Cells are written as the examples of RFC 4180 are read") {
    // RFC 4180 (2005), section 2, rules 1, 6 and 7.
    const std::string plain = "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n";
    CHECK(csv_text({{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}) == plain);

    const std::string with_break = "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n";
    const Rows broken{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    REQUIRE(rows_of(with_break) == broken);
    CHECK(rows_of(csv_text(broken)) == broken);

    const std::string with_quote = "\"aaa\",\"b\"\"bb\",\"ccc\"\r\n";
    const Rows quoted{{"aaa", "b\"bb", "ccc"}};
    REQUIRE(rows_of(with_quote) == quoted);
    CHECK(csv_text(quoted) == "aaa,\"b\"\"bb\",ccc\r\n");
}

TEST_CASE("Blanks belong to the cell, and empty cells are kept") {
    const Rows rows{{" a ", "", "c"}, {"", "", ""}};
    CHECK(csv_text(rows) == " a ,,c\r\n,,\r\n");
    CHECK(rows_of(csv_text(rows)) == rows);
}

TEST_CASE("A cell that a spreadsheet would run as a formula is text") {
    // Common practice, no source.
    for (const char* cell : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"}) {
        const std::string text = csv_text({{"a", cell}});
        INFO(text);
        CHECK((text.rfind(std::string("a,'") + cell, 0) == 0 || text.rfind(std::string("a,\"'") + cell, 0) == 0));
        CHECK(rows_of(text) == Rows{{"a", cell}});
    }
    CHECK(csv_text({{"=\"a,b\""}}) == "\"'=\"\"a,b\"\"\"\r\n");
    CHECK(csv_text({{"a=b", "1-2"}}) == "a=b,1-2\r\n");
}

TEST_CASE("The examples of RFC 4180 are read, with and without the last break, with a heading") {
    // RFC 4180 (2005), section 2, rules 1, 2, 3, 5, 6 and 7.
    const Rows plain{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == plain);
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") == plain);
    CHECK(rows_of("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").size() == 3);
    CHECK(rows_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") == plain);
    CHECK(rows_of("\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Rows{{"aaa", "b \r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(rows_of("\"aaa\",\"b\"\"bb\",\"ccc\"") == Rows{{"aaa", "b\"bb", "ccc"}});
}

TEST_CASE("Whatever is written is read back cell by cell, apostrophes before formulas too") {
    const Rows rows{{"'=a", "''-b", "'c", "=", "", "x"}, {"\"", ",", "\r\n", "'", "';", "\t"}};
    CHECK(rows_of(csv_text(rows)) == rows);
}

TEST_CASE("What spreadsheets write otherwise is read as well") {
    CHECK(rows_of("a,b\nc,d\n") == Rows{{"a", "b"}, {"c", "d"}});
    CHECK(rows_of("\xEF\xBB\xBF"
                  "a,b") == Rows{{"a", "b"}});
    CHECK(rows_of("a;b\r\n7,5;8,0\r\n") == Rows{{"a", "b"}, {"7,5", "8,0"}});
    CHECK(rows_of("a\tb,c\n") == Rows{{"a", "b,c"}});
    CHECK(rows_of("\"a;b\",c\n") == Rows{{"a;b", "c"}});
    CHECK(rows_of("a,b\r\n\r\nc\r\n") == Rows{{"a", "b"}, {"c"}});
    CHECK(rows_of("").empty());
    CHECK(rows_of("a,\n") == Rows{{"a", ""}});
    CHECK(rows_of("\"\"") == Rows{{""}});
}

TEST_CASE("What is no CSV is refused with its line") {
    CHECK(refusal("a,b\nc,\"d\n\ne").find("Line 2") == 0);
    CHECK(refusal("a,b\"c\n").find("Line 1") == 0);
    CHECK(refusal("a\n\"b\"c,d\n").find("Line 2") == 0);
    CHECK(refusal("\"").find("Line 1") == 0);
    CHECK(refusal("a,b\n\xC3(,c\n").find("Line 2") == 0);
    CHECK(refusal(std::string(most_csv_cells + 1, ',')).find("Line 1") == 0);
}

TEST_CASE("Any bytes at all are read or refused") {
    const std::vector<std::string> parts{"a", ",", "\"", "\"\"", "\r\n", "\n", "\r", "'", "=", "\xC3\xA9", "\xC3"};
    std::uint32_t dice = 1;
    int read = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (int length = 0; length < 8; ++length) {
            dice = dice * 1664525 + 1013904223;  // Numerical Recipes, "quick and dirty" (from memory)
            text += parts[(dice >> 16) % parts.size()];
        }
        const Result<Rows> rows = read_csv(text);
        if (!rows) continue;
        ++read;
        Rows written = *rows;
        written.erase(std::remove(written.begin(), written.end(), CsvRow{""}), written.end());  // an empty line is none
        CHECK(rows_of(csv_text(written)) == written);
    }
    CHECK(read > 1000);
}
