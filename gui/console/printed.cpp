// SPDX-License-Identifier: MIT
#include "gui/console/printed.h"

#include "engine/storage/csv.h"
#include "engine/words/say.h"
#include "gui/console/hands_json.h"
#include "gui/console/report_json.h"
#include "gui/session/table_rows.h"
#include "rules/after_settling.h"
#include "rules/check.h"
#include "rules/remedy.h"

namespace boughwork {

std::vector<std::optional<Remedy>> remedies_of(const Scene& scene, const Plan& plan, const Report& report) {
    std::vector<std::optional<Remedy>> remedies;
    for (const Finding& finding : report.findings) remedies.push_back(remedy(scene, plan, report, finding));
    return remedies;
}

std::string printed_json(const Scene& scene, const Plan& plan) {
    const Report report = check_and_settle(scene, plan);
    return report_json(scene, plan, report, remedies_of(scene, plan, report));
}

std::string printed_hands(const Scene& scene, const Plan& plan, int builds) {
    ShakyHands hands(scene, plan);
    hands.build(builds);
    const HandsReport report = hands.report();
    return hands_json(scene, report, more_rooms(scene, plan, report));
}

std::string printed_csv(const Scene& scene, const Plan& plan) {
    const SpeakingIn english(Language::english);
    return csv_text(table_rows(scene, plan, check(scene, plan)));
}

}  // namespace boughwork
