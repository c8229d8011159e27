// SPDX-License-Identifier: MIT
#pragma once
// What pupils answered about a piece, judged kindly: what is said encourages, and tells nothing that
// the pupil has not found yet. An answer is judged against the plan as it is now.

#include <optional>
#include <string>
#include <vector>

#include "rules/report.h"

namespace boughwork {

/// What a pupil can be asked about a piece.
enum class Asked { by_sides, by_angles, perimeter, points };
inline constexpr Asked all_asked[] = {Asked::by_sides, Asked::by_angles, Asked::perimeter, Asked::points};

enum class AnswerIs { right, nearly, not_yet };

struct Judgement {
    AnswerIs judged = AnswerIs::right;
    std::string says;
    friend bool operator==(const Judgement&, const Judgement&) = default;
};

/// False for the kinds of a hexagon, and for the points of what lies in the envelope.
bool can_be_asked(Asked what, const PieceReport& report);
bool is_answered(Asked what, const Answers& answers);
/// True when the answer waits for is_told() to say what the program thinks itself.
bool is_told(const Scene& scene, Asked what, const Piece& piece);

/// Absent when there is no answer, or nothing that could be asked.
std::optional<Judgement> judged(const Challenge& challenge, const Piece& piece, const PieceReport& report, Asked what);

/// "by sides", "by angles", "perimeter", "points": as above their columns.
std::string words_for(Asked what);
/// What was answered, in words: "isosceles", "24.5 cm".
std::string answer_words(const Challenge& challenge, const Answers& answers, Asked what);

struct GivenAnswer {
    PieceNumber piece;
    Asked about = Asked::by_sides;
    std::string answer;
    Judgement judgement;
};
/// All answers of the scene, by number of the piece; `report` on its current plan.
std::vector<GivenAnswer> given_answers(const Scene& scene, const Report& report);

}  // namespace boughwork
