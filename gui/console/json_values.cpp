// SPDX-License-Identifier: MIT
#include "gui/console/json_values.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace boughwork {
namespace {

const char* name_of(AmountIn unit) {
    switch (unit) {
        case AmountIn::mm: return "mm";
        case AmountIn::degrees: return "degrees";
        case AmountIn::count: return "count";
    }
    return "";
}

Json remedy_json(const std::optional<Remedy>& remedy) {
    if (!remedy) return nullptr;
    return {{"piece", remedy->piece.value},
            {"move_mm", json_place(remedy->move_mm)},
            {"turn_deg", json_number(remedy->turn_ccw_deg)},
            {"chain", json_numbers(remedy->chain)},
            {"says", remedy->says}};
}

}  // namespace

Json json_number(double value) {
    constexpr double six_decimals_below = 1e5;
    char text[64];
    std::snprintf(text, sizeof text, std::abs(value) < six_decimals_below ? "%.6f" : "%.12g", value);
    const double tidy = std::strtod(text, nullptr);
    constexpr double largest_exact = 9007199254740992.0;  // 2^53
    if (tidy == std::floor(tidy) && std::abs(tidy) < largest_exact) return static_cast<std::int64_t>(tidy);
    return tidy;
}

Json json_place(Vec2 at_mm) { return Json::array({json_number(at_mm.x), json_number(at_mm.y)}); }

Json json_numbers(const std::vector<PieceNumber>& pieces) {
    Json list = Json::array();
    for (const PieceNumber piece : pieces) list.push_back(piece.value);
    return list;
}

Json json_finding(const Finding& finding, const std::optional<Remedy>& remedy) {
    Json j;
    j["rule"] = name_of(finding.rule);
    j["pieces"] = json_numbers(finding.pieces);
    j["at_fault"] = json_numbers(finding.at_fault);
    j["amount"] = json_number(finding.amount);
    j["unit"] = name_of(finding.unit);
    j["where_mm"] = Json::array();
    for (const Vec2 point : finding.where_mm) j["where_mm"].push_back(json_place(point));
    j["says"] = finding.says;
    j["remedy"] = remedy_json(remedy);
    return j;
}

std::string printed(const Json& json) {
    // The reader lets nothing in but UTF-8; were there anything else, a replacement sign is better than a throw.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace boughwork
