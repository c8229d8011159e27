// SPDX-License-Identifier: MIT
#include "gui/console/settled_json.h"

#include "gui/console/json_values.h"

namespace boughwork {
namespace {

const char* name_of(Settling::State state) {
    switch (state) {
        case Settling::State::moving: return "moving";
        case Settling::State::at_rest: return "at rest";
        case Settling::State::out_of_time: return "out of time";
        case Settling::State::broken: return "broken";
    }
    return "";
}

Json json_or_null(const std::optional<double>& value) { return value ? json_number(*value) : Json(nullptr); }

Json branch_json(const SettledBranch& branch) {
    return {{"branch", branch.branch},
            {"sag_mm", json_or_null(branch.sag_mm)},
            {"error_mm", branch.sag_mm ? json_number(branch.error_mm) : Json(nullptr)},
            {"carried_g", json_number(branch.carried_g)},
            {"strength_used", json_or_null(branch.strength_used)},
            {"on_the_ground", branch.on_the_ground},
            {"says", branch.says}};
}

Json tipping_json(const Settled& settled) {
    const Tipping& t = settled.tipping;
    return {{"centre_of_mass_mm", json_place(t.centre_of_mass_mm)},
            {"to_the_edge_mm", json_number(t.to_the_edge_mm)},
            {"tips", t.to_the_edge_mm < 0},
            {"way", t.to_the_right ? "right" : "left"},
            {"needed_g", json_number(t.needed_g)},
            {"says", settled.tipping_says}};
}

}  // namespace

std::string settled_json(const Settled& settled) {
    Json j;
    j["plan"] = settled.plan.name;
    j["state"] = name_of(settled.state);
    j["trusted"] = settled.trusted;
    j["holds"] = settled.holds();
    const bool told = settled.report && settled.trusted;
    j["score"] = told ? json_number(settled.report->score) : Json(nullptr);
    j["pieces"] = Json::array();
    for (const Hung& hung : settled.plan.hung) {
        Json piece{{"number", hung.piece.value},
                   {"at_mm", json_place(hung.pose.at_mm)},
                   {"turn_deg", json_number(hung.pose.turn_ccw_deg)}};
        if (told)
            if (const PieceReport* report = find_piece(*settled.report, hung.piece))
                piece["counts"] = report->state == PieceState::counts;
        j["pieces"].push_back(std::move(piece));
    }
    j["wrong"] = Json::array();
    for (const Finding& finding : settled.wrong) j["wrong"].push_back(json_finding(finding, std::nullopt));
    j["branches"] = Json::array();
    for (const SettledBranch& branch : settled.branches) j["branches"].push_back(branch_json(branch));
    j["tipping"] = settled.tipping_says.empty() ? Json(nullptr) : tipping_json(settled);
    j["notes"] = settled.notes;
    return printed(j);
}

}  // namespace boughwork
