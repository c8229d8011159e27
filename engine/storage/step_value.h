// SPDX-License-Identifier: MIT
#pragma once
// The value of a challenge's step as the plan file has it: a number such as 0.5, or a text such as
// "1/4" or "2 1/2". Exact both ways.

#include <cstdint>
#include <optional>
#include <string>

namespace boughwork {

/// Positive, in lowest terms.
struct Fraction {
    std::int64_t numerator = 1;
    std::int64_t denominator = 1;
    friend bool operator==(const Fraction&, const Fraction&) = default;
};

/// The decimal of at most six places whose nearest double this is; none: there is no such, or it is
/// not from 0.000001 to 1000000.
std::optional<Fraction> fraction_from(double number);

/// A whole number, a fraction, or a whole number and a fraction, each part at most 1000000; none: the
/// text is something else, or nought.
std::optional<Fraction> fraction_from(const std::string& text);

/// "3", "1/4", "2 1/2"
std::string in_words(const Fraction& fraction);

}  // namespace boughwork
