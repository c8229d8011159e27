// SPDX-License-Identifier: MIT
#include "engine/typed_length.h"

#include <array>
#include <cstdint>
#include <numeric>
#include <optional>
#include <string_view>

#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr std::int64_t longest_half_um = 2'000'000'000;  // 1e6 mm, as in the plan file
constexpr std::size_t most_digits = 9;                   // enough for 1e6 mm; keeps every product within 64 bits

/// A number as typed: numerator / denominator, both small enough for exact 64-bit products.
struct Fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes words off the front of what was typed.
class Typed {
public:
    explicit Typed(std::string_view rest) : rest_(rest) {}

    bool at_end() {
        skip_blanks();
        return rest_.empty();
    }
    bool take(std::string_view word) {
        skip_blanks();
        if (rest_.substr(0, word.size()) != word) return false;
        rest_.remove_prefix(word.size());
        return true;
    }
    /// The digits that stand next, without a blank before them; empty: none.
    std::string_view take_digits() {
        std::size_t count = 0;
        while (count < rest_.size() && is_digit(rest_[count])) ++count;
        const std::string_view digits = rest_.substr(0, count);
        rest_.remove_prefix(count);
        return digits;
    }
    bool next_is_digit() {
        skip_blanks();
        return !rest_.empty() && is_digit(rest_.front());
    }

private:
    void skip_blanks() {
        while (!rest_.empty() && (rest_.front() == ' ' || rest_.front() == '\t')) rest_.remove_prefix(1);
    }
    std::string_view rest_;
};

std::int64_t value_of(std::string_view digits) {
    std::int64_t value = 0;
    for (const char digit : digits) value = 10 * value + (digit - '0');
    return value;
}

std::optional<Fraction> take_number(Typed& typed) {
    typed.next_is_digit();  // skips blanks
    const std::string_view whole = typed.take_digits();
    if (whole.size() > most_digits) return std::nullopt;

    if (typed.take(".") || typed.take(",")) {
        const std::string_view decimals = typed.take_digits();
        if (decimals.empty() || decimals.size() > most_digits || whole.size() + decimals.size() > 2 * most_digits)
            return std::nullopt;
        Fraction number{value_of(whole), 1};
        for (const char digit : decimals) {
            number.numerator = 10 * number.numerator + (digit - '0');
            number.denominator *= 10;
        }
        return number;
    }
    if (whole.empty()) return std::nullopt;
    if (typed.take("/")) {
        typed.next_is_digit();
        const std::string_view below = typed.take_digits();
        if (below.empty() || below.size() > 4 || value_of(below) == 0) return std::nullopt;
        return Fraction{value_of(whole), value_of(below)};
    }
    if (typed.next_is_digit()) {  // "2 1/2"
        const std::string_view above = typed.take_digits();
        if (above.size() > 4 || !typed.take("/")) return std::nullopt;
        typed.next_is_digit();
        const std::string_view below = typed.take_digits();
        if (below.empty() || below.size() > 4 || value_of(below) == 0 || value_of(above) >= value_of(below))
            return std::nullopt;
        return Fraction{value_of(whole) * value_of(below) + value_of(above), value_of(below)};
    }
    return Fraction{value_of(whole), 1};
}

Unit take_unit(Typed& typed, Unit otherwise) {
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::in})
        if (typed.take(symbol_of(unit))) return unit;
    return otherwise;
}

Problem problem(std::string found, std::string to_do) { return {.found = std::move(found), .to_do = std::move(to_do)}; }

/// `half_um` of `unit_half_um` as a decimal without needless noughts, exact to `most_decimals`.
std::string decimal(std::int64_t half_um, std::int64_t unit_half_um, int most_decimals) {
    std::int64_t scale = 1;
    for (int i = 0; i < most_decimals; ++i) scale *= 10;
    const std::int64_t scaled = (half_um * scale * 2 + unit_half_um) / (2 * unit_half_um);  // a half goes up
    std::string words = std::to_string(scaled / scale);
    std::string decimals = std::to_string(scaled % scale + scale).substr(1);
    while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
    return decimals.empty() ? words : words + "." + decimals;
}

}  // namespace

const char* symbol_of(Unit unit) {
    switch (unit) {
        case Unit::mm: return "mm";
        case Unit::cm: return "cm";
        case Unit::in: return "in";
    }
    return "";
}

Result<Length> parse_length(const std::string& text, Unit default_unit) {
    Typed typed(text);
    if (typed.at_end()) return problem(say("There is no length yet."), say("Type a number, such as 7.5."));
    const std::optional<Fraction> number = take_number(typed);
    const Unit unit = take_unit(typed, default_unit);
    if (!number || !typed.at_end())
        return problem(say("\"{0}\" is not a length.", {text}), default_unit == Unit::in
                                                                    ? say("Type a number, such as 2 1/2.")
                                                                    : say("Type a number, such as 7.5."));
    if (number->numerator == 0) return problem(say("A side must be longer than 0."), say("Type a longer one."));

    const std::int64_t unit_half_um = length_of(unit).half_um;
    if (number->numerator / number->denominator > longest_half_um / unit_half_um)
        return problem(say("\"{0}\" is too long.", {text}), say("Type at most 1 kilometre."));
    // Reduced first: then the product is exact if and only if what is left of the denominator divides the unit.
    const std::int64_t shared = std::gcd(number->numerator, number->denominator);
    const std::int64_t denominator = number->denominator / shared;
    if (unit_half_um % denominator != 0)
        return problem(
            say("\"{0}\" is finer than scissors can cut.", {text}),
            unit == Unit::in ? say("Use halves, quarters, eighths or sixteenths.") : say("Use fewer decimals."));
    const Length length{number->numerator / shared * (unit_half_um / denominator)};
    if (length.half_um > longest_half_um)
        return problem(say("\"{0}\" is too long.", {text}), say("Type at most 1 kilometre."));
    return length;
}

std::string length_number(Length length, Unit unit) {
    if (length.half_um < 0) return "-" + length_number({-length.half_um}, unit);
    const std::int64_t unit_half_um = length_of(unit).half_um;
    if (unit != Unit::in) return decimal(length.half_um, unit_half_um, 5);  // always exact: 1e-5 cm is 0.2 half_um

    const std::int64_t sixteenth = unit_half_um / 16;
    if (length.half_um % sixteenth != 0) return decimal(length.half_um, unit_half_um, 3);
    const std::int64_t sixteenths = length.half_um / sixteenth;
    const std::int64_t whole = sixteenths / 16;
    const std::int64_t part = sixteenths % 16;
    if (part == 0) return std::to_string(whole);
    const std::int64_t shared = std::gcd(part, std::int64_t{16});
    const std::string fraction = std::to_string(part / shared) + "/" + std::to_string(16 / shared);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string length_words(Length length, Unit unit) { return length_number(length, unit) + " " + symbol_of(unit); }

}  // namespace boughwork
