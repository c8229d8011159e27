// SPDX-License-Identifier: MIT
#include "rules/challenge_lines.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <unordered_set>

#include "engine/words/say.h"
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

/// The phrases for what is counted. {0}: how many there should be, {1}: the branch, {2}: how many there are.
struct Counted {
    const char* one;
    const char* several;
    const char* allowed;
    const char* needed;
};

ChallengeLine range_line(std::string about, const Counted& what, const Range<int>& range, long long have,
                         const std::string& branch = "") {
    const int least = range.least.value_or(0);
    const bool too_few = have < least;
    const bool too_many = range.most && have > *range.most;
    const bool by_most = too_many || least <= 0;
    return {.about = std::move(about),
            .asks = ranged(range, what.one, what.several, branch),
            .met = !too_many && !too_few,
            .have = static_cast<double>(have),
            .need = static_cast<double>(by_most ? range.most.value_or(0) : least),
            .says = say(range.most && !too_few ? what.allowed : what.needed,
                        {in_words(range), branch, std::to_string(have)})};
}

/// The phrases for a share. `says`: {0} of a kind {1} of {2}, {3} would do.
struct ShareWords {
    const char* asks;
    const char* says;
    const char* none_yet;
};

const ShareWords& words_for(const KindShare& asked) {
    constexpr const char* none_at_least = phrase("{0}: no triangle counts yet; at least {1}%");
    constexpr const char* none_at_most = phrase("{0}: no triangle counts yet; at most {1}%");
    static constexpr ShareWords least{phrase("at least {0}% {1}, by number"), phrase("{0}: {1} of {2}; {3} needed"),
                                      none_at_least};
    static constexpr ShareWords least_points{phrase("at least {0}% {1}, by points"),
                                             phrase("{0}: {1} of {2} points; {3} needed"), none_at_least};
    static constexpr ShareWords most{phrase("at most {0}% {1}, by number"),
                                     phrase("{0}: {1} of {2}; at most {3} allowed"), none_at_most};
    static constexpr ShareWords most_points{phrase("at most {0}% {1}, by points"),
                                            phrase("{0}: {1} of {2} points; at most {3} allowed"), none_at_most};
    const bool by_points = asked.of == ShareOf::points;
    if (asked.at_most) return by_points ? most_points : most;
    return by_points ? least_points : least;
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
        return line(counted(asked.pieces, phrase("at least {0} piece"), phrase("at least {0} pieces, no two alike")),
                    have >= asked.pieces, static_cast<double>(have), asked.pieces,
                    say("no two alike: {0}; {1} needed", {std::to_string(have), std::to_string(asked.pieces)}));
    }

    ChallengeLine operator()(const KindAppears& asked) const {
        const auto have = static_cast<long long>(of_kind(asked.kind).size());
        const std::string needed = std::to_string(asked.at_least);
        const std::string asks = asked.at_least == 1
                                     ? say("at least {0} {1} triangle", {needed, said(asked.kind)})
                                     : say("at least {0} {1}", {needed, triangles_in_words(asked.kind)});
        return line(asks, have >= asked.at_least, static_cast<double>(have), asked.at_least,
                    say("{0}: {1}; {2} needed", {said(asked.kind), std::to_string(have), needed}));
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
        const ShareWords& words = words_for(asked);
        const std::string kind = said(asked.kind);
        const std::string per_cent = number_in_words(asked.percent);
        return line(say(words.asks, {per_cent, triangles_in_words(asked.kind)}), met, have_shown, need_shown,
                    all == 0 ? say(words.none_yet, {kind, per_cent})
                             : say(words.says, {kind, number_in_words(have_shown), number_in_words(shown(all)),
                                                number_in_words(need_shown)}));
    }
};

}  // namespace

std::vector<ChallengeLine> challenge_lines(const Scene& scene, const Plan& plan, const Report& report) {
    const Limits& limits = scene.challenge.limits;
    const Pieces counting = counting_pieces(report);
    std::vector<ChallengeLine> lines;
    if (asks_something(limits.pieces))
        lines.push_back(
            range_line("pieces",
                       {phrase("{0} piece that counts"), phrase("{0} pieces that count"),
                        phrase("pieces that count: {2}; {0} allowed"), phrase("pieces that count: {2}; {0} needed")},
                       limits.pieces, static_cast<long long>(counting.size())));
    if (asks_something(limits.branches))
        lines.push_back(range_line("branches",
                                   {phrase("{0} branch"), phrase("{0} branches"), phrase("branches: {2}; {0} allowed"),
                                    phrase("branches: {2}; {0} needed")},
                                   limits.branches, static_cast<long long>(plan.tree.branches.size())));
    if (asks_something(limits.pieces_per_branch)) {
        for (std::size_t b = 0; b < plan.tree.branches.size(); ++b) {
            const std::string& name = plan.tree.branches[b].name;
            const auto have = std::count_if(counting.begin(), counting.end(), [&](const PieceReport* p) {
                return p->hangs_from && p->hangs_from->branch == b;
            });
            lines.push_back(range_line(
                "pieces_per_branch/" + name,
                {phrase("{0} piece on branch {1}"), phrase("{0} pieces on branch {1}"),
                 phrase("pieces on branch {1}: {2}; {0} allowed"), phrase("pieces on branch {1}: {2}; {0} needed")},
                limits.pieces_per_branch, have, name));
        }
    }
    if (limits.sheets)
        lines.push_back(
            {.about = "sheets",
             .asks =
                 counted(*limits.sheets, phrase("at most {0} sheet of paper"), phrase("at most {0} sheets of paper")),
             .met = std::nullopt,
             .have = 0,
             .need = static_cast<double>(*limits.sheets),
             .says = say("sheets of paper: not counted yet; at most {0} allowed", {std::to_string(*limits.sheets)})});
    for (std::size_t i = 0; i < scene.challenge.criteria.size(); ++i)
        lines.push_back(std::visit(CriterionLine{scene, report, counting, "criteria/" + std::to_string(i)},
                                   scene.challenge.criteria[i].asks));
    if (scene.challenge.holds_after_settling)
        lines.push_back({.about = about_settling,
                         .asks = say("after settling the tree stands and every piece still counts"),
                         .met = std::nullopt,
                         .have = 0,
                         .need = static_cast<double>(counting.size()),
                         .says = say("after settling: not worked out yet")});
    return lines;
}

}  // namespace boughwork
