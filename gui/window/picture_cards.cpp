// SPDX-License-Identifier: MIT
#include "gui/window/picture_cards.h"

#include <algorithm>
#include <initializer_list>

#include "engine/words/say.h"
#include "gui/window/pointed_pieces.h"
#include "rules/challenge_lines.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

using Rules = std::initializer_list<Rule>;

bool breaks_one_of(const PieceReport& piece, Rules rules) {
    return std::any_of(rules.begin(), rules.end(), [&](Rule rule) {
        return std::find(piece.broken.begin(), piece.broken.end(), rule) != piece.broken.end();
    });
}

/// One card for a family of rules: how many of the hung pieces keep all of them.
PictureCard family(const Report& report, const char* label, CardPicture picture, Rules rules) {
    int hung = 0;
    int keeping = 0;
    for (const PieceReport& piece : report.pieces) {
        if (piece.state == PieceState::in_the_envelope) continue;
        ++hung;
        if (!breaks_one_of(piece, rules)) ++keeping;
    }
    PictureCard card{.label = label, .name = say(label), .met = keeping == hung, .picture = picture};
    card.says = hung == 0         ? say("none hung")
                : keeping == hung ? say("all")
                                  : say("{0} of {1}", {std::to_string(keeping), std::to_string(hung)});
    if (hung == 0) card.met.reset();
    for (std::size_t i = 0; i < report.findings.size() && !card.finding; ++i)
        if (std::find(rules.begin(), rules.end(), report.findings[i].rule) != rules.end()) card.finding = i;
    return card;
}

std::string have_and_need(double have, double need) {
    return say("{0}, need {1}", {number_in_words(have), number_in_words(need)});
}

std::string have_and_most(double have, double most) {
    return say("{0}, most {1}", {number_in_words(have), number_in_words(most)});
}

std::string in_range(double have, const Range<int>& range) {
    const bool too_many = range.most && have > *range.most;
    const bool asks_least = range.least && *range.least > 0;
    if (range.most && (too_many || !asks_least)) return have_and_most(have, *range.most);
    return have_and_need(have, range.least.value_or(0));
}

struct CriterionCard {
    const ChallengeLine& line;
    PictureCard& card;

    void operator()(const NoTwoAlike&) const {
        card.label = "no two alike";
        card.name = say("no two alike");
        card.picture = CardPicture::no_two_alike;
        card.says = have_and_need(line.have, line.need);
    }
    void operator()(const KindAppears& asks) const {
        card.label = name_of(asks.kind);
        card.name = said(asks.kind);
        card.picture = CardPicture::kind;
        card.kind = asks.kind;
        card.says = have_and_need(line.have, line.need);
    }
    void operator()(const KindShare& asks) const {
        card.label = name_of(asks.kind);
        card.label += " share";
        card.name = say("{0} share", {said(asks.kind)});
        card.picture = CardPicture::kind;
        card.kind = asks.kind;
        card.says = asks.at_most ? have_and_most(line.have, line.need) : have_and_need(line.have, line.need);
    }
};

PictureCard card_of(const Scene& scene, const ChallengeLine& line, std::size_t index) {
    const Challenge& challenge = scene.challenge;
    PictureCard card{.label = line.about, .name = line.about, .says = line.says, .met = line.met, .line = index};
    if (const auto criterion = criterion_of(line)) {
        std::visit(CriterionCard{line, card}, challenge.criteria[*criterion].asks);
        if (!is_told(scene, line, current_plan(scene))) {
            card.met.reset();
            card.says = say("find out");
        }
    } else if (const auto branch = branch_of(line)) {
        card.label = "on branch " + *branch;
        card.name = say("on branch {0}", {*branch});
        card.picture = CardPicture::on_a_branch;
        card.says = in_range(line.have, challenge.limits.pieces_per_branch);
    } else if (line.about == "pieces") {
        card.name = say("pieces");
        card.picture = CardPicture::pieces;
        card.says = in_range(line.have, challenge.limits.pieces);
    } else if (line.about == "branches") {
        card.name = say("branches");
        card.picture = CardPicture::branches;
        card.says = in_range(line.have, challenge.limits.branches);
    } else if (line.about == "sheets") {
        card.name = say("sheets");
        card.picture = CardPicture::sheets;
        card.says = say("most {0}", {number_in_words(line.need)});
    } else if (line.about == about_settling) {
        card.name = say("after settling");
        card.picture = CardPicture::after_settling;
        const bool all = line.have == line.need;
        card.says = !line.met   ? say("not yet")
                    : *line.met ? say("all")
                    : all       ? say("falls")
                                : say("{0} of {1}", {number_in_words(line.have), number_in_words(line.need)});
    }
    return card;
}

/// Two criteria may ask about the same kind: labels and names stay apart.
void make_labels_differ(std::vector<PictureCard>& cards) {
    for (std::size_t i = 0; i < cards.size(); ++i) {
        int same = 1;
        for (std::size_t j = 0; j < i; ++j) same += cards[j].label == cards[i].label ? 1 : 0;
        if (same == 1) continue;
        for (std::string* words : {&cards[i].label, &cards[i].name}) *words += " (" + std::to_string(same) + ")";
    }
}

}  // namespace

std::vector<PictureCard> picture_cards(const Scene& scene, const Report& report) {
    const Challenge& challenge = scene.challenge;
    std::vector<PictureCard> cards;
    cards.push_back(family(report, phrase("whole side"), CardPicture::whole_side,
                           {Rule::runs_past_the_end, Rule::over_a_branch, Rule::not_by_a_whole_side, Rule::cut_off,
                            Rule::held_by_nothing}));
    if (challenge.depth_limit) {
        const bool no_chains = *challenge.depth_limit == 1;
        cards.push_back(family(report, no_chains ? phrase("on branches") : phrase("chain length"),
                               no_chains ? CardPicture::no_chain : CardPicture::chain, {Rule::too_deep}));
    }
    cards.push_back(family(report, phrase("neighbours"), CardPicture::neighbours, {Rule::overlap, Rule::touching}));
    cards.push_back(family(report, phrase("off the ground"), CardPicture::off_the_ground,
                           {Rule::ground, Rule::trunk, Rule::other_branch}));
    const Limits& limits = challenge.limits;
    if (limits.side.least || limits.side.most || limits.least_height)
        cards.push_back(family(report, phrase("size"), CardPicture::size, {Rule::wrong_size}));
    if (challenge.over_limit == OverLimit::extras_do_not_count && (limits.pieces.most || limits.pieces_per_branch.most))
        cards.push_back(family(report, phrase("not too many"), CardPicture::over_the_limit, {Rule::over_the_limit}));
    for (std::size_t i = 0; i < report.challenge.size(); ++i) cards.push_back(card_of(scene, report.challenge[i], i));
    make_labels_differ(cards);
    return cards;
}

}  // namespace boughwork
