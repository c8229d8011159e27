// SPDX-License-Identifier: MIT
#pragma once
// The sections of the challenge's page. Each draws its settings, and changes `wanted` where a hand did.

#include <optional>

#include "gui/window/commands.h"
#include "gui/window/settings_form.h"

namespace boughwork {

enum class ChallengeSection { read, begin, measuring, hanging, limits, criteria, score, mathematics, for_class };

struct SectionTools {
    const Session& session;
    SettingsForm& form;
    Challenge& wanted;
    Commands& commands;
    std::optional<std::size_t>& open_item;  ///< Of a list: the one whose controls are seen.

    Judged now() const { return {session.scene(), session.plan(), session.report()}; }
    /// Begins a setting with its words as they are in force.
    void setting(Setting which) const;
};

void draw_section(ChallengeSection section, const SectionTools& tools);

// In challenge_lists.cpp.
void draw_criteria(const SectionTools& tools);
void draw_score(const SectionTools& tools);
/// The six kinds, to choose from.
const std::vector<Option<Kind>>& kind_options();

}  // namespace boughwork
