// SPDX-License-Identifier: MIT
#include "engine/edit.h"

namespace boughwork {
namespace {

std::string words(PieceNumber number) { return "piece " + std::to_string(number.value); }

std::string words(const std::vector<PieceNumber>& pieces) {
    return pieces.size() == 1 ? words(pieces.front()) : std::to_string(pieces.size()) + " pieces";
}

std::string words(const AddPiece&) { return "make a piece"; }
std::string words(const RemovePiece& wish) { return "throw " + words(wish.piece) + " away"; }
std::string words(const SetNote& wish) { return "write on " + words(wish.piece); }
std::string words(const Hang& wish) { return "hang " + words(wish.piece); }
std::string words(const TakeDown& wish) { return "take " + words(wish.pieces) + " down"; }
std::string words(const MoveTogether& wish) { return "move " + words(wish.pieces); }
std::string words(const AddBranch&) { return "add a branch"; }
std::string words(const RemoveBranch& wish) { return "take branch " + wish.name + " off"; }
std::string words(const ShapeBranch& wish) { return "bend branch " + wish.name; }
std::string words(const ShapeTrunk&) { return "shape the trunk"; }
std::string words(const SetTitle&) { return "change the title"; }
std::string words(const ChoosePlan& wish) { return "turn to " + wish.name; }
std::string words(const CopyPlan& wish) { return "copy the plan as " + wish.name; }
std::string words(const AddPlan& wish) { return "begin " + wish.name; }
std::string words(const RenamePlan& wish) { return "name the plan " + wish.name; }
std::string words(const RemovePlan&) { return "take the plan out"; }
std::string words(const ReshapePiece& wish) { return "change " + words(wish.piece); }
std::string words(const SetHandMeasured& wish) { return "measure " + words(wish.piece); }
std::string words(const SetAnswers& wish) { return "answer about " + words(wish.piece); }
std::string words(const SetChallenge&) { return "change the challenge"; }
std::string words(const JudgeBuilt& wish) { return "judge " + words(wish.built.piece); }
std::string words(const ForgetBuilt& wish) { return "forget the judgement of " + words(wish.piece); }
std::string words(const SetLesson&) { return "set the clock"; }
std::string words(const RingBell&) { return "ring the bell"; }

}  // namespace

std::string in_words(const Edit& edit) {
    return std::visit([](const auto& wish) { return words(wish); }, edit);
}

}  // namespace boughwork
