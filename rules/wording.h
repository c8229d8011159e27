// SPDX-License-Identifier: MIT
#pragma once
// Lengths, counts and names in words, for the referee's sentences: in the challenge's unit, rounded
// to the side on which the sentence stays true.

#include <cstdint>
#include <string>
#include <vector>

#include "engine/rule.h"
#include "engine/scene.h"

namespace boughwork {

enum class Rounding { down, up };

/// "0.8 mm", "2.1 cm", "2 1/2 inches", "1/16 inch". Metric lengths below 1 cm go to a tenth of a
/// millimetre, others to a millimetre, unless they are whole tenths, as typed ones are; inches to a 32nd.
std::string length_in_words(double mm, Unit unit, Rounding rounding);

/// "2 1/2", "1/16", "0", with the fraction in lowest terms.
std::string mixed_fraction(std::int64_t numerator, std::int64_t denominator);

/// At most two decimals, none that say nothing: "87", "12.5".
std::string number_in_words(double value);

/// "piece 7"; "pieces 7, 8 and 9".
std::string in_words(PieceNumber piece);
std::string in_words(const std::vector<PieceNumber>& pieces);

/// "1 piece", "3 pieces": one of the two phrases, with the count for {0}.
std::string counted(long long count, const char* one, const char* several);

/// "cm", "inch" ... as the unit of one point.
std::string said(Unit unit);

/// "isosceles", "ground": a kind and a rule in a sentence. name_of() is what files and programs read.
std::string said(Kind kind);
std::string said(Rule rule);

/// "right triangles".
std::string triangles_in_words(Kind kind);

/// "at least 2", "at most 5", "2 to 5", "exactly 3".
std::string in_words(const Range<int>& range);
/// One of the two phrases, with the range for {0} and `also` for {1}: "at least 2 branches".
std::string ranged(const Range<int>& range, const char* one, const char* several, const std::string& also = "");

/// "2.1 cm left", "4.3 mm up and 1 mm right".
std::string move_in_words(Vec2 move_mm, Unit unit);

std::string capitalised(std::string words);

}  // namespace boughwork
