// SPDX-License-Identifier: MIT
#include "engine/typed_angle.h"

#include <cmath>
#include <cstdint>
#include <optional>

#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr std::size_t most_digits = 15;  // a double holds them exactly

std::string without_blanks_and_sign(std::string typed) {
    const std::string sign = "°";
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!typed.empty() && blank(typed.back())) typed.pop_back();
    if (typed.size() >= sign.size() && typed.compare(typed.size() - sign.size(), sign.size(), sign) == 0)
        typed.resize(typed.size() - sign.size());
    while (!typed.empty() && blank(typed.back())) typed.pop_back();
    std::size_t first = 0;
    while (first < typed.size() && blank(typed[first])) ++first;
    return typed.substr(first);
}

/// Digits with at most one point or comma among them.
std::optional<double> decimal(const std::string& words) {
    std::int64_t digits = 0;
    std::size_t count = 0;
    std::optional<std::size_t> decimals;
    for (const char c : words) {
        if ((c == '.' || c == ',') && !decimals) {
            decimals = 0;
        } else if (c >= '0' && c <= '9' && count < most_digits) {
            digits = 10 * digits + (c - '0');
            ++count;
            if (decimals) ++*decimals;
        } else {
            return std::nullopt;
        }
    }
    if (count == 0 || decimals == std::size_t{0}) return std::nullopt;
    return static_cast<double>(digits) / std::pow(10, static_cast<double>(decimals.value_or(0)));
}

}  // namespace

Result<double> parse_angle_deg(const std::string& typed) {
    const std::string words = without_blanks_and_sign(typed);
    if (words.empty()) return Problem{say("There is no angle yet."), "", say("Type degrees, such as 60 or 22.5.")};
    const std::optional<double> deg = decimal(words);
    if (!deg) return Problem{say("\"{0}\" is not an angle.", {typed}), "", say("Type degrees, such as 60 or 22.5.")};
    if (*deg <= 0 || *deg >= 180)
        return Problem{say("No corner of a triangle has {0} degrees.", {words}), "",
                       say("Type more than 0 and less than 180.")};
    return *deg;
}

std::string angle_number(double deg, int decimals) {
    std::int64_t scale = 1;
    for (int i = 0; i < decimals; ++i) scale *= 10;
    const auto scaled = static_cast<std::int64_t>(std::floor(deg * static_cast<double>(scale) + 0.5));
    std::string words = std::to_string(scaled / scale);
    std::string rest = std::to_string(scaled % scale + scale).substr(1);
    while (!rest.empty() && rest.back() == '0') rest.pop_back();
    return rest.empty() ? words : words + "." + rest;
}

}  // namespace boughwork
