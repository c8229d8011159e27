// SPDX-License-Identifier: MIT
#include "tests/book/coverage.h"

#include <algorithm>
#include <set>

namespace boughwork::book {

namespace {

constexpr Rule all_rules[] = {
    Rule::runs_past_the_end,
    Rule::over_a_branch,
    Rule::not_by_a_whole_side,
    Rule::cut_off,
    Rule::held_by_nothing,
    Rule::too_deep,
    Rule::ground,
    Rule::trunk,
    Rule::other_branch,
    Rule::overlap,
    Rule::touching,
    Rule::wrong_size,
    Rule::over_the_limit,
};

constexpr Kind all_kinds[] = {Kind::equilateral, Kind::isosceles, Kind::scalene,
                              Kind::right,       Kind::acute,     Kind::obtuse};

std::string unit_name(Unit unit) { return unit == Unit::mm ? "mm" : unit == Unit::cm ? "cm" : "in"; }

std::string step_name(const Step& step) {
    return std::to_string(step.numerator) + "/" + std::to_string(step.denominator) + " " + unit_name(step.unit);
}

std::string name(const char* setting, int value) { return std::string(setting) + " " + std::to_string(value); }

template <class Value>
std::string name(const char* setting, Value value) {
    return name(setting, static_cast<int>(value));
}

void note_settings(const Challenge& c, std::set<std::string>& seen) {
    seen.insert("units " + unit_name(c.units));
    seen.insert("step " + step_name(c.step));
    seen.insert(c.depth_limit ? name("depth limit", *c.depth_limit) : "no depth limit");
    seen.insert(name("holds", c.holds));
    seen.insert(name("neighbours", c.neighbours));
    seen.insert(name("at fault", c.at_fault));
    seen.insert(name("over limit", c.over_limit));
    seen.insert(name("equilateral is isosceles", c.equilateral_is_isosceles));
    seen.insert(name("score by", c.score.by));
    seen.insert("score in " + (c.score.unit ? unit_name(*c.score.unit) : "the challenge's units"));
    for (const Criterion& criterion : c.criteria) {
        seen.insert(name("criterion", criterion.asks.index()));
        if (const auto* share = std::get_if<KindShare>(&criterion.asks))
            seen.insert(name(share->at_most ? "greatest share of" : "least share of", share->of));
    }
    for (const Bonus& bonus : c.score.bonuses) seen.insert(name("bonus", bonus.for_what.index()));
    if (c.limits.side.least) seen.insert("least side");
    if (c.limits.side.most) seen.insert("greatest side");
    if (c.limits.least_height) seen.insert("least height");
}

void note_piece(const PieceReport& piece, std::set<std::string>& seen) {
    seen.insert(name("state", piece.state));
    if (piece.state == PieceState::counts) seen.insert(name("counts at depth", piece.depth));
    if (piece.parents.size() > 1) seen.insert("several parents");
    if (piece.broken.size() > 2) seen.insert("three rules broken");
    if (piece.measures.sides_in_steps.size() > 3) seen.insert("more than three sides");
    if (!piece.measures.kinds) return;
    seen.insert(std::string("kind ") + name_of(piece.measures.kinds->by_sides));
    seen.insert(std::string("kind ") + name_of(piece.measures.kinds->by_angles));
    if (piece.measures.kinds->close_call) seen.insert("close call");
}

}  // namespace

void note(const Scene& scene, const Report& report, Appearances& appeared) {
    std::set<std::string> seen;
    note_settings(scene.challenge, seen);
    for (const PieceReport& piece : report.pieces) note_piece(piece, seen);
    for (const Finding& finding : report.findings) {
        seen.insert(std::string("rule ") + name_of(finding.rule));
        const bool pair = finding.pieces.size() == 2;
        const auto hangs = [&](PieceNumber n) { return find_piece(report, n)->depth > 0; };
        if (pair && std::all_of(finding.pieces.begin(), finding.pieces.end(), hangs))
            seen.insert(name("pair at fault by", scene.challenge.at_fault) + " " + name_of(finding.rule));
        if (pair && !std::all_of(finding.pieces.begin(), finding.pieces.end(), hangs))
            seen.insert(std::string("one of a pair hangs ") + name_of(finding.rule));
        if (finding.rule == Rule::cut_off)
            seen.insert(hangs(finding.pieces.front()) ? "cut off by holds" : "cut off by hanging");
        if (finding.rule == Rule::cut_off && finding.amount > 1) seen.insert("cut off further down");
    }
    for (const WayOut& way : report.ways_out)
        if (way.take_down.size() > 1) seen.insert("several to take down");
    for (const ChallengeLine& line : report.challenge) {
        const std::string about = line.about.substr(0, line.about.find('/'));
        seen.insert("line " + about + (!line.met ? "" : *line.met ? " met" : " unmet"));
    }
    for (const BonusLine& bonus : report.bonuses) seen.insert(bonus.points > 0 ? "bonus won" : "bonus lost");
    for (const std::string& one : seen) ++appeared[one];
}

std::vector<std::string> all_to_appear() {
    std::vector<std::string> names{"no depth limit",
                                   "score in the challenge's units",
                                   "least side",
                                   "greatest side",
                                   "least height",
                                   "several parents",
                                   "three rules broken",
                                   "more than three sides",
                                   "close call",
                                   "cut off by holds",
                                   "cut off by hanging",
                                   "cut off further down",
                                   "several to take down",
                                   "line sheets",
                                   "bonus won",
                                   "bonus lost"};
    for (const Rule rule : all_rules) names.push_back(std::string("rule ") + name_of(rule));
    for (const Kind kind : all_kinds) names.push_back(std::string("kind ") + name_of(kind));
    for (const char* unit : {"mm", "cm", "in"}) {
        names.push_back(std::string("units ") + unit);
        names.push_back(std::string("score in ") + unit);
    }
    for (const char* step : {"1/1 mm", "5/1 mm", "1/2 mm", "1/1 cm", "1/2 cm", "1/3 cm", "1/1 in", "1/2 in", "1/4 in",
                             "1/8 in", "1/16 in"})
        names.push_back(std::string("step ") + step);
    const auto each = [&](const char* setting, int first, int last) {
        for (int value = first; value <= last; ++value) names.push_back(name(setting, value));
    };
    each("depth limit", 1, 3);
    each("holds", 0, 1);
    each("neighbours", 0, 3);
    each("at fault", 0, 2);
    each("over limit", 0, 1);
    each("equilateral is isosceles", 0, 1);
    each("score by", 0, 2);
    each("criterion", 0, 2);
    each("greatest share of", 0, 1);
    each("least share of", 0, 1);
    each("bonus", 0, 3);
    each("state", 0, 2);
    each("counts at depth", 1, 4);
    for (const char* rule : {"overlap", "touching"}) {
        for (int value = 0; value <= 2; ++value) names.push_back(name("pair at fault by", value) + " " + rule);
        names.push_back(std::string("one of a pair hangs ") + rule);
    }
    for (const char* line : {"pieces", "pieces_per_branch", "branches", "criteria"})
        for (const char* met : {" met", " unmet"}) names.push_back(std::string("line ") + line + met);
    return names;
}

}  // namespace boughwork::book
