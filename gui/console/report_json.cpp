// SPDX-License-Identifier: MIT
#include "gui/console/report_json.h"

#include <cassert>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <nlohmann/json.hpp>

#include "engine/geometry/shape.h"
#include "engine/storage/fingerprint.h"
#include "engine/typed_length.h"
#include "gui/session/table_rows.h"
#include "rules/description.h"
#include "rules/measure.h"

namespace boughwork {
namespace {

using Json = nlohmann::ordered_json;

/// To a millionth, and to twelve digits: far finer than anything on paper, coarse enough that neither the noise of
/// adding nor that of another machine's sines is written. Whole numbers are written without a point.
Json number(double value) {
    constexpr double six_decimals_below = 1e5;
    char text[64];
    std::snprintf(text, sizeof text, std::abs(value) < six_decimals_below ? "%.6f" : "%.12g", value);
    const double tidy = std::strtod(text, nullptr);
    constexpr double largest_exact = 9007199254740992.0;  // 2^53
    if (tidy == std::floor(tidy) && std::abs(tidy) < largest_exact) return static_cast<std::int64_t>(tidy);
    return tidy;
}

Json place(Vec2 at_mm) { return Json::array({number(at_mm.x), number(at_mm.y)}); }

Json numbers_of(const std::vector<PieceNumber>& pieces) {
    Json list = Json::array();
    for (const PieceNumber piece : pieces) list.push_back(piece.value);
    return list;
}

const char* name_of(AmountIn unit) {
    switch (unit) {
        case AmountIn::mm: return "mm";
        case AmountIn::degrees: return "degrees";
        case AmountIn::count: return "count";
    }
    return "";
}

/// Side 1 first; of triangles and cones exactly as they were typed.
Json sides_mm(const Shape& shape) {
    Json sides = Json::array();
    if (const auto* triangle = std::get_if<Triangle>(&shape)) {
        for (const Length side : triangle->sides) sides.push_back(number(to_mm(side)));
    } else if (const auto* cone = std::get_if<Cone>(&shape)) {
        for (const Length side : {cone->radius + cone->radius, cone->slant, cone->slant})
            sides.push_back(number(to_mm(side)));
    } else {
        const std::vector<Vec2> corners = corners_mm(shape);
        for (std::size_t i = 0; i < corners.size(); ++i) sides.push_back(number(length(side(corners, i))));
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
    const auto measured = [&](std::int64_t steps) { return number(in_units(steps, challenge.step, challenge.units)); };

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
    for (const double angle : told.angles_deg) j["angles_deg"].push_back(number(angle));
    j["name"] = told.name;
    j["by_sides"] = m.kinds ? Json(name_of(m.kinds->by_sides)) : Json();
    j["by_angles"] = m.kinds ? Json(name_of(m.kinds->by_angles)) : Json();
    j["close_call"] = m.kinds && m.kinds->close_call;
    j["perimeter"] = measured(m.perimeter_in_steps);
    j["area"] = number(area_in_units(m.area_in_half_square_steps, challenge.step, challenge.units));
    j["points"] = number(piece.points);
    j["broken"] = Json::array();
    for (const Rule rule : piece.broken) j["broken"].push_back(name_of(rule));
    j["parents"] = numbers_of(piece.parents);
    j["notes"] = told.notes;
    return j;
}

Json remedy_json(const std::optional<Remedy>& remedy) {
    if (!remedy) return nullptr;
    return {{"piece", remedy->piece.value},
            {"move_mm", place(remedy->move_mm)},
            {"turn_deg", number(remedy->turn_ccw_deg)},
            {"chain", numbers_of(remedy->chain)},
            {"says", remedy->says}};
}

Json finding_json(const Finding& finding, const std::optional<Remedy>& remedy) {
    Json j;
    j["rule"] = name_of(finding.rule);
    j["pieces"] = numbers_of(finding.pieces);
    j["at_fault"] = numbers_of(finding.at_fault);
    j["amount"] = number(finding.amount);
    j["unit"] = name_of(finding.unit);
    j["where_mm"] = Json::array();
    for (const Vec2 point : finding.where_mm) j["where_mm"].push_back(place(point));
    j["says"] = finding.says;
    j["remedy"] = remedy_json(remedy);
    return j;
}

Json line_json(const ChallengeLine& line) {
    return {{"about", line.about},       {"asks", line.asks},         {"met", line.met ? Json(*line.met) : Json()},
            {"have", number(line.have)}, {"need", number(line.need)}, {"says", line.says}};
}

}  // namespace

std::string report_json(const Scene& scene, const Plan& plan, const Report& report,
                        const std::vector<std::optional<Remedy>>& remedies) {
    assert(remedies.size() == report.findings.size());
    Json j;
    j["plan"] = report.plan;
    j["score"] = number(report.score);
    j["pieces"] = Json::array();
    for (const PieceReport& piece : report.pieces) j["pieces"].push_back(piece_json(scene, plan, piece));
    j["findings"] = Json::array();
    for (std::size_t i = 0; i < report.findings.size(); ++i)
        j["findings"].push_back(finding_json(report.findings[i], remedies[i]));
    j["challenge"] = Json::array();
    for (const ChallengeLine& line : report.challenge) j["challenge"].push_back(line_json(line));
    j["challenge_fingerprint"] = fingerprint(scene.challenge);
    j["bonuses"] = Json::array();
    for (const BonusLine& bonus : report.bonuses)
        j["bonuses"].push_back({{"words", bonus.words}, {"points", number(bonus.points)}});
    j["ways_out"] = Json::array();
    for (const WayOut& way : report.ways_out)
        j["ways_out"].push_back(
            {{"take_down", numbers_of(way.take_down)}, {"then_count", numbers_of(way.then_count)}, {"says", way.says}});
    // The reader lets nothing in but UTF-8; were there anything else, a replacement sign is better than a throw.
    return j.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace boughwork
