// SPDX-License-Identifier: MIT
#include "rules/hand_measured.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "engine/geometry/shape.h"
#include "engine/words/say.h"
#include "rules/measure.h"
#include "rules/told.h"

namespace boughwork {
namespace {

/// True when the side lies at most half a step from so many steps. Both halves belong to it: from a
/// side half-way between two steps, either is as near. By squares, since a side may be a root.
bool is_nearest(const Shape& shape, std::size_t side, std::int64_t steps, const StepSize& step) {
    const auto squared = static_cast<Uint128>(squared_distance(shape, side, (side + 1) % corner_count(shape)));
    const auto below = static_cast<Uint128>(step.denominator);
    const Uint128 double_squared = 4 * squared * below * below;
    const auto reaches = [&](std::int64_t half_steps) {
        const Uint128 length = static_cast<Uint128>(half_steps) * static_cast<Uint128>(step.numerator);
        return length * length;
    };
    return (steps == 0 || reaches(2 * steps - 1) <= double_squared) && double_squared <= reaches(2 * steps + 1);
}

/// `length` times above / below, to the nearest half-micrometre.
Length scaled(Length length, std::int64_t above, std::int64_t below) {
    return {(2 * length.half_um * above + below) / (2 * below)};
}

/// For a hint alone: as near as a sixteenth of an inch, read for a tenth of a centimetre, comes to a side.
bool is_about(const Shape& shape, std::size_t side, Length length) {
    constexpr double within = 0.025;
    const double true_mm =
        std::sqrt(static_cast<double>(squared_distance(shape, side, (side + 1) % corner_count(shape)))) /
        half_um_per_mm;
    return std::abs(to_mm(length) - true_mm) <= within * true_mm;
}

}  // namespace

Reading reading_of(const Shape& shape, std::size_t side, std::optional<Length> by_hand, const Challenge& challenge) {
    if (!by_hand) return Reading::none;
    const StepSize step = size_of(challenge.step);
    const auto fits = [&](Length length) {
        return length.half_um >= 0 && is_nearest(shape, side, measured_length(length, challenge.step), step);
    };
    if (fits(*by_hand)) return Reading::fits;
    const Length one = length_of(challenge.units == Unit::in ? Unit::in : Unit::cm);
    if (fits(*by_hand - one)) return Reading::began_at_one;
    if (fits(scaled(*by_hand, 1, 10)) || fits(scaled(*by_hand, 10, 1))) return Reading::other_unit;
    // The two edges of a ruler: an inch is 2.54 cm.
    if (is_about(shape, side, scaled(*by_hand, 127, 50)) || is_about(shape, side, scaled(*by_hand, 50, 127)))
        return Reading::other_unit;
    return Reading::does_not_fit;
}

std::vector<Reading> readings_of(const Piece& piece, const Challenge& challenge) {
    std::vector<Reading> readings(corner_count(piece.shape), Reading::none);
    for (std::size_t i = 0; i < piece.by_hand.sides.size() && i < readings.size(); ++i)
        readings[i] = reading_of(piece.shape, i, piece.by_hand.sides[i], challenge);
    return readings;
}

std::string measure_again_words(PieceNumber piece, std::size_t side, Reading reading) {
    const std::string number = std::to_string(piece.value);
    const std::string which = std::to_string(side + 1);
    switch (reading) {
        case Reading::none:
        case Reading::fits: return "";
        case Reading::other_unit:
            return say("Measure side {0} of piece {1} again. Look which unit the ruler shows.", {which, number});
        case Reading::began_at_one:
            return say("Measure side {0} of piece {1} again. Begin at 0, not at 1.", {which, number});
        case Reading::does_not_fit: return say("Measure side {0} of piece {1} again.", {which, number});
    }
    return "";
}

bool is_hand_symbol(const std::string& name) {
    return std::find(std::begin(hand_symbols), std::end(hand_symbols), name) != std::end(hand_symbols);
}

std::string next_hand_symbol(const std::string& name) {
    const auto* now = std::find(std::begin(hand_symbols), std::end(hand_symbols), name);
    return now == std::end(hand_symbols) || std::next(now) == std::end(hand_symbols) ? hand_symbols[0]
                                                                                     : *std::next(now);
}

std::vector<std::int64_t> sides_known_in_steps(const Scene& scene, const Report& report) {
    std::vector<std::int64_t> known;
    for (const PieceReport& reported : report.pieces) {
        const Piece& piece = *find_piece(scene, reported.number);
        const bool told = is_told(scene, Mathematics::lengths, piece);
        const auto& by_hand = piece.by_hand.sides;
        for (std::size_t i = 0; i < reported.measures.sides_in_steps.size(); ++i) {
            if (i < by_hand.size() && by_hand[i])
                known.push_back(measured_length(*by_hand[i], scene.challenge.step));
            else if (told)
                known.push_back(reported.measures.sides_in_steps[i]);
        }
    }
    return known;
}

}  // namespace boughwork
