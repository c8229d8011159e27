// SPDX-License-Identifier: MIT
#include "engine/edit.h"

#include "engine/words/say.h"

namespace boughwork {
namespace {

std::string words(PieceNumber number) { return say("piece {0}", {std::to_string(number.value)}); }

std::string words(const std::vector<PieceNumber>& pieces) {
    return pieces.size() == 1 ? words(pieces.front()) : say("{0} pieces", {std::to_string(pieces.size())});
}

std::string words(const AddPiece&) { return say("make a piece"); }
std::string words(const RemovePiece& wish) { return say("throw {0} away", {words(wish.piece)}); }
std::string words(const SetNote& wish) { return say("write on {0}", {words(wish.piece)}); }
std::string words(const Hang& wish) { return say("hang {0}", {words(wish.piece)}); }
std::string words(const TakeDown& wish) { return say("take {0} down", {words(wish.pieces)}); }
std::string words(const MoveTogether& wish) { return say("move {0}", {words(wish.pieces)}); }
std::string words(const AddBranch&) { return say("add a branch"); }
std::string words(const RemoveBranch& wish) { return say("take branch {0} off", {wish.name}); }
std::string words(const ShapeBranch& wish) { return say("bend branch {0}", {wish.name}); }
std::string words(const ShapeTrunk&) { return say("shape the trunk"); }
std::string words(const SetMaterial& wish) {
    return wish.branch.empty() ? say("change what the branches are made of")
                               : say("change what branch {0} is made of", {wish.branch});
}
std::string words(const SetBase&) { return say("change the base"); }
std::string words(const SetPaper&) { return say("change the paper"); }
std::string words(const SetHands&) { return say("change the hands"); }
std::string words(const SetTitle&) { return say("change the title"); }
std::string words(const ChoosePlan& wish) { return say("turn to {0}", {wish.name}); }
std::string words(const CopyPlan& wish) { return say("copy the plan as {0}", {wish.name}); }
std::string words(const AddPlan& wish) { return say("begin {0}", {wish.name}); }
std::string words(const RenamePlan& wish) { return say("name the plan {0}", {wish.name}); }
std::string words(const RemovePlan&) { return say("take the plan out"); }
std::string words(const ReshapePiece& wish) { return say("change {0}", {words(wish.piece)}); }
std::string words(const SetHandMeasured& wish) { return say("measure {0}", {words(wish.piece)}); }
std::string words(const SetAnswers& wish) { return say("answer about {0}", {words(wish.piece)}); }
std::string words(const SetChallenge&) { return say("change the challenge"); }
std::string words(const JudgeBuilt& wish) { return say("judge {0}", {words(wish.built.piece)}); }
std::string words(const ForgetBuilt& wish) { return say("forget the judgement of {0}", {words(wish.piece)}); }
std::string words(const SetLesson&) { return say("set the clock"); }
std::string words(const RingBell&) { return say("ring the bell"); }

}  // namespace

std::string in_words(const Edit& edit) {
    return std::visit([](const auto& wish) { return words(wish); }, edit);
}

}  // namespace boughwork
