// SPDX-License-Identifier: MIT
#include "engine/typed_number.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <numeric>

#include "engine/limits.h"
#include "engine/storage/step_value.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr int most_digits_typed = 9;  // every product stays exact, in 64 bits and in a double

std::string without_blanks_around(const std::string& typed) {
    const std::size_t first = typed.find_first_not_of(" \t");
    if (first == std::string::npos) return "";
    return typed.substr(first, typed.find_last_not_of(" \t") - first + 1);
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

Problem no_number(const std::string& typed, std::string to_do) {
    return {say("\"{0}\" is no such number.", {typed}), "", std::move(to_do)};
}

/// Of the unit that was typed behind the number.
Unit unit_of(const std::string& typed, Unit otherwise) {
    const std::string text = without_blanks_around(typed);
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::in}) {
        const std::string symbol = symbol_of(unit);
        if (text.size() > symbol.size() && text.compare(text.size() - symbol.size(), symbol.size(), symbol) == 0)
            return unit;
    }
    return otherwise;
}

}  // namespace

Result<int> parse_count(const std::string& typed) {
    int count = 0;
    const std::string text = without_blanks_around(typed);
    bool whole = !text.empty() && text.size() <= most_digits_typed;
    for (const char c : text) {
        whole = whole && is_digit(c);
        if (whole) count = 10 * count + (c - '0');
    }
    if (!whole || count > greatest_count) return no_number(typed, say("Type a whole number, such as 4."));
    return count;
}

Result<double> parse_number(const std::string& typed) {
    const std::string text = without_blanks_around(typed);
    const bool negative = !text.empty() && text.front() == '-';
    std::int64_t digits = 0;
    std::int64_t below = 1;
    int count = 0;
    bool point = false;
    bool good = true;
    for (std::size_t i = negative ? 1 : 0; i < text.size(); ++i) {
        if (is_digit(text[i])) {
            digits = 10 * digits + (text[i] - '0');
            if (point) below *= 10;
            good = good && ++count <= most_digits_typed;
            if (!good) break;
        } else {
            good = good && !point && (text[i] == '.' || text[i] == ',');
            point = true;
        }
    }
    if (!good || count == 0) return no_number(typed, say("Type a number, such as 2.5."));
    // One division of two exact numbers: the double nearest to what was typed.
    const double value = static_cast<double>(digits) / static_cast<double>(below);
    return negative ? -value : value;
}

std::string typed_number(double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.6f", value);
    std::string words = text;
    while (words.back() == '0') words.pop_back();
    if (words.back() == '.') words.pop_back();
    return words == "-0" ? "0" : words;
}

Result<Step> parse_step(const std::string& typed, Unit default_unit) {
    const Result<Length> length = parse_length(typed, default_unit);
    if (!length) return length.problem();
    const Unit unit = unit_of(typed, default_unit);
    const std::int64_t one = length_of(unit).half_um;
    const std::int64_t shared = std::gcd(length->half_um, one);
    return Step{.numerator = length->half_um / shared, .denominator = one / shared, .unit = unit};
}

std::string step_words(const Step& step) {
    return in_words(Fraction{step.numerator, step.denominator}) + " " + symbol_of(step.unit);
}

}  // namespace boughwork
