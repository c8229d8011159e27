// SPDX-License-Identifier: MIT
#pragma once
// The wishes a person can have about a scene, and the only way a scene changes.
// Wishes about a tree or about hanging concern the current plan.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

/// Into the envelope, under next_number().
struct AddPiece {
    Shape shape;
    std::string note;
};
/// Thrown away, from every plan.
struct RemovePiece {
    PieceNumber piece;
};
struct SetNote {
    PieceNumber piece;
    std::string note;
};
/// Another shape under the same number. What was measured and answered about the old one is gone.
struct ReshapePiece {
    PieceNumber piece;
    Shape shape;
};
struct SetHandMeasured {
    PieceNumber piece;
    HandMeasured by_hand;
};
struct SetAnswers {
    PieceNumber piece;
    Answers answers;
};
/// Hung from the envelope, or moved if it hangs already.
struct Hang {
    PieceNumber piece;
    Pose pose;
};
/// Back into the envelope.
struct TakeDown {
    std::vector<PieceNumber> pieces;
};
/// Moved together (a piece and its chain): shifted by `move_mm`.
struct MoveTogether {
    std::vector<PieceNumber> pieces;
    Vec2 move_mm;
};
struct AddBranch {
    Branch branch;  ///< An empty name: the first free "b1", "b2" ...
};
struct RemoveBranch {
    std::string name;
};
/// Replaces path and thickness (dragged ends and bends, bends added and taken out).
struct ShapeBranch {
    std::string name;
    std::vector<Vec2> path_mm;
    double thickness_mm = 8;
};
struct ShapeTrunk {
    Trunk trunk;
};
/// What a branch of the current plan is made of; an empty name: every branch.
struct SetMaterial {
    std::string branch;
    BranchMaterial material;
};
struct SetBase {
    Base base;
};
/// What all pieces are cut from.
struct SetPaper {
    Paper paper;
};
/// Of those who build.
struct SetHands {
    Hands hands;
};
struct SetTitle {
    std::string title;
};
struct ChoosePlan {
    std::string name;
};
/// A copy of the current plan under a name of its own, which becomes current.
struct CopyPlan {
    std::string name;
};
/// A plan with the current tree and nothing hung, which becomes current.
struct AddPlan {
    std::string name;
};
struct RenamePlan {
    std::string name;
};
/// Takes the current plan out; refused for the last one.
struct RemovePlan {};
/// Refused while the challenge is sealed, unless it breaks the seal and changes nothing else.
struct SetChallenge {
    Challenge challenge;
};
/// In the current plan: what stands on the table.
struct JudgeBuilt {
    Built built;
};
/// As if that piece had not been looked at on the table.
struct ForgetBuilt {
    PieceNumber piece;
};
struct SetLesson {
    Lesson lesson;
};
/// Keeps every plan as it is now, with what the referee gave it; one entry for each plan of the scene.
struct RingBell {
    struct Scored {
        std::string plan;  ///< Its name.
        double score = 0;
        int counting = 0;  ///< Pieces that count.
    };
    std::vector<Scored> plans;
    std::string name;  ///< Empty: the first free "Bell 1", "Bell 2" ...
};

using Edit = std::variant<AddPiece, RemovePiece, SetNote, Hang, TakeDown, MoveTogether, AddBranch, RemoveBranch,
                          ShapeBranch, ShapeTrunk, SetTitle, ChoosePlan, CopyPlan, AddPlan, RenamePlan, RemovePlan,
                          ReshapePiece, SetHandMeasured, SetAnswers, SetChallenge, JudgeBuilt, ForgetBuilt, SetLesson,
                          RingBell, SetMaterial, SetBase, SetPaper, SetHands>;

/// The scene with the wish carried out, or why it cannot be (an impossible triangle, a number that
/// does not exist, a turn past 120 degrees ...). The scene given is never changed. (Say
/// boughwork::apply where scene or edit is not const: a variant brings std::apply into view.)
Result<Scene> apply(const Scene& scene, const Edit& edit);

/// One more than the highest number that any piece of the scene ever had.
PieceNumber next_number(const Scene& scene);

/// "Plan 3", the first such name that is free.
std::string free_plan_name(const Scene& scene);

/// "b3", likewise.
std::string free_branch_name(const Tree& tree);

/// The edit in words, for undo and redo: "hang piece 7".
std::string in_words(const Edit& edit);

}  // namespace boughwork
