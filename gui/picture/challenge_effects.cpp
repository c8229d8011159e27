// SPDX-License-Identifier: MIT
#include "gui/picture/challenge_effects.h"

#include <algorithm>
#include <initializer_list>

#include "engine/typed_length.h"
#include "engine/typed_number.h"
#include "engine/words/say.h"
#include "gui/picture/report_words.h"
#include "rules/challenge_lines.h"
#include "rules/measure.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

Effect kept_back() { return {say("kept back for now"), {}}; }

bool is_hung(const PieceReport& piece) { return piece.state != PieceState::in_the_envelope; }

template <class Matches>
int how_many(const Report& report, Matches matches) {
    return static_cast<int>(std::count_if(report.pieces.begin(), report.pieces.end(), matches));
}

/// "8 of 10 hung pieces count".
Effect counting(const Report& report) {
    const int hung = how_many(report, is_hung);
    if (hung == 0) return {};
    const int counts = how_many(report, [](const PieceReport& p) { return p.state == PieceState::counts; });
    return {say("{0} of {1} hung pieces count", {std::to_string(counts), std::to_string(hung)}), {}};
}

/// How many pieces break one of the rules, in a phrase with a slot for it.
Effect breaking(const Report& report, const char* words, std::initializer_list<Rule> rules) {
    if (how_many(report, is_hung) == 0) return {};
    const int broken = how_many(report, [&](const PieceReport& piece) {
        return std::any_of(rules.begin(), rules.end(), [&](Rule rule) {
            return std::find(piece.broken.begin(), piece.broken.end(), rule) != piece.broken.end();
        });
    });
    return {say(words, {std::to_string(broken)}), broken == 0};
}

Effect too_near(const Report& report) {
    if (how_many(report, is_hung) == 0) return {};
    const auto pairs = std::count_if(report.findings.begin(), report.findings.end(), [](const Finding& finding) {
        return finding.rule == Rule::overlap || finding.rule == Rule::touching;
    });
    return {say("pairs too near: {0}", {std::to_string(pairs)}), pairs == 0};
}

const ChallengeLine* line_about(const Report& report, const std::string& about) {
    const auto line = std::find_if(report.challenge.begin(), report.challenge.end(),
                                   [&](const ChallengeLine& l) { return l.about == about; });
    return line == report.challenge.end() ? nullptr : &*line;
}

Effect line_or(const Report& report, const std::string& about, Effect otherwise) {
    const ChallengeLine* line = line_about(report, about);
    return line ? Effect{line->says, line->met} : std::move(otherwise);
}

Effect on_each_branch(const Judged& now) {
    const std::string about = "pieces_per_branch/";
    Effect effect;
    for (const ChallengeLine& line : now.report.challenge) {
        if (line.about.compare(0, about.size(), about) != 0) continue;
        effect.says +=
            (effect.says.empty() ? "" : ", ") + line.about.substr(about.size()) + ": " + typed_number(line.have);
        effect.met = effect.met.value_or(true) && line.met.value_or(true);
    }
    return effect;
}

Effect measured(const Judged& now) {
    for (const PieceReport& piece : now.report.pieces) {
        if (!is_told(now.scene, Mathematics::lengths, *find_piece(now.scene, piece.number))) continue;
        std::string sides;
        for (const std::int64_t steps : piece.measures.sides_in_steps)
            sides += (sides.empty() ? "" : ", ") + measured_words(steps, now.scene.challenge);
        return {say("piece {0}: {1} {2}",
                    {std::to_string(piece.number.value), sides, symbol_of(now.scene.challenge.units)}),
                {}};
    }
    return now.report.pieces.empty() ? Effect{} : kept_back();
}

bool all_told(const Judged& now, Mathematics what) {
    return std::all_of(now.scene.pieces.begin(), now.scene.pieces.end(),
                       [&](const Piece& piece) { return is_told(now.scene, what, piece); });
}

int of_kind(const Judged& now, Kind kind) {
    return how_many(now.report, [&](const PieceReport& piece) {
        return piece.measures.kinds &&
               is_of_kind(*piece.measures.kinds, kind, now.scene.challenge.equilateral_is_isosceles);
    });
}

Effect by_angles(const Judged& now) {
    if (!all_told(now, Mathematics::kinds)) return kept_back();
    return {say("right: {0}, acute: {1}, obtuse: {2}",
                {std::to_string(of_kind(now, Kind::right)), std::to_string(of_kind(now, Kind::acute)),
                 std::to_string(of_kind(now, Kind::obtuse))}),
            {}};
}

Effect isosceles(const Judged& now) {
    if (!all_told(now, Mathematics::kinds)) return kept_back();
    return {say("isosceles: {0} of {1} pieces",
                {std::to_string(of_kind(now, Kind::isosceles)), std::to_string(now.report.pieces.size())}),
            {}};
}

Effect by_hand(const Judged& now) {
    const auto measured_by_hand =
        std::count_if(now.scene.pieces.begin(), now.scene.pieces.end(), [](const Piece& piece) {
            const auto& sides = piece.by_hand.sides;
            return !sides.empty() && std::all_of(sides.begin(), sides.end(), [](const auto& side) { return side; });
        });
    return {say("measured by hand: {0} of {1} pieces",
                {std::to_string(measured_by_hand), std::to_string(now.scene.pieces.size())}),
            {}};
}

Effect scored_now(const Judged& now) {
    if (!is_told(now.scene, Mathematics::points, now.plan)) return kept_back();
    return {say("score: {0}", {number_in_words(now.report.score)}), {}};
}

Effect shown_now(const Judged& now, Mathematics what) {
    return all_told(now, what) ? Effect{say("shown now"), {}} : kept_back();
}

}  // namespace

Effect effect_of(Setting setting, const Judged& now) {
    const Report& report = now.report;
    switch (setting) {
        case Setting::units:
        case Setting::step: return measured(now);
        case Setting::tolerance: return counting(report);
        case Setting::right_angle: return by_angles(now);
        case Setting::isosceles: return isosceles(now);
        case Setting::hand_lengths: return by_hand(now);
        case Setting::depth:
            return breaking(report, phrase("hanging wrongly: {0}"),
                            {Rule::too_deep, Rule::runs_past_the_end, Rule::over_a_branch, Rule::not_by_a_whole_side,
                             Rule::held_by_nothing});
        case Setting::holds: return breaking(report, phrase("cut off: {0}"), {Rule::cut_off});
        case Setting::neighbours: return too_near(report);
        case Setting::at_fault:
            return breaking(report, phrase("out for being too near: {0}"), {Rule::overlap, Rule::touching});
        case Setting::clearance:
            return breaking(report, phrase("not clear: {0}"), {Rule::ground, Rule::trunk, Rule::other_branch});
        case Setting::after_settling: return line_or(report, about_settling, {});
        case Setting::pieces: return line_or(report, "pieces", counting(report));
        case Setting::pieces_per_branch: return on_each_branch(now);
        case Setting::over_limit: return breaking(report, phrase("over the limit: {0}"), {Rule::over_the_limit});
        case Setting::branches:
            return line_or(report, "branches",
                           {say("branches: {0}", {std::to_string(now.plan.tree.branches.size())}), {}});
        case Setting::sheets: return line_or(report, "sheets", {});
        case Setting::side:
        case Setting::least_height: return breaking(report, phrase("wrong size: {0}"), {Rule::wrong_size});
        case Setting::score: return scored_now(now);
        case Setting::shown_lengths: return shown_now(now, Mathematics::lengths);
        case Setting::shown_kinds: return shown_now(now, Mathematics::kinds);
        case Setting::shown_sums: return shown_now(now, Mathematics::sums);
        case Setting::shown_points: return shown_now(now, Mathematics::points);
        case Setting::shown_fixes:
            return now.scene.challenge.shown.fixes == Shows::always || now.scene.lesson.over
                       ? Effect{say("shown now"), {}}
                       : kept_back();
    }
    return {};
}

Effect effect_of_criterion(std::size_t index, const Judged& now) {
    const std::string about = "criteria/" + std::to_string(index);
    const ChallengeLine* line = line_about(now.report, about);
    if (line && !is_told(now.scene, *line, now.plan)) return kept_back();
    return line_or(now.report, about, {});
}

Effect effect_of_bonus(std::size_t index, const Judged& now) {
    if (!is_told(now.scene, Mathematics::points, now.plan)) return kept_back();
    return {say("now: {0}", {number_in_words(now.report.bonuses[index].points)}), {}};
}

std::vector<ChallengeSentence> challenge_sentences(const Judged& now) {
    const Challenge& challenge = now.scene.challenge;
    const Limits& limits = challenge.limits;
    std::vector<ChallengeSentence> all;
    const auto add = [&](Setting setting, bool asks = true) {
        if (asks) all.push_back({says(setting, challenge), effect_of(setting, now)});
    };
    const auto asked = [](const Range<int>& range) { return range.most || range.least.value_or(0) > 0; };
    add(Setting::pieces, asked(limits.pieces));
    add(Setting::branches, asked(limits.branches));
    add(Setting::pieces_per_branch, asked(limits.pieces_per_branch));
    add(Setting::over_limit, limits.pieces.most || limits.pieces_per_branch.most);
    add(Setting::sheets, limits.sheets.has_value());
    add(Setting::side, limits.side.least || limits.side.most);
    add(Setting::least_height, limits.least_height.has_value());
    for (std::size_t i = 0; i < challenge.criteria.size(); ++i)
        all.push_back({says(challenge.criteria[i]), effect_of_criterion(i, now)});
    add(Setting::depth);
    add(Setting::holds, challenge.depth_limit != 1);
    add(Setting::neighbours);
    add(Setting::at_fault);
    add(Setting::clearance);
    add(Setting::after_settling, challenge.holds_after_settling);
    add(Setting::score);
    for (std::size_t i = 0; i < challenge.score.bonuses.size(); ++i)
        all.push_back({says(challenge.score.bonuses[i], challenge), effect_of_bonus(i, now)});
    for (const Setting setting : {Setting::step, Setting::tolerance, Setting::right_angle, Setting::isosceles})
        add(setting);
    add(Setting::hand_lengths, challenge.hand_lengths_score);
    return all;
}

}  // namespace boughwork
