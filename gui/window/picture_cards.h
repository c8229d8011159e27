// SPDX-License-Identifier: MIT
#pragma once
// The challenge as picture cards: one for each family of rules that it has, one for each of its
// lines; whether it is met, and in counts. What they say, not how they are drawn (cards_panel.h).

#include <optional>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// The small picture for those who do not read.
enum class CardPicture {
    whole_side,
    chain,
    no_chain,
    neighbours,
    off_the_ground,
    size,
    pieces,
    branches,
    on_a_branch,
    sheets,
    after_settling,
    no_two_alike,
    kind,
    over_the_limit,
};

struct PictureCard {
    std::string label;        ///< Unique, and the same in every language: "whole side", "isosceles share".
    std::string name;         ///< The label, said.
    std::string says;         ///< In counts: "all", "9 of 10", "5, need 6".
    std::optional<bool> met;  ///< Absent: not judged.
    CardPicture picture = CardPicture::whole_side;
    std::optional<Kind> kind;            ///< Of CardPicture::kind.
    std::optional<std::size_t> line;     ///< Into Report::challenge; absent for a family of rules.
    std::optional<std::size_t> finding;  ///< The first finding of the family.
};

/// Families first, then the lines in the report's order. `report` is the verdict on the current plan; of what is kept
/// back (rules/told.h) a card says only what is asked.
std::vector<PictureCard> picture_cards(const Scene& scene, const Report& report);

}  // namespace boughwork
