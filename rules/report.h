// SPDX-License-Identifier: MIT
#pragma once
// The referee's verdict on one plan: what each piece is and does, every rule that is broken, every
// line of the challenge, and the tally. Plain values, the one source for window, console, table and
// paper.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/polygon.h"
#include "engine/rule.h"
#include "engine/scene.h"

namespace boughwork {

/// The smallest move that puts a finding right with a tenth of the tolerance to spare. It was tried:
/// after it the finding is gone and no new one has come.
struct Remedy {
    PieceNumber piece;
    Vec2 move_mm;                    ///< Of corner 1.
    double turn_ccw_deg = 0;         ///< About corner 1, after the move.
    std::vector<PieceNumber> chain;  ///< What hangs from the piece and moves along.
    std::string says;                ///< "2.1 cm left".
    friend bool operator==(const Remedy&, const Remedy&) = default;
};

enum class AmountIn { mm, degrees, count };

struct Finding {
    Rule rule = Rule::ground;
    std::vector<PieceNumber> pieces;    ///< All that it is about, in number order.
    std::vector<PieceNumber> at_fault;  ///< Those that do not count because of it.
    double amount = 0;                  ///< For contact the signed distance.
    AmountIn unit = AmountIn::mm;
    std::vector<Vec2> where_mm;  ///< A point, or the two ends of a segment.
    std::string says;            ///< One sentence in words, true to the number.
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// What holds a hanging piece: a span of a branch, or a side of another piece.
struct Support {
    std::size_t branch = 0;            ///< The branch that carries it: index into Tree::branches.
    int span = 0;                      ///< When it hangs from the branch itself.
    std::optional<PieceNumber> piece;  ///< When it hangs from a piece ...
    int side = 0;                      ///< ... by this side of that piece, from 1.
    friend bool operator==(const Support&, const Support&) = default;
};

enum class PieceState { counts, does_not_count, in_the_envelope };

/// A triangle's names. `close_call`: so near to a right angle that a protractor may say otherwise.
struct TriangleKinds {
    Kind by_sides = Kind::scalene;
    Kind by_angles = Kind::acute;
    bool close_call = false;
    friend bool operator==(const TriangleKinds&, const TriangleKinds&) = default;
};

/// What ruler and protractor say of a piece, at the challenge's step (rulebook 7); what a person is
/// told besides stands in description.h.
struct Measures {
    std::vector<std::int64_t> sides_in_steps;  ///< Side 1 first.
    std::int64_t perimeter_in_steps = 0;       ///< The sum of the measured sides.
    std::int64_t height_in_steps = 0;          ///< On the truly longest side; of triangles and cones.
    std::int64_t area_in_half_square_steps = 0;
    std::optional<TriangleKinds> kinds;  ///< Of three-cornered pieces.
    friend bool operator==(const Measures&, const Measures&) = default;
};

struct PieceReport {
    PieceNumber number;
    PieceState state = PieceState::in_the_envelope;
    Measures measures;
    std::optional<Measures> by_hand;    ///< The same with the sides that pupils measured, when those score.
    std::optional<Support> hangs_from;  ///< Present when it hangs, whether or not it counts.
    int side = 0;                       ///< By which of its sides, from 1; 0 when it does not hang.
    int depth = 0;                      ///< 1 from a branch; 0 when it does not hang.
    std::vector<PieceNumber> parents;   ///< All pieces one depth up that it lies on.
    std::vector<Rule> broken;           ///< Each once.
    double points = 0;                  ///< Without bonuses; 0 unless it counts.
    friend bool operator==(const PieceReport&, const PieceReport&) = default;
};

/// One thing that the challenge as a whole asks.
struct ChallengeLine {
    std::string about;        ///< "pieces", "pieces_per_branch/b1", "criteria/0" ...
    std::string asks;         ///< In words.
    std::optional<bool> met;  ///< Absent: not judged.
    double have = 0;
    double need = 0;
    std::string says;  ///< "isosceles: 8 of 27; 9 needed".
    friend bool operator==(const ChallengeLine&, const ChallengeLine&) = default;
};

struct BonusLine {
    std::string words;
    double points = 0;
    friend bool operator==(const BonusLine&, const BonusLine&) = default;
};

/// Pieces that came too near to each other, and the least costly ones to take down.
struct WayOut {
    std::vector<PieceNumber> take_down;
    std::vector<PieceNumber> then_count;
    std::string says;  ///< "If piece 9 comes down, the other 2 can count."
    friend bool operator==(const WayOut&, const WayOut&) = default;
};

struct Report {
    std::string plan;
    std::vector<PieceReport> pieces;  ///< Every piece of the scene, in number order.
    std::vector<Finding> findings;
    std::vector<ChallengeLine> challenge;
    std::vector<BonusLine> bonuses;
    std::vector<WayOut> ways_out;
    double score = 0;  ///< Points of the pieces that count, and bonuses.
    friend bool operator==(const Report&, const Report&) = default;
};

/// "equilateral" ...
const char* name_of(Kind kind);

/// What scores: the lengths measured by hand, where the challenge says so and a piece has them.
inline const Measures& scored(const PieceReport& piece) { return piece.by_hand ? *piece.by_hand : piece.measures; }

/// The report on that piece, or null.
const PieceReport* find_piece(const Report& report, PieceNumber number);

/// True when every hung piece counts and no judged line of the challenge is unmet.
bool all_well(const Report& report);

}  // namespace boughwork
