// SPDX-License-Identifier: MIT
#include "rules/wording.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numeric>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// How many of `grain_mm` the length is, rounded; a hair off a whole number is that number.
std::int64_t grains(double mm, double grain_mm, Rounding rounding) {
    const double count = mm / grain_mm;
    const double hair = hair_mm / grain_mm;
    return static_cast<std::int64_t>(rounding == Rounding::down ? std::floor(count + hair) : std::ceil(count - hair));
}

}  // namespace

std::string mixed_fraction(std::int64_t numerator, std::int64_t denominator) {
    const std::int64_t whole = numerator / denominator;
    const std::int64_t rest = numerator % denominator;
    if (rest == 0) return std::to_string(whole);
    const std::int64_t common = std::gcd(rest, denominator);
    const std::string fraction = std::to_string(rest / common) + "/" + std::to_string(denominator / common);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string number_in_words(double value) {
    char text[64];
    // A half goes up, as everywhere; printf alone would round 13.125 to the even digit, to 13.12.
    std::snprintf(text, sizeof text, "%.2f", std::round(value * 100) / 100);
    std::string words = text;
    while (words.back() == '0') words.pop_back();
    if (words.back() == '.') words.pop_back();
    return words == "-0" ? "0" : words;
}

std::string length_in_words(double mm, Unit unit, Rounding rounding) {
    if (unit == Unit::in) {
        constexpr std::int64_t parts = 32;
        const std::int64_t count = grains(mm, 25.4 / parts, rounding);
        if (count == 0 && mm > hair_mm) return say("less than 1/32 inch");
        return say(count <= parts && count > 0 ? phrase("{0} inch") : phrase("{0} inches"),
                   {mixed_fraction(count, parts)});
    }
    if (mm < 10 - hair_mm) {
        const std::int64_t tenths = grains(mm, 0.1, rounding);
        if (tenths == 0 && mm > hair_mm) return say("less than 0.1 mm");
        return number_in_words(static_cast<double>(tenths) / 10) + " mm";
    }
    const std::int64_t tenths = std::llround(mm * 10);
    const bool said_exactly = std::abs(mm * 10 - static_cast<double>(tenths)) <= 10 * hair_mm;
    const double shown_mm =
        said_exactly ? static_cast<double>(tenths) / 10 : static_cast<double>(grains(mm, 1, rounding));
    return unit == Unit::mm ? number_in_words(shown_mm) + " mm" : number_in_words(shown_mm / 10) + " cm";
}

std::string in_words(PieceNumber piece) { return say("piece {0}", {std::to_string(piece.value)}); }

std::string in_words(const std::vector<PieceNumber>& pieces) {
    if (pieces.size() == 1) return in_words(pieces.front());
    std::string but_the_last;
    for (std::size_t i = 0; i + 1 < pieces.size(); ++i)
        but_the_last += (i == 0 ? "" : ", ") + std::to_string(pieces[i].value);
    return say("pieces {0} and {1}", {but_the_last, std::to_string(pieces.back().value)});
}

std::string counted(long long count, const char* one, const char* several) {
    return say(count == 1 ? one : several, {std::to_string(count)});
}

std::string said(Unit unit) {
    switch (unit) {
        case Unit::mm: return "mm";
        case Unit::cm: return "cm";
        case Unit::in: return say("inch");
    }
    return "";
}

std::string said(Kind kind) {
    switch (kind) {
        case Kind::equilateral: return say("equilateral");
        case Kind::isosceles: return say("isosceles");
        case Kind::scalene: return say("scalene");
        case Kind::right: return say("right");
        case Kind::acute: return say("acute");
        case Kind::obtuse: return say("obtuse");
    }
    return "";
}

std::string triangles_in_words(Kind kind) {
    switch (kind) {
        case Kind::equilateral: return say("equilateral triangles");
        case Kind::isosceles: return say("isosceles triangles");
        case Kind::scalene: return say("scalene triangles");
        case Kind::right: return say("right triangles");
        case Kind::acute: return say("acute triangles");
        case Kind::obtuse: return say("obtuse triangles");
    }
    return "";
}

std::string said(Rule rule) {
    switch (rule) {
        case Rule::runs_past_the_end: return say("runs past the end");
        case Rule::over_a_branch: return say("over a branch");
        case Rule::not_by_a_whole_side: return say("not by a whole side");
        case Rule::cut_off: return say("cut off");
        case Rule::held_by_nothing: return say("held by nothing");
        case Rule::too_deep: return say("too deep");
        case Rule::ground: return say("ground");
        case Rule::trunk: return say("trunk");
        case Rule::other_branch: return say("other branch");
        case Rule::overlap: return say("overlap");
        case Rule::touching: return say("touching");
        case Rule::wrong_size: return say("wrong size");
        case Rule::over_the_limit: return say("over the limit");
    }
    return "";
}

std::string in_words(const Range<int>& range) {
    const int least = range.least.value_or(0);
    const std::string from = std::to_string(least);
    if (!range.most) return say("at least {0}", {from});
    if (least == *range.most) return say("exactly {0}", {from});
    if (least <= 0) return say("at most {0}", {std::to_string(*range.most)});
    return say("{0} to {1}", {from, std::to_string(*range.most)});
}

std::string ranged(const Range<int>& range, const char* one, const char* several, const std::string& also) {
    const int last_named = range.most.value_or(range.least.value_or(0));
    return say(last_named == 1 ? one : several, {in_words(range), also});
}

std::string move_in_words(Vec2 move_mm, Unit unit) {
    // A move along a gently sloping branch is a move left or right to the eye.
    const double least = 0.15 * length(move_mm);
    std::string words;
    const auto add = [&](double amount, const char* positive, const char* negative) {
        if (std::abs(amount) <= least) return;
        const std::string part =
            say(amount > 0 ? positive : negative, {length_in_words(std::abs(amount), unit, Rounding::up)});
        words = words.empty() ? part : say("{0} and {1}", {words, part});
    };
    add(move_mm.x, phrase("{0} right"), phrase("{0} left"));
    add(move_mm.y, phrase("{0} up"), phrase("{0} down"));
    return words;
}

std::string capitalised(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

}  // namespace boughwork
