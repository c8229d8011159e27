// SPDX-License-Identifier: MIT
// The two lists of a challenge, criteria and bonuses: added, changed and taken out.
#include "engine/limits.h"
#include "engine/words/say.h"
#include "gui/window/challenge_sections.h"

namespace boughwork {
namespace {

/// The controls of one criterion; labels begin with its name in the list.
struct CriterionControls {
    const SectionTools& tools;
    std::string name;

    void operator()(NoTwoAlike& asks) const {
        tools.form.word(say("pieces, at least:"));
        tools.form.count(name + " pieces", asks.pieces);
    }
    void operator()(KindAppears& asks) const {
        tools.form.choose(name + " kind", kind_options(), asks.kind);
        tools.form.word(say("triangles, at least:"));
        tools.form.count(name + " triangles", asks.at_least);
    }
    void operator()(KindShare& asks) const {
        tools.form.choose(name + " kind", kind_options(), asks.kind);
        tools.form.choose(
            name + " bound",
            std::vector<Option<bool>>{{false, "at least", phrase("at least")}, {true, "at most", phrase("at most")}},
            asks.at_most);
        tools.form.choose(name + " share of",
                          std::vector<Option<ShareOf>>{{ShareOf::pieces, "pieces", phrase("of the triangles")},
                                                       {ShareOf::points, "points", phrase("of the points")}},
                          asks.of);
        tools.form.word(say("of every 100:"));
        tools.form.number(name + " of 100", asks.percent);
    }
};

struct BonusControls {
    const SectionTools& tools;
    std::string name;

    void operator()(PerPiece& bonus) const { tools.form.choose(name + " kind", kind_options(), bonus.kind); }
    void operator()(PerDepth& bonus) const {
        tools.form.word(say("place in the chain:"));
        tools.form.count(name + " place", bonus.depth);
    }
    void operator()(IfMet& bonus) const {
        const std::vector<Criterion>& criteria = tools.session.scene().challenge.criteria;
        for (std::size_t i = 0; i < criteria.size(); ++i) {
            const bool holds = static_cast<std::size_t>(bonus.criterion) == i;
            const std::vector<Choice> one{{"criterion " + std::to_string(i + 1), says(criteria[i])}};
            if (tools.form.choices_row(name, one, holds ? std::optional<std::size_t>(0) : std::nullopt))
                bonus.criterion = static_cast<int>(i);
        }
    }
    void operator()(InWords& bonus) const { tools.form.text(name + " words", bonus.words, say("what it is for")); }
};

/// Adds to a list, and opens what was added.
template <class List, class Item>
void add_on_press(const SectionTools& tools, const std::string& label, const std::string& words, bool possible,
                  List& list, Item item) {
    if (!tools.form.button(label, words, Tone::quiet, possible)) return;
    list.push_back(std::move(item));
    tools.open_item = list.size() - 1;
    tools.form.changed(label);
}

/// What was pressed at the list's item: its controls are opened or closed.
bool takes_out(const SectionTools& tools, std::size_t index, SettingsForm::Pressed pressed) {
    if (pressed == SettingsForm::Pressed::change) {
        const bool open = tools.open_item == index;
        tools.open_item = open ? std::nullopt : std::optional(index);
    }
    if (pressed == SettingsForm::Pressed::take_out) tools.open_item.reset();
    return pressed == SettingsForm::Pressed::take_out;
}

}  // namespace

const std::vector<Option<Kind>>& kind_options() {
    static const std::vector<Option<Kind>> options{{Kind::equilateral, "equilateral", phrase("equilateral")},
                                                   {Kind::isosceles, "isosceles", phrase("isosceles")},
                                                   {Kind::scalene, "scalene", phrase("scalene")},
                                                   {Kind::right, "right", phrase("right")},
                                                   {Kind::acute, "acute", phrase("acute")},
                                                   {Kind::obtuse, "obtuse", phrase("obtuse")}};
    return options;
}

void draw_criteria(const SectionTools& tools) {
    const Challenge& challenge = tools.session.scene().challenge;
    tools.form.heading(say("What the tree must show"));
    if (challenge.criteria.empty()) tools.form.setting(say("Nothing is asked yet."));
    for (std::size_t i = 0; i < challenge.criteria.size(); ++i) {
        const std::string name = "criterion " + std::to_string(i + 1);
        const bool open = tools.open_item == i;
        const bool rewarded = is_rewarded(challenge, i);
        const auto pressed =
            tools.form.item(name, says(challenge.criteria[i]), effect_of_criterion(i, tools.now()), open, !rewarded);
        if (takes_out(tools, i, pressed)) {
            tools.wanted = without_criterion(tools.wanted, i);
        } else if (open && i < tools.wanted.criteria.size()) {
            std::visit(CriterionControls{tools, name}, tools.wanted.criteria[i].asks);
            if (rewarded) tools.form.word(say("A bonus is for this. To take it out, take out the bonus first."));
        }
    }
    std::vector<Criterion>& list = tools.wanted.criteria;
    const bool possible = !challenge.sealed && list.size() < most_asked;
    tools.form.setting(say("Ask for more:"));
    add_on_press(tools, "add no two alike", say("no two alike"), possible, list, Criterion{NoTwoAlike{3}, ""});
    add_on_press(tools, "add a kind", say("a kind of triangle"), possible, list, Criterion{KindAppears{}, ""});
    add_on_press(tools, "add a share", say("a share of a kind"), possible, list,
                 Criterion{KindShare{.percent = 25}, ""});
}

void draw_score(const SectionTools& tools) {
    const Challenge& challenge = tools.session.scene().challenge;
    Scoring& score = tools.wanted.score;
    tools.form.heading(say("Points"));
    tools.setting(Setting::score);
    tools.form.choose("score by",
                      std::vector<Option<ScoreBy>>{{ScoreBy::longest_side, "longest side", phrase("longest side")},
                                                   {ScoreBy::perimeter, "perimeter", phrase("perimeter")},
                                                   {ScoreBy::area, "area", phrase("area")}},
                      score.by);
    tools.form.setting(say("The unit of one point:"));
    tools.form.choose(
        "point unit",
        std::vector<Option<std::optional<Unit>>>{{std::nullopt, "as shown", phrase("as lengths are shown")},
                                                 {Unit::mm, "mm", "mm"},
                                                 {Unit::cm, "cm", "cm"},
                                                 {Unit::in, "inch", phrase("inch")}},
        score.unit);
    for (std::size_t i = 0; i < challenge.score.bonuses.size(); ++i) {
        const std::string name = "bonus " + std::to_string(i + 1);
        const bool open = tools.open_item == i;
        const auto pressed = tools.form.item(name, says(challenge.score.bonuses[i], challenge),
                                             effect_of_bonus(i, tools.now()), open, true);
        if (takes_out(tools, i, pressed)) {
            score.bonuses.erase(score.bonuses.begin() + static_cast<std::ptrdiff_t>(i));
        } else if (open && i < score.bonuses.size()) {
            std::visit(BonusControls{tools, name}, score.bonuses[i].for_what);
            tools.form.word(say("points:"));
            tools.form.number(name + " points", score.bonuses[i].points);
        }
    }
    const bool possible = !challenge.sealed && score.bonuses.size() < most_asked;
    tools.form.setting(say("Add a bonus:"));
    add_on_press(tools, "add a bonus for a kind", say("for a kind"), possible, score.bonuses, Bonus{PerPiece{}, 5, ""});
    add_on_press(tools, "add a bonus for a chain", say("for a place in a chain"), possible, score.bonuses,
                 Bonus{PerDepth{}, 3, ""});
    add_on_press(tools, "add a bonus if met", say("if something is met"), possible && !challenge.criteria.empty(),
                 score.bonuses, Bonus{IfMet{}, 5, ""});
    add_on_press(tools, "add a bonus in words", say("in words"), possible, score.bonuses, Bonus{InWords{}, 2, ""});
}

}  // namespace boughwork
