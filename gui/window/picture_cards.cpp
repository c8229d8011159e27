// SPDX-License-Identifier: MIT
#include "gui/window/picture_cards.h"

#include <algorithm>
#include <initializer_list>

#include "gui/window/pointed_pieces.h"
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
PictureCard family(const Report& report, std::string label, CardPicture picture, Rules rules) {
    int hung = 0;
    int keeping = 0;
    for (const PieceReport& piece : report.pieces) {
        if (piece.state == PieceState::in_the_envelope) continue;
        ++hung;
        if (!breaks_one_of(piece, rules)) ++keeping;
    }
    PictureCard card{.label = std::move(label), .met = keeping == hung, .picture = picture};
    card.says = hung == 0         ? "none hung"
                : keeping == hung ? "all"
                                  : std::to_string(keeping) + " of " + std::to_string(hung);
    if (hung == 0) card.met.reset();
    for (std::size_t i = 0; i < report.findings.size() && !card.finding; ++i)
        if (std::find(rules.begin(), rules.end(), report.findings[i].rule) != rules.end()) card.finding = i;
    return card;
}

std::string have_and_need(double have, const char* word, double need) {
    return number_in_words(have) + ", " + word + " " + number_in_words(need);
}

std::string in_range(double have, const Range<int>& range) {
    const bool too_many = range.most && have > *range.most;
    const bool asks_least = range.least && *range.least > 0;
    if (range.most && (too_many || !asks_least)) return have_and_need(have, "most", *range.most);
    return have_and_need(have, "need", range.least.value_or(0));
}

struct CriterionCard {
    const ChallengeLine& line;
    PictureCard& card;

    void operator()(const NoTwoAlike&) const {
        card.label = "no two alike";
        card.picture = CardPicture::no_two_alike;
        card.says = have_and_need(line.have, "need", line.need);
    }
    void operator()(const KindAppears& asks) const {
        card.label = name_of(asks.kind);
        card.picture = CardPicture::kind;
        card.kind = asks.kind;
        card.says = have_and_need(line.have, "need", line.need);
    }
    void operator()(const KindShare& asks) const {
        card.label = std::string(name_of(asks.kind)) + " share";
        card.picture = CardPicture::kind;
        card.kind = asks.kind;
        card.says = have_and_need(line.have, asks.at_most ? "most" : "need", line.need);
    }
};

PictureCard card_of(const Challenge& challenge, const ChallengeLine& line, std::size_t index) {
    PictureCard card{.label = line.about, .says = line.says, .met = line.met, .line = index};
    if (const auto criterion = criterion_of(line)) {
        std::visit(CriterionCard{line, card}, challenge.criteria[*criterion].asks);
    } else if (const auto branch = branch_of(line)) {
        card.label = "on branch " + *branch;
        card.picture = CardPicture::on_a_branch;
        card.says = in_range(line.have, challenge.limits.pieces_per_branch);
    } else if (line.about == "pieces") {
        card.picture = CardPicture::pieces;
        card.says = in_range(line.have, challenge.limits.pieces);
    } else if (line.about == "branches") {
        card.picture = CardPicture::branches;
        card.says = in_range(line.have, challenge.limits.branches);
    } else if (line.about == "sheets") {
        card.picture = CardPicture::sheets;
        card.says = "most " + number_in_words(line.need);
    }
    return card;
}

/// Two criteria may ask about the same kind: labels stay apart.
void make_labels_differ(std::vector<PictureCard>& cards) {
    for (std::size_t i = 0; i < cards.size(); ++i) {
        int same = 1;
        for (std::size_t j = 0; j < i; ++j) same += cards[j].label == cards[i].label ? 1 : 0;
        if (same > 1) cards[i].label += " (" + std::to_string(same) + ")";
    }
}

}  // namespace

std::vector<PictureCard> picture_cards(const Challenge& challenge, const Report& report) {
    std::vector<PictureCard> cards;
    cards.push_back(family(report, "whole side", CardPicture::whole_side,
                           {Rule::runs_past_the_end, Rule::over_a_branch, Rule::not_by_a_whole_side, Rule::cut_off,
                            Rule::held_by_nothing}));
    if (challenge.depth_limit) {
        const bool no_chains = *challenge.depth_limit == 1;
        cards.push_back(family(report, no_chains ? "on branches" : "chain length",
                               no_chains ? CardPicture::no_chain : CardPicture::chain, {Rule::too_deep}));
    }
    cards.push_back(family(report, "neighbours", CardPicture::neighbours, {Rule::overlap, Rule::touching}));
    cards.push_back(
        family(report, "off the ground", CardPicture::off_the_ground, {Rule::ground, Rule::trunk, Rule::other_branch}));
    const Limits& limits = challenge.limits;
    if (limits.side.least || limits.side.most || limits.least_height)
        cards.push_back(family(report, "size", CardPicture::size, {Rule::wrong_size}));
    if (challenge.over_limit == OverLimit::extras_do_not_count && (limits.pieces.most || limits.pieces_per_branch.most))
        cards.push_back(family(report, "not too many", CardPicture::over_the_limit, {Rule::over_the_limit}));
    for (std::size_t i = 0; i < report.challenge.size(); ++i)
        cards.push_back(card_of(challenge, report.challenge[i], i));
    make_labels_differ(cards);
    return cards;
}

}  // namespace boughwork
