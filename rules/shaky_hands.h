// SPDX-License-Identifier: MIT
#pragma once
// Nobody cuts and tapes exactly: a plan is built many times with the errors of a person's hands (engine/hands.h), and
// the same referee judges every build.
//
// How hands err. Every triangle's sides are cut with a normal error, likewise an outline's corners, a cone's radius
// and slant; the side that a piece hangs by keeps its middle and its line. A piece is hung after what it hangs from,
// and goes along with it. It is taped, and the edge that it is taped to guides the hand: along the edge the error of
// place is free; square to it, and in the turn about the hanging side's middle, the hand errs as well, but looks,
// and lays the paper anew until both ends of the side are as near to the edge as the referee asks (within t; after
// thirty tries it lies exactly, as planned). So a taped piece can slip past an end, meet a neighbour, come too near
// to the ground or be cut too large, but it is not called loose for a gap that nobody would tape. The same holds of
// a piece that is planned to run past an end. What hangs from nothing is put where the plan says, by eye: its errors
// are free in x, in y and in the turn.

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "rules/rebuilding.h"
#include "rules/report.h"

namespace boughwork {

/// How often something came about, and what that says.
struct Chance {
    int times = 0;
    int of = 0;
    /// The share; 0 of nothing.
    double share() const { return of == 0 ? 0 : static_cast<double>(times) / of; }
    /// The standard error of the share, reckoned with one more build of each kind than there were (after Laplace), so
    /// that it never pretends to be certain.
    double standard_error() const;
    friend bool operator==(const Chance&, const Chance&) = default;
};

struct ShakyPiece {
    PieceNumber number;
    Chance holds;                  ///< It counts.
    std::optional<Rule> fails_by;  ///< What it breaks most often; of equals the one first in Rule.
    Chance breaks_it;              ///< That rule.
    std::string says;              ///< "Piece 7 fails in 6 of 10 builds. Most often: touches a neighbour."
    friend bool operator==(const ShakyPiece&, const ShakyPiece&) = default;
};

/// A line of the challenge that is judged.
struct ShakyLine {
    std::string about;
    std::string asks;
    Chance met;
    friend bool operator==(const ShakyLine&, const ShakyLine&) = default;
};

struct HandsReport {
    std::string plan;
    int builds = 0;
    std::vector<ShakyPiece> pieces;  ///< The hung ones, in number order.
    std::vector<ShakyLine> challenge;
    Chance all_hold;  ///< Every hung piece counts.
    Chance all_well;  ///< That, and no judged line of the challenge is unmet.
    double mean_score = 0;
    double score_error = 0;  ///< The standard error of the mean.
    std::string says;        ///< "All pieces hold in 8 of 10 builds."
    /// Every hung piece holds in at least nine of ten builds.
    bool holds() const;
    friend bool operator==(const HandsReport&, const HandsReport&) = default;
};

class ShakyHands {
public:
    /// Copies what it needs. The scene must be possible.
    ShakyHands(const Scene& scene, const Plan& plan);

    /// That many builds more; asked for a few at a time they come to the same.
    void build(int more);
    int builds() const { return builds_; }
    HandsReport report() const;

    /// How often the piece failed so far.
    Chance fails(PieceNumber piece) const;

private:
    static constexpr std::size_t rules = static_cast<std::size_t>(Rule::over_the_limit) + 1;
    struct Tally {
        PieceNumber number;
        int holds = 0;
        std::array<int, rules> broken{};
    };
    void count(const Report& report);

    Rebuilding rebuilding_;
    int builds_ = 0;
    std::string plan_name_;
    std::vector<Tally> pieces_;  ///< In number order.
    std::vector<ShakyLine> lines_;
    int all_hold_ = 0;
    int all_well_ = 0;
    std::vector<double> scores_;  ///< One for each build, so that their sum hangs on no order.
};

/// The share as so many of 10, 100 or 1000, so that it is neither none nor all unless it is so; of few builds the
/// number itself.
Chance rounded(const Chance& chance);
/// Rounded and short: "holds 8 of 10", "never holds", "always holds".
std::string holds_in_words(const Chance& holds);
/// Rounded: "6 of 10 builds", "3 of 100 builds", "none of 2000 builds".
std::string in_words(const Chance& chance);

}  // namespace boughwork
