// SPDX-License-Identifier: MIT
#include "engine/storage/step_value.h"

#include <cmath>
#include <numeric>
#include <string_view>

namespace boughwork {
namespace {

constexpr std::int64_t greatest_part = 1'000'000;

Fraction in_lowest_terms(std::int64_t numerator, std::int64_t denominator) {
    const std::int64_t shared = std::gcd(numerator, denominator);
    return {numerator / shared, denominator / shared};
}

/// One to seven digits at the front of the text, taken off; none: there are no or more digits.
std::optional<std::int64_t> take_whole(std::string_view& text) {
    constexpr std::size_t most_digits = 7;
    std::int64_t value = 0;
    std::size_t count = 0;
    for (; count < text.size() && text[count] >= '0' && text[count] <= '9'; ++count) {
        if (count == most_digits) return std::nullopt;
        value = 10 * value + (text[count] - '0');
    }
    if (count == 0 || value > greatest_part) return std::nullopt;
    text.remove_prefix(count);
    return value;
}

bool take(std::string_view& text, char c) {
    if (text.empty() || text.front() != c) return false;
    text.remove_prefix(1);
    return true;
}

}  // namespace

std::optional<Fraction> fraction_from(double number) {
    if (!(number > 0 && number <= greatest_part)) return std::nullopt;
    for (std::int64_t denominator = 1; denominator <= greatest_part; denominator *= 10) {
        // Both are whole and far below 2^53, so that the quotient is the double nearest to the decimal.
        const std::int64_t numerator = std::llround(number * static_cast<double>(denominator));
        if (static_cast<double>(numerator) / static_cast<double>(denominator) == number)
            return in_lowest_terms(numerator, denominator);
    }
    return std::nullopt;
}

std::optional<Fraction> fraction_from(const std::string& text) {
    std::string_view rest = text;
    std::int64_t whole = 0;
    std::optional<std::int64_t> above = take_whole(rest);
    if (above && take(rest, ' ')) {
        whole = *above;
        above = take_whole(rest);
        if (rest.empty()) return std::nullopt;  // "2 1"
    }
    std::optional<std::int64_t> below = 1;
    if (above && take(rest, '/')) below = take_whole(rest);
    if (!above || !below || *below == 0 || !rest.empty()) return std::nullopt;
    const std::int64_t numerator = whole * *below + *above;
    if (numerator == 0) return std::nullopt;
    return in_lowest_terms(numerator, *below);
}

std::string in_words(const Fraction& fraction) {
    const std::int64_t whole = fraction.numerator / fraction.denominator;
    const std::int64_t rest = fraction.numerator % fraction.denominator;
    if (rest == 0) return std::to_string(whole);
    const std::string part = std::to_string(rest) + "/" + std::to_string(fraction.denominator);
    return whole == 0 ? part : std::to_string(whole) + " " + part;
}

}  // namespace boughwork
