// SPDX-License-Identifier: MIT
#pragma once
// The challenge as the teacher set it: criteria, constraints and how the score is made.
// Values only; what each setting means is decided in rules/. Every default is the rulebook's,
// and a list of limits that is left out asks nothing.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/length.h"
#include "engine/result.h"

namespace boughwork {

/// Which pieces hold what hangs from them.
enum class Holds {
    hanging,   ///< A piece that hangs holds its chain, even when it does not count itself.
    counting,  ///< Only a piece that counts holds its chain.
};

/// How near two neighbours may come without overlapping.
enum class Neighbours {
    apart,             ///< No touch at all.
    corner_to_corner,  ///< A corner may touch a corner.
    corners,           ///< A corner may touch a corner or a side.
    sides,             ///< They may touch anyhow.
};

/// Who loses when two hanging pieces come too near.
enum class AtFault { both, higher_number, fewest_points };

/// Whether limits on how many at most take pieces out of the count.
enum class OverLimit { extras_do_not_count, noted };

/// A name a triangle can bear: three by sides, three by angles.
enum class Kind { equilateral, isosceles, scalene, right, acute, obtuse };

/// How finely sides are measured: `numerator / denominator` of `unit`, such as 1/4 in; positive, in
/// lowest terms.
struct Step {
    std::int64_t numerator = 1;
    std::int64_t denominator = 1;
    Unit unit = Unit::mm;
    std::string unknown_fields;

    friend bool operator==(const Step&, const Step&) = default;
};

/// A least and a greatest, each itself allowed; absent: no limit.
template <class T>
struct Range {
    std::optional<T> least;
    std::optional<T> most;

    friend bool operator==(const Range&, const Range&) = default;
};

struct Limits {
    Range<int> pieces;             ///< Pieces that count, in all.
    Range<int> pieces_per_branch;  ///< Pieces that count, on each branch, chains included.
    Range<int> branches;           ///< Branches in the tree.
    std::optional<int> sheets;     ///< Sheets of paper, at most.
    Range<Length> side;            ///< Every side of a hung piece.
    std::optional<Length> least_height;
    std::string unknown_fields;

    friend bool operator==(const Limits&, const Limits&) = default;
};

/// At least `pieces` counting pieces of which no two are alike.
struct NoTwoAlike {
    int pieces = 1;
    friend bool operator==(const NoTwoAlike&, const NoTwoAlike&) = default;
};

/// At least so many counting triangles of a kind.
struct KindAppears {
    Kind kind = Kind::right;
    int at_least = 1;
    friend bool operator==(const KindAppears&, const KindAppears&) = default;
};

enum class ShareOf { pieces, points };

/// At least, or at most, so many per cent of the counting triangles are of a kind.
struct KindShare {
    Kind kind = Kind::isosceles;
    double percent = 0;
    bool at_most = false;
    ShareOf of = ShareOf::pieces;
    friend bool operator==(const KindShare&, const KindShare&) = default;
};

struct Criterion {
    std::variant<NoTwoAlike, KindAppears, KindShare> asks;
    std::string unknown_fields;

    friend bool operator==(const Criterion&, const Criterion&) = default;
};

struct PerPiece {
    Kind kind = Kind::equilateral;
    friend bool operator==(const PerPiece&, const PerPiece&) = default;
};
struct PerDepth {
    int depth = 2;
    friend bool operator==(const PerDepth&, const PerDepth&) = default;
};
struct IfMet {
    int criterion = 0;  ///< Index into Challenge::criteria.
    friend bool operator==(const IfMet&, const IfMet&) = default;
};
struct InWords {
    std::string words;  ///< The teacher's own.
    friend bool operator==(const InWords&, const InWords&) = default;
};

struct Bonus {
    std::variant<PerPiece, PerDepth, IfMet, InWords> for_what;
    double points = 0;
    std::string unknown_fields;

    friend bool operator==(const Bonus&, const Bonus&) = default;
};

enum class ScoreBy { longest_side, perimeter, area };

struct Scoring {
    ScoreBy by = ScoreBy::perimeter;
    std::optional<Unit> unit;  ///< One point is one of it (squared for area); absent: the challenge's unit.
    std::vector<Bonus> bonuses;
    std::string unknown_fields;

    friend bool operator==(const Scoring&, const Scoring&) = default;
};

/// When the program says what pupils are to find out themselves.
enum class Shows { always, after_an_answer, after_the_lesson };

/// Who does the mathematics, for each kind of it.
struct Shown {
    Shows lengths = Shows::always;
    Shows kinds = Shows::always;
    Shows sums = Shows::always;    ///< Perimeter, height and area.
    Shows points = Shows::always;  ///< Of a piece, and the score.
    Shows fixes = Shows::always;   ///< "After an answer": once a pupil has tried.
    std::string unknown_fields;

    friend bool operator==(const Shown&, const Shown&) = default;
};

struct Challenge {
    std::string name;
    Unit units = Unit::cm;  ///< What is shown.
    Step step;
    double tolerance_mm = 1.0;           ///< What paper, scissors and tape are good to (common practice, no source).
    double right_within_deg = 1.0;       ///< 2: the corner of a card, 1: a protractor, 0.1: by calculation.
    std::optional<int> depth_limit = 1;  ///< 1: from branches only; absent: any depth.
    Holds holds = Holds::hanging;
    Neighbours neighbours = Neighbours::corners;
    AtFault at_fault = AtFault::both;
    OverLimit over_limit = OverLimit::extras_do_not_count;
    bool equilateral_is_isosceles = false;
    Limits limits;
    std::vector<Criterion> criteria;
    Scoring score;
    Shown shown;
    bool hand_lengths_score = false;    ///< A piece all of whose sides were measured by hand scores by those lengths.
    bool holds_after_settling = false;  ///< Gravity is reckoned with: every piece is still to count, the tree to stand.
    bool sealed = false;                ///< Shown, and changed no more until the seal is broken.
    std::string unknown_fields;

    friend bool operator==(const Challenge&, const Challenge&) = default;
};

/// Whether its numbers can be meant: a positive step and tolerance, bonuses for criteria that are there ...
Result<Done> possible(const Challenge& challenge);

/// True when a bonus is for that criterion.
bool is_rewarded(const Challenge& challenge, std::size_t criterion);
/// Without a criterion that no bonus is for; bonuses for later ones stay with them.
Challenge without_criterion(Challenge challenge, std::size_t criterion);

/// The unit of one point.
inline Unit score_unit(const Challenge& challenge) { return challenge.score.unit.value_or(challenge.units); }

}  // namespace boughwork
