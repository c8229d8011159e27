// SPDX-License-Identifier: MIT
#include "gui/console/hands_text.h"

#include "engine/words/say.h"
#include "gui/console/report_text.h"
#include "rules/wording.h"

namespace boughwork {

std::string hands_text(const Scene& scene, const HandsReport& report, const std::vector<MoreRoom>& rooms) {
    std::string text = plain_line(scene.title + " - " + report.plan) + "\n";
    const auto line = [&](const std::string& words) { text += "  " + plain_line(words) + "\n"; };
    const Hands& hands = scene.hands;
    text += "\n" + say("Shaky hands") + "\n";
    line(say("{0} builds by hands that err by {1} mm in a cut, {2} mm in a place and {3} degrees in a turn.",
             {std::to_string(report.builds), number_in_words(hands.cut_mm), number_in_words(hands.place_mm),
              number_in_words(hands.turn_deg)}));
    if (report.pieces.empty()) line(say("No piece hangs yet."));
    if (!report.says.empty()) line(report.says);
    line(say("Mean score: {0}, give or take {1}.",
             {number_in_words(report.mean_score), number_in_words(report.score_error)}));
    if (!report.pieces.empty()) text += "\n" + say("Pieces") + "\n";
    for (const ShakyPiece& piece : report.pieces) {
        line(piece.says + " " +
             say("({0} per cent hold, give or take {1})",
                 {number_in_words(100 * piece.holds.share()), number_in_words(100 * piece.holds.standard_error())}));
        for (const MoreRoom& room : rooms)
            if (room.piece == piece.number) line("  " + room.says);
    }
    if (!report.challenge.empty()) text += "\n" + say("The challenge") + "\n";
    for (const ShakyLine& asked : report.challenge) line(say("{0}: met in {1}", {asked.asks, in_words(asked.met)}));
    return text;
}

}  // namespace boughwork
