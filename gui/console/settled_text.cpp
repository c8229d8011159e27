// SPDX-License-Identifier: MIT
#include "gui/console/settled_text.h"

#include "engine/words/say.h"
#include "gui/console/report_text.h"

namespace boughwork {

std::string settled_text(const Scene& scene, const Settled& settled) {
    std::string text = plain_line(scene.title + " - " + settled.plan.name) + "\n";
    const auto line = [&](const std::string& words) { text += "  " + plain_line(words) + "\n"; };
    text += "\n" + say("What gravity does") + "\n";
    for (const SettledBranch& branch : settled.branches)
        if (!branch.says_all.empty()) line(branch.says_all);
    for (const std::string& note : settled.notes) line(note);
    if (!settled.tipping_says.empty()) line(settled.tipping_says);
    text += "\n" + say("The referee says") + "\n";
    for (const Finding& finding : settled.wrong) line(finding.says);
    if (settled.wrong.empty() && settled.report && settled.trusted)
        line(say("Nothing that was right on the flat has become wrong."));
    return text;
}

}  // namespace boughwork
