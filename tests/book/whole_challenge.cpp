// SPDX-License-Identifier: MIT
#include "tests/book/whole_challenge.h"

#include "tests/book/counting.h"
#include "tests/book/measuring.h"
#include "tests/book/scoring.h"

namespace boughwork::book {

namespace {

/// A line about a count with a least and a greatest; what is missed is what is needed.
void ask(std::vector<ChallengeLine>& lines, const std::string& about, int have, const Range<int>& range) {
    const bool asks = range.most || (range.least && *range.least > 0);
    if (!asks) return;
    const bool too_few = range.least && have < *range.least;
    const bool too_many = range.most && have > *range.most;
    const int need = too_many || !range.least || *range.least == 0 ? *range.most : *range.least;
    lines.push_back({.about = about,
                     .met = !too_few && !too_many,
                     .have = static_cast<double>(have),
                     .need = static_cast<double>(need)});
}

struct Lines {
    const Judgement& j;
    const Report& report;
    ChallengeLine& line;

    std::vector<const PieceReport*> counting() const {
        std::vector<const PieceReport*> pieces;
        for (const PieceReport& piece : report.pieces)
            if (piece.state == PieceState::counts) pieces.push_back(&piece);
        return pieces;
    }

    /// "Number of counting pieces of which no two are alike".
    void operator()(const NoTwoAlike& asks) const {
        std::vector<const Shape*> different;
        for (const PieceReport* piece : counting()) {
            const Shape& shape = find_piece(j.scene, piece->number)->shape;
            bool known = false;
            for (const Shape* other : different)
                if (alike(shape, *other, j.challenge().step)) known = true;
            if (!known) different.push_back(&shape);
        }
        line.have = static_cast<double>(different.size());
        line.need = asks.pieces;
        line.met = line.have >= line.need;
    }

    /// "Kinds that must appear".
    void operator()(const KindAppears& asks) const {
        for (const PieceReport* piece : counting()) line.have += is_of_kind(piece->measures, asks.kind, j.challenge());
        line.need = asks.at_least;
        line.met = line.have >= line.need;
    }

    /// "The share of a kind ... decided by multiplying out". Pieces are counted by ones and points by their
    /// smallest parts, so that both are whole; per cents are drawn so that a double holds them exactly.
    void operator()(const KindShare& asks) const {
        const bool by_points = asks.of == ShareOf::points;
        const Real one = by_points ? one_part(j.challenge()) : 1;
        Real of_kind = 0;
        Real all = 0;
        for (const PieceReport* piece : counting()) {
            if (!piece->measures.kinds) continue;  // Of the counting triangles.
            const Real weight =
                by_points ? static_cast<Real>(points_in_parts(piece->measures, j.challenge().score.by)) : 1;
            all += weight;
            if (is_of_kind(piece->measures, asks.kind, j.challenge())) of_kind += weight;
        }
        const Real wanted_times_100 = asks.percent * all;
        line.met = asks.at_most ? 100 * of_kind <= wanted_times_100 : 100 * of_kind >= wanted_times_100;
        Real need = asks.at_most ? std::floor(wanted_times_100 / 100) : std::ceil(wanted_times_100 / 100);
        if (all == 0) {  // "Of no triangles, a least share is not met, a greatest is."
            line.met = asks.at_most;
            need = asks.at_most ? 0 : 1;
        }
        line.have = static_cast<double>(of_kind * one);
        line.need = static_cast<double>(need * one);
    }
};

}  // namespace

std::vector<ChallengeLine> challenge_lines(const Judgement& j, const Report& report) {
    const Challenge& challenge = j.challenge();
    const Limits& limits = challenge.limits;
    const std::vector<PieceNumber> counting = counting_pieces(j);
    const auto& branches = j.plan.tree.branches;
    std::vector<ChallengeLine> lines;
    ask(lines, "pieces", static_cast<int>(counting.size()), limits.pieces);
    ask(lines, "branches", static_cast<int>(branches.size()), limits.branches);
    for (std::size_t b = 0; b < branches.size(); ++b)
        ask(lines, "pieces_per_branch/" + branches[b].name, how_many_on(j, counting, b), limits.pieces_per_branch);
    if (limits.sheets)  // Contract: "not judged until sheets can be laid out".
        lines.push_back({.about = "sheets", .need = static_cast<double>(*limits.sheets)});
    for (std::size_t i = 0; i < challenge.criteria.size(); ++i) {
        lines.push_back({.about = "criteria/" + std::to_string(i)});
        std::visit(Lines{j, report, lines.back()}, challenge.criteria[i].asks);
    }
    // "after_settling" is judged apart, once the tree has been stood up.
    if (challenge.holds_after_settling)
        lines.push_back({.about = "after_settling", .need = static_cast<double>(counting.size())});
    return lines;
}

}  // namespace boughwork::book
