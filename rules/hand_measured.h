// SPDX-License-Identifier: MIT
#pragma once
// What pupils read off their ruler, held against the true sides at the challenge's step. Decided on
// whole numbers; what is said points at a slip and does not tell the length.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "rules/report.h"

namespace boughwork {

enum class Reading {
    none,          ///< Not measured yet.
    fits,          ///< The nearest step; of a side half-way between two steps, either.
    other_unit,    ///< It would fit in another unit: ten times too long, a tenth, inches for centimetres ...
    began_at_one,  ///< Too long by exactly one centimetre or inch: read from 1 instead of 0.
    does_not_fit,
};

/// Of side `side`, from 0.
Reading reading_of(const Shape& shape, std::size_t side, std::optional<Length> by_hand, const Challenge& challenge);

/// One for each side.
std::vector<Reading> readings_of(const Piece& piece, const Challenge& challenge);

/// "Measure side 2 of piece 4 again. Begin at 0, not at 1."; empty where nothing is to be done again.
std::string measure_again_words(PieceNumber piece, std::size_t side, Reading reading);

/// Who measured, as a mark that pupils choose and we draw: HandMeasured::by.
inline constexpr const char* hand_symbols[] = {"star", "moon", "sun", "leaf", "drop", "heart"};
bool is_hand_symbol(const std::string& name);
/// The one after it, round and round; the first after anything else.
std::string next_hand_symbol(const std::string& name);

/// The sides that pupils measured, those that they did not as planned where lengths are told: in steps.
std::vector<std::int64_t> sides_known_in_steps(const Scene& scene, const Report& report);

}  // namespace boughwork
