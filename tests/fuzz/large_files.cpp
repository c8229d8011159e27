// SPDX-License-Identifier: MIT
#include "tests/fuzz/large_files.h"

#include <algorithm>
#include <string>

#include "engine/limits.h"

namespace boughwork {
namespace {

const std::string begin = R"({"format":"boughwork","version":1)";

/// As many entries as `bytes` and the program's own limit allow.
template <class Entry>
std::string entries(std::size_t bytes, Entry entry, std::size_t most = most_listed) {
    std::string list;
    for (std::size_t i = 0; i < most && list.size() < bytes; ++i) {
        if (i > 0) list += ',';
        list += entry(i);
    }
    return list;
}

std::string repeated(std::size_t bytes, const std::string& text) {
    std::string all;
    while (all.size() < bytes) all += text;
    return all;
}

std::string plan_with_branches(const std::string& branches) {
    return begin + R"(,"plans":[{"tree":{"branches":[)" + branches + "]}}]}";
}

std::string piece(std::size_t number) {
    return R"({"number":)" + std::to_string(number) + R"(,"sides_mm":[80,60,50]})";
}

/// A few more than a list may have.
std::string pieces_past_the_limit(std::size_t bytes) {
    return begin + R"(,"pieces":[)" + entries(bytes, piece, most_listed + 10) + "]}";
}

std::string pieces_in_the_envelope(std::size_t bytes) {
    return begin + R"(,"pieces":[)" + entries(bytes, piece) + "]}";
}

/// All side by side, in rows, one branch above each row; few touch. `columns` in a row.
std::string hung_in_rows(std::size_t bytes) {
    constexpr std::size_t columns = 316;
    constexpr std::size_t step_mm = 90;
    constexpr std::size_t row_mm = 100;
    const std::size_t count = std::min(most_listed, bytes / 80);
    const auto row_y = [](std::size_t row) { return std::to_string(200 + row_mm * row); };
    const std::string hung = entries(
        bytes,
        [&](std::size_t i) {
            return R"({"piece":)" + std::to_string(i) + R"(,"at_mm":[)" +
                   std::to_string(100 + step_mm * (i % columns)) + "," + row_y(i / columns) + "]}";
        },
        count);
    const std::string branches = entries(
        bytes,
        [&](std::size_t row) {
            return R"({"path_mm":[[20,)" + std::to_string(204 + row_mm * row) + R"(],[)" +
                   std::to_string(200 + step_mm * columns) + "," + std::to_string(204 + row_mm * row) + "]]}";
        },
        count / columns + 1);
    return begin + R"(,"pieces":[)" + entries(bytes, piece, count) +
           R"(],"plans":[{"tree":{"trunk":{"height":90},"branches":[)" + branches + R"(]},"hung":[)" + hung + "]}]}";
}

/// All in one place: every two overlap.
std::string hung_in_a_heap(std::size_t bytes) {
    const std::size_t count = std::min(most_listed, bytes / 80);
    return begin + R"(,"pieces":[)" + entries(bytes, piece, count) + R"(],"plans":[{"hung":[)" +
           entries(
               bytes, [](std::size_t i) { return R"({"piece":)" + std::to_string(i) + R"(,"at_mm":[200,400]})"; },
               count) +
           "]}]}";
}

std::string branches_apart(std::size_t bytes) {
    return plan_with_branches(entries(bytes, [](std::size_t i) {
        return R"({"path_mm":[[20,)" + std::to_string(9 * i + 20) + R"(],[300,)" + std::to_string(9 * i + 20) + "]]}";
    }));
}

std::string branches_crossing(std::size_t bytes) {
    return plan_with_branches(entries(bytes, [](std::size_t i) {
        return R"({"path_mm":[[-30000,)" + std::to_string(i % 50000) + R"(],[30000,)" +
               std::to_string(50000 - i % 50000) + "]]}";
    }));
}

/// As many points as a branch may have, in teeth.
std::string branches_of_many_points(std::size_t bytes) {
    return plan_with_branches(entries(bytes, [](std::size_t b) {
        return R"({"thickness_mm":1,"path_mm":[)" +
               entries(
                   1000000,
                   [&](std::size_t i) {
                       return "[" + std::to_string(20 + 20 * i) + "," + std::to_string(400 + 40 * b + i % 2 * 10) + "]";
                   },
                   1000) +
               "]}";
    }));
}

std::string branch_of_too_many_points(std::size_t bytes) {
    return plan_with_branches(
        R"({"path_mm":[)" +
        entries(
            bytes, [](std::size_t i) { return "[" + std::to_string(20 + i % 900000) + ",400]"; }, 3000000) +
        "]}");
}

std::string outlines_of_many_corners(std::size_t bytes) {
    return begin + R"(,"pieces":[)" +
           entries(bytes,
                   [](std::size_t p) {
                       // On a parabola, so that no three lie on a line.
                       std::string corners = "[0,0]";
                       for (int i = 1; i < 100; ++i)
                           corners += ",[" + std::to_string(9801 - (100 - i) * (100 - i) + 199) + "," +
                                      std::to_string(-i) + "]";
                       return R"({"number":)" + std::to_string(p) + R"(,"outline_mm":[)" + corners + "]}";
                   }) +
           "]}";
}

std::string plans(std::size_t bytes) {
    return begin + R"(,"plans":[)" + entries(bytes, [](std::size_t) { return std::string("{}"); }) + "]}";
}

/// Each bonus for the last criterion.
std::string criteria_and_bonuses(std::size_t bytes) {
    const std::string criterion = R"({"kind":"right","at_least":1})";
    const std::size_t count = std::min(most_listed, bytes / 64);
    const std::string bonus = R"({"if_met":)" + std::to_string(count - 1) + R"(,"points":1})";
    return begin + R"(,"challenge":{"criteria":[)" +
           entries(
               bytes, [&](std::size_t) { return criterion; }, count) +
           R"(],"score":{"bonuses":[)" +
           entries(
               bytes, [&](std::size_t) { return bonus; }, count) +
           "]}}}";
}

std::string unknown_fields(std::size_t bytes) {
    std::string text = begin;
    for (std::size_t i = 0; text.size() < bytes; ++i) text += ",\"k" + std::to_string(i) + "\":0";
    return text + "}";
}

std::string a_long_title(std::size_t bytes) { return begin + R"(,"title":")" + std::string(bytes, 'w') + "\"}"; }
std::string a_title_of_escapes(std::size_t bytes) {
    return begin + R"(,"title":")" + repeated(bytes, R"(\u0001)") + "\"}";
}
std::string a_long_unknown_format(std::size_t bytes) { return R"({"format":")" + std::string(bytes, '<') + "\"}"; }
std::string one_long_number(std::size_t bytes) {
    return begin + R"(,"challenge":{"tolerance_mm":1.)" + std::string(bytes, '0') + "}}";
}
std::string one_huge_number(std::size_t bytes) { return begin + R"(,"x":)" + std::string(bytes, '9') + "}"; }
std::string lists_in_lists(std::size_t bytes) { return std::string(bytes, '['); }
std::string objects_in_objects(std::size_t bytes) { return repeated(bytes, R"({"a":)"); }
std::string empty_lists(std::size_t bytes) { return begin + R"(,"x":[[])" + repeated(bytes, ",[]") + "]}"; }
std::string empty_lines(std::size_t bytes) { return std::string(bytes, '\n'); }
std::string zeros(std::size_t bytes) { return std::string(bytes, '\0'); }

}  // namespace

const std::vector<LargeFile>& large_files() {
    static const std::vector<LargeFile> all{
        {"pieces_past_the_limit", pieces_past_the_limit, false},
        {"pieces_in_the_envelope", pieces_in_the_envelope, true},
        {"hung_in_rows", hung_in_rows, true},
        {"hung_in_a_heap", hung_in_a_heap, true},
        {"branches_apart", branches_apart, true},
        {"branches_crossing", branches_crossing, true},
        {"branches_of_many_points", branches_of_many_points, true},
        {"branch_of_too_many_points", branch_of_too_many_points, false},
        {"outlines_of_many_corners", outlines_of_many_corners, true},
        {"plans", plans, true},
        {"criteria_and_bonuses", criteria_and_bonuses, true},
        {"unknown_fields", unknown_fields, true},
        {"a_long_title", a_long_title, true},
        {"a_title_of_escapes", a_title_of_escapes, true},
        {"a_long_unknown_format", a_long_unknown_format, false},
        {"one_long_number", one_long_number, true},
        {"one_huge_number", one_huge_number, false},
        {"lists_in_lists", lists_in_lists, false},
        {"objects_in_objects", objects_in_objects, false},
        {"empty_lists", empty_lists, true},
        {"empty_lines", empty_lines, false},
        {"zeros", zeros, false},
    };
    return all;
}

}  // namespace boughwork
