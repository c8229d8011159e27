// SPDX-License-Identifier: MIT
#include "rules/challenge_lines.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <unordered_set>

#include "rules/measure.h"
#include "rules/tally.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

using Pieces = std::vector<const PieceReport*>;

Pieces counting_pieces(const Report& report) {
    Pieces counting;
    for (const PieceReport& p : report.pieces)
        if (p.state == PieceState::counts) counting.push_back(&p);
    return counting;
}

bool asks_something(const Range<int>& range) { return range.most || range.least.value_or(0) > 0; }

/// "at least 2", "at most 5", "2 to 5", "exactly 3".
std::string in_words(const Range<int>& range) {
    const int least = range.least.value_or(0);
    if (!range.most) return "at least " + std::to_string(least);
    if (least == *range.most) return "exactly " + std::to_string(least);
    if (least <= 0) return "at most " + std::to_string(*range.most);
    return std::to_string(least) + " to " + std::to_string(*range.most);
}

/// What is counted, as one and as several: "piece that counts", "pieces that count".
struct Counted {
    std::string one;
    std::string several;
};

ChallengeLine range_line(std::string about, const Counted& what, const Range<int>& range, long long have) {
    const int least = range.least.value_or(0);
    const bool too_few = have < least;
    const bool too_many = range.most && have > *range.most;
    const bool by_most = too_many || least <= 0;
    const int last_named = range.most.value_or(least);
    return {.about = std::move(about),
            .asks = in_words(range) + " " + (last_named == 1 ? what.one : what.several),
            .met = !too_many && !too_few,
            .have = static_cast<double>(have),
            .need = static_cast<double>(by_most ? range.most.value_or(0) : least),
            .says = what.several + ": " + std::to_string(have) + "; " + in_words(range) +
                    (range.most && !too_few ? " allowed" : " needed")};
}

/// One line for each kind of criterion.
struct CriterionLine {
    const Scene& scene;
    const Report& report;
    const Pieces& counting;
    std::string about;

    ChallengeLine line(std::string asks, bool met, double have, double need, std::string says) const {
        return {
            .about = about, .asks = std::move(asks), .met = met, .have = have, .need = need, .says = std::move(says)};
    }

    Pieces triangles() const {
        Pieces list;
        for (const PieceReport* p : counting)
            if (p->measures.kinds) list.push_back(p);
        return list;
    }
    Pieces of_kind(Kind kind) const {
        Pieces list;
        for (const PieceReport* p : triangles())
            if (is_of_kind(*p->measures.kinds, kind, scene.challenge.equilateral_is_isosceles)) list.push_back(p);
        return list;
    }
    std::int64_t worth_of(const Pieces& pieces) const {
        return std::accumulate(pieces.begin(), pieces.end(), std::int64_t{0}, [&](std::int64_t sum, const auto* p) {
            return sum + worth(scored(*p), scene.challenge.score);
        });
    }

    ChallengeLine operator()(const NoTwoAlike& asked) const {
        std::unordered_set<Likeness, LikenessHash> seen;
        seen.reserve(counting.size());
        for (const Piece& piece : scene.pieces) {
            const PieceReport& told = *find_piece(report, piece.number);
            if (told.state == PieceState::counts)
                seen.insert(likeness(piece.shape, told.measures, scene.challenge.step));
        }
        const auto have = static_cast<long long>(seen.size());
        return line("at least " + counted(asked.pieces, "piece", "pieces, no two alike"), have >= asked.pieces,
                    static_cast<double>(have), asked.pieces,
                    "no two alike: " + std::to_string(have) + "; " + std::to_string(asked.pieces) + " needed");
    }

    ChallengeLine operator()(const KindAppears& asked) const {
        const auto have = static_cast<long long>(of_kind(asked.kind).size());
        const std::string kind = name_of(asked.kind);
        return line("at least " + counted(asked.at_least, kind + " triangle", kind + " triangles"),
                    have >= asked.at_least, static_cast<double>(have), asked.at_least,
                    kind + ": " + std::to_string(have) + "; " + std::to_string(asked.at_least) + " needed");
    }

    ChallengeLine operator()(const KindShare& asked) const {
        const bool by_points = asked.of == ShareOf::points;
        const Pieces all_triangles = triangles();
        const Pieces these = of_kind(asked.kind);
        const std::int64_t all = by_points ? worth_of(all_triangles) : static_cast<std::int64_t>(all_triangles.size());
        const std::int64_t have = by_points ? worth_of(these) : static_cast<std::int64_t>(these.size());
        // Multiplied out in whole thousandths of a per cent, never on rounded per cents.
        const std::int64_t asked_thousandths = std::llround(asked.percent * 1000);
        const std::int64_t whole = 100'000;
        const std::int64_t asked_share = asked_thousandths * all;
        const bool met = asked.at_most ? whole * have <= asked_share : all > 0 && whole * have >= asked_share;
        // What would do; of no triangles, one for a least share.
        const std::int64_t at_least = std::max<std::int64_t>((asked_share + whole - 1) / whole, all == 0);
        const std::int64_t would_do = asked.at_most ? asked_share / whole : at_least;

        const auto shown = [&](std::int64_t amount) {
            return by_points ? points(amount, scene.challenge) : static_cast<double>(amount);
        };
        const double have_shown = shown(have);
        const double need_shown = shown(would_do);
        const std::string kind = name_of(asked.kind);
        const std::string per_cent = number_in_words(asked.percent) + "%";
        const std::string bound = asked.at_most ? "at most " : "at least ";
        const std::string what = by_points ? " points" : "";
        const std::string needed = asked.at_most ? "at most " + number_in_words(need_shown) + " allowed"
                                                 : number_in_words(need_shown) + " needed";
        return line(bound + per_cent + " " + kind + " triangles" + (by_points ? ", by points" : ", by number"), met,
                    have_shown, need_shown,
                    all == 0 ? kind + ": no triangle counts yet; " + bound + per_cent
                             : kind + ": " + number_in_words(have_shown) + " of " + number_in_words(shown(all)) + what +
                                   "; " + needed);
    }
};

}  // namespace

std::vector<ChallengeLine> challenge_lines(const Scene& scene, const Plan& plan, const Report& report) {
    const Limits& limits = scene.challenge.limits;
    const Pieces counting = counting_pieces(report);
    std::vector<ChallengeLine> lines;
    if (asks_something(limits.pieces))
        lines.push_back(range_line("pieces", {"piece that counts", "pieces that count"}, limits.pieces,
                                   static_cast<long long>(counting.size())));
    if (asks_something(limits.branches))
        lines.push_back(range_line("branches", {"branch", "branches"}, limits.branches,
                                   static_cast<long long>(plan.tree.branches.size())));
    if (asks_something(limits.pieces_per_branch)) {
        for (std::size_t b = 0; b < plan.tree.branches.size(); ++b) {
            const std::string& name = plan.tree.branches[b].name;
            const auto have = std::count_if(counting.begin(), counting.end(), [&](const PieceReport* p) {
                return p->hangs_from && p->hangs_from->branch == b;
            });
            lines.push_back(range_line("pieces_per_branch/" + name,
                                       {"piece on branch " + name, "pieces on branch " + name},
                                       limits.pieces_per_branch, have));
        }
    }
    if (limits.sheets)
        lines.push_back(
            {.about = "sheets",
             .asks = "at most " + counted(*limits.sheets, "sheet", "sheets") + " of paper",
             .met = std::nullopt,
             .have = 0,
             .need = static_cast<double>(*limits.sheets),
             .says = "sheets of paper: not counted yet; at most " + std::to_string(*limits.sheets) + " allowed"});
    for (std::size_t i = 0; i < scene.challenge.criteria.size(); ++i)
        lines.push_back(std::visit(CriterionLine{scene, report, counting, "criteria/" + std::to_string(i)},
                                   scene.challenge.criteria[i].asks));
    return lines;
}

}  // namespace boughwork
