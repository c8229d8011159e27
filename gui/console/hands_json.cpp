// SPDX-License-Identifier: MIT
#include "gui/console/hands_json.h"

#include "gui/console/json_values.h"

namespace boughwork {
namespace {

Json chance_json(const Chance& chance) {
    return {{"times", chance.times},
            {"of", chance.of},
            {"share", json_number(chance.share())},
            {"error", json_number(chance.standard_error())}};
}

Json room_json(const MoreRoom& room) {
    return {{"move_mm", json_place(room.move_mm)},
            {"chain", json_numbers(room.chain)},
            {"fails_now", chance_json(room.fails_now)},
            {"fails_then", chance_json(room.fails_then)},
            {"says", room.says}};
}

Json piece_json(const ShakyPiece& piece, const std::vector<MoreRoom>& rooms) {
    Json j{{"number", piece.number.value},
           {"holds", chance_json(piece.holds)},
           {"fails_by", piece.fails_by ? Json(name_of(*piece.fails_by)) : Json(nullptr)},
           {"breaks_it", piece.fails_by ? chance_json(piece.breaks_it) : Json(nullptr)},
           {"says", piece.says},
           {"room", nullptr}};
    for (const MoreRoom& room : rooms)
        if (room.piece == piece.number) j["room"] = room_json(room);
    return j;
}

}  // namespace

std::string hands_json(const Scene& scene, const HandsReport& report, const std::vector<MoreRoom>& rooms) {
    const Hands& hands = scene.hands;
    Json j;
    j["plan"] = report.plan;
    j["builds"] = report.builds;
    j["hands"] = {{"cut_mm", json_number(hands.cut_mm)},
                  {"place_mm", json_number(hands.place_mm)},
                  {"turn_deg", json_number(hands.turn_deg)},
                  {"seed", hands.seed}};
    j["holds"] = report.holds();
    j["all_hold"] = chance_json(report.all_hold);
    j["all_well"] = chance_json(report.all_well);
    j["mean_score"] = json_number(report.mean_score);
    j["score_error"] = json_number(report.score_error);
    j["says"] = report.says;
    j["pieces"] = Json::array();
    for (const ShakyPiece& piece : report.pieces) j["pieces"].push_back(piece_json(piece, rooms));
    j["challenge"] = Json::array();
    for (const ShakyLine& line : report.challenge)
        j["challenge"].push_back({{"about", line.about}, {"asks", line.asks}, {"met", chance_json(line.met)}});
    return printed(j);
}

}  // namespace boughwork
