// SPDX-License-Identifier: MIT
#include "rules/shaky_hands.h"

#include <algorithm>
#include <cmath>

#include "engine/words/say.h"
#include "rules/check.h"
#include "rules/rule_words.h"

namespace boughwork {
namespace {

std::string says_of(const ShakyPiece& piece) {
    const std::string number = std::to_string(piece.number.value);
    const Chance fails{piece.holds.of - piece.holds.times, piece.holds.of};
    if (fails.of == 0) return "";
    if (fails.times == 0) return say("Piece {0} holds in all {1} builds.", {number, std::to_string(fails.of)});
    std::string says = say("Piece {0} fails in {1}.", {number, in_words(fails)});
    if (piece.fails_by) says += " " + say("Most often: {0}.", {broken_in_words(*piece.fails_by)});
    return says;
}

std::string says_of_all(const HandsReport& report) {
    if (report.builds == 0 || report.pieces.empty()) return "";
    const std::string builds = std::to_string(report.builds);
    if (report.all_hold.times == 0) return say("In none of {0} builds do all pieces hold.", {builds});
    if (report.all_hold.times == report.builds) return say("All pieces hold in all {0} builds.", {builds});
    return say("All pieces hold in {0}.", {in_words(report.all_hold)});
}

}  // namespace

double Chance::standard_error() const {
    const double n = of + 2.0;
    const double p = (times + 1.0) / n;
    return std::sqrt(p * (1 - p) / n);
}

Chance rounded(const Chance& chance) {
    if (chance.times == 0 || chance.times == chance.of) return chance;
    for (const int base : {10, 100, 1000}) {
        if (base > chance.of) break;
        // Two per cent is no whole tenth; 9.5 per cent is nearly one.
        const double parts = chance.share() * base;
        if (parts < 0.95 || parts > base - 0.95) continue;
        return {std::clamp(static_cast<int>(std::lround(parts)), 1, base - 1), base};
    }
    return chance;
}

std::string holds_in_words(const Chance& holds) {
    if (holds.times == 0) return say("never holds");
    if (holds.times == holds.of) return say("always holds");
    const Chance shown = rounded(holds);
    return say("holds {0} of {1}", {std::to_string(shown.times), std::to_string(shown.of)});
}

std::string in_words(const Chance& chance) {
    if (chance.times == 0) return say("none of {0} builds", {std::to_string(chance.of)});
    if (chance.times == chance.of) return say("all {0} builds", {std::to_string(chance.of)});
    const Chance shown = rounded(chance);
    return say("{0} of {1} builds", {std::to_string(shown.times), std::to_string(shown.of)});
}

ShakyHands::ShakyHands(const Scene& scene, const Plan& plan) : rebuilding_(scene, plan), plan_name_(plan.name) {
    for (const Hung& hung : plan.hung) pieces_.push_back({.number = hung.piece});
    std::sort(pieces_.begin(), pieces_.end(), [](const Tally& x, const Tally& y) { return x.number < y.number; });
}

void ShakyHands::build(int more) {
    for (int i = 0; i < more; ++i) {
        rebuilding_.build(builds_++);
        count(check(rebuilding_.scene(), rebuilding_.plan()));
    }
}

void ShakyHands::count(const Report& report) {
    bool all_hold = true;
    auto piece = report.pieces.begin();
    for (Tally& tally : pieces_) {
        while (piece->number != tally.number) ++piece;
        const bool holds = piece->state == PieceState::counts;
        tally.holds += holds;
        all_hold = all_hold && holds;
        for (const Rule rule : piece->broken) ++tally.broken[static_cast<std::size_t>(rule)];
    }
    for (const ChallengeLine& line : report.challenge) {
        if (!line.met) continue;
        auto at = std::find_if(lines_.begin(), lines_.end(), [&](const ShakyLine& l) { return l.about == line.about; });
        if (at == lines_.end()) at = lines_.insert(at, {line.about, line.asks, {}});
        ++at->met.of;
        at->met.times += *line.met;
    }
    all_hold_ += all_hold;
    all_well_ += all_well(report);
    scores_.push_back(report.score);
}

Chance ShakyHands::fails(PieceNumber piece) const {
    for (const Tally& tally : pieces_)
        if (tally.number == piece) return {builds_ - tally.holds, builds_};
    return {};
}

HandsReport ShakyHands::report() const {
    HandsReport report{.plan = plan_name_, .builds = builds_, .challenge = lines_};
    for (const Tally& tally : pieces_) {
        ShakyPiece piece{.number = tally.number, .holds = {tally.holds, builds_}};
        const auto most = std::max_element(tally.broken.begin(), tally.broken.end());
        if (*most > 0) {
            piece.fails_by = static_cast<Rule>(most - tally.broken.begin());
            piece.breaks_it = {*most, builds_};
        }
        piece.says = says_of(piece);
        report.pieces.push_back(std::move(piece));
    }
    report.all_hold = {all_hold_, builds_};
    report.all_well = {all_well_, builds_};
    double sum = 0;
    for (const double score : scores_) sum += score;
    if (builds_ > 0) report.mean_score = sum / builds_;
    double squares = 0;
    for (const double score : scores_) squares += (score - report.mean_score) * (score - report.mean_score);
    if (builds_ > 1) report.score_error = std::sqrt(squares / (builds_ - 1) / builds_);
    report.says = says_of_all(report);
    return report;
}

bool HandsReport::holds() const {
    return std::all_of(pieces.begin(), pieces.end(),
                       [](const ShakyPiece& piece) { return 10LL * piece.holds.times >= 9LL * piece.holds.of; });
}

}  // namespace boughwork
