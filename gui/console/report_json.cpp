// SPDX-License-Identifier: MIT
#include "gui/console/report_json.h"

#include <cassert>
#include <cmath>

#include "engine/geometry/shape.h"
#include "engine/storage/fingerprint.h"
#include "engine/typed_length.h"
#include "gui/console/json_values.h"
#include "gui/session/table_rows.h"
#include "rules/description.h"
#include "rules/measure.h"

namespace boughwork {
namespace {

/// Side 1 first; of triangles and cones exactly as they were typed.
Json sides_mm(const Shape& shape) {
    Json sides = Json::array();
    if (const auto* triangle = std::get_if<Triangle>(&shape)) {
        for (const Length side : triangle->sides) sides.push_back(json_number(to_mm(side)));
    } else if (const auto* cone = std::get_if<Cone>(&shape)) {
        for (const Length side : {cone->radius + cone->radius, cone->slant, cone->slant})
            sides.push_back(json_number(to_mm(side)));
    } else {
        const std::vector<Vec2> corners = corners_mm(shape);
        for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back(json_number(length(side(corners, i))));
    }
    return sides;
}

Json hangs_from(const Plan& plan, const std::optional<Support>& support) {
    if (!support) return nullptr;
    if (support->piece) return {{"piece", support->piece->value}, {"side", support->side}};
    return {{"branch", plan.tree.branches[support->branch].name}, {"span", support->span}};
}

Json piece_json(const Scene& scene, const Plan& plan, const PieceReport& piece) {
    const Piece* made = find_piece(scene, piece.number);
    assert(made && "the report is on pieces of this scene");
    const Challenge& challenge = scene.challenge;
    const Measures& m = piece.measures;
    const Description told = describe(made->shape, m, challenge);
    const auto measured = [&](std::int64_t steps) {
        return json_number(in_units(steps, challenge.step, challenge.units));
    };

    Json j;
    j["number"] = piece.number.value;
    j["state"] = name_of(piece.state);
    j["hangs_from"] = hangs_from(plan, piece.hangs_from);
    j["side"] = piece.side;
    j["depth"] = piece.depth;
    j["sides_mm"] = sides_mm(made->shape);
    j["measured"] = Json::array();
    for (const std::int64_t steps : m.sides_in_steps) j["measured"].push_back(measured(steps));
    j["unit"] = symbol_of(challenge.units);
    j["angles_deg"] = Json::array();
    for (const double angle : told.angles_deg) j["angles_deg"].push_back(json_number(angle));
    j["name"] = told.name;
    j["by_sides"] = m.kinds ? Json(name_of(m.kinds->by_sides)) : Json();
    j["by_angles"] = m.kinds ? Json(name_of(m.kinds->by_angles)) : Json();
    j["close_call"] = m.kinds && m.kinds->close_call;
    j["perimeter"] = measured(m.perimeter_in_steps);
    j["area"] = json_number(area_in_units(m.area_in_half_square_steps, challenge.step, challenge.units));
    j["points"] = json_number(piece.points);
    j["broken"] = Json::array();
    for (const Rule rule : piece.broken) j["broken"].push_back(name_of(rule));
    j["parents"] = json_numbers(piece.parents);
    j["notes"] = told.notes;
    return j;
}

Json line_json(const ChallengeLine& line) {
    return {{"about", line.about},
            {"asks", line.asks},
            {"met", line.met ? Json(*line.met) : Json()},
            {"have", json_number(line.have)},
            {"need", json_number(line.need)},
            {"says", line.says}};
}

}  // namespace

std::string report_json(const Scene& scene, const Plan& plan, const Report& report,
                        const std::vector<std::optional<Remedy>>& remedies) {
    assert(remedies.size() == report.findings.size());
    Json j;
    j["plan"] = report.plan;
    j["score"] = json_number(report.score);
    j["pieces"] = Json::array();
    for (const PieceReport& piece : report.pieces) j["pieces"].push_back(piece_json(scene, plan, piece));
    j["findings"] = Json::array();
    for (std::size_t i = 0; i < report.findings.size(); ++i)
        j["findings"].push_back(json_finding(report.findings[i], remedies[i]));
    j["challenge"] = Json::array();
    for (const ChallengeLine& line : report.challenge) j["challenge"].push_back(line_json(line));
    j["challenge_fingerprint"] = fingerprint(scene.challenge);
    j["bonuses"] = Json::array();
    for (const BonusLine& bonus : report.bonuses)
        j["bonuses"].push_back({{"words", bonus.words}, {"points", json_number(bonus.points)}});
    j["ways_out"] = Json::array();
    for (const WayOut& way : report.ways_out)
        j["ways_out"].push_back({{"take_down", json_numbers(way.take_down)},
                                 {"then_count", json_numbers(way.then_count)},
                                 {"says", way.says}});
    return printed(j);
}

}  // namespace boughwork
