// SPDX-License-Identifier: MIT
#pragma once
// Wishes about the challenge, about what pupils wrote down, and about the lesson; for edit.cpp alone.
// `scene` is a copy of the scene as it was, and theirs to change.

#include "engine/edit.h"

namespace boughwork {

Result<Scene> carried_out(Scene scene, const ReshapePiece& wish);
Result<Scene> carried_out(Scene scene, const SetHandMeasured& wish);
Result<Scene> carried_out(Scene scene, const SetAnswers& wish);
Result<Scene> carried_out(Scene scene, const SetChallenge& wish);
Result<Scene> carried_out(Scene scene, const JudgeBuilt& wish);
Result<Scene> carried_out(Scene scene, const ForgetBuilt& wish);
Result<Scene> carried_out(Scene scene, const SetLesson& wish);
Result<Scene> carried_out(Scene scene, const RingBell& wish);

}  // namespace boughwork
