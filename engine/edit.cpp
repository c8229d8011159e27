// SPDX-License-Identifier: MIT
#include "engine/edit.h"

#include <algorithm>
#include <utility>

#include "engine/edit_checks.h"
#include "engine/edit_of_the_class.h"
#include "engine/limits.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// Of a copy of the scene that is being changed.
Branch* branch_in(Scene& scene, const std::string& name) {
    return find_in(current_plan_in(scene).tree.branches, [&](const Branch& b) { return b.name == name; });
}

bool is_among(const std::vector<PieceNumber>& pieces, PieceNumber number) {
    return std::find(pieces.begin(), pieces.end(), number) != pieces.end();
}

void take_down(Plan& plan, const std::vector<PieceNumber>& pieces) {
    plan.hung.erase(std::remove_if(plan.hung.begin(), plan.hung.end(),
                                   [&](const Hung& hung) { return is_among(pieces, hung.piece); }),
                    plan.hung.end());
}

void add_as_current(Scene& scene, Plan plan) {
    scene.current = plan.name;
    scene.plans.push_back(std::move(plan));
}

/// The problem of a value that was refused, as one of the open plan.
Problem stays(const Problem& problem) { return cannot(problem.found, problem.to_do); }

// One overload for each wish. `scene` is a copy of the scene as it was, and theirs to change.

Result<Scene> carried_out(Scene scene, const AddPiece& wish) {
    if (const Result<Done> can = check(wish.shape); !can) return can.problem();
    if (const Result<Done> can = check_text(wish.note); !can) return can.problem();
    if (const Result<Done> can = check_room(scene.pieces.size(), most_listed); !can) return can.problem();
    const PieceNumber number = next_number(scene);
    if (number.value > greatest_count)
        return cannot(say("There is no higher number for a piece."), say("Start a new tree."));
    scene.pieces.push_back({.number = number, .shape = wish.shape, .note = wish.note});
    return scene;
}

Result<Scene> carried_out(Scene scene, const RemovePiece& wish) {
    if (!find_piece(scene, wish.piece)) return no_piece(wish.piece);
    const int given = next_number(scene).value - 1;
    for (Plan& plan : scene.plans) {
        take_down(plan, {wish.piece});
        plan.built.erase(std::remove_if(plan.built.begin(), plan.built.end(),
                                        [&](const Built& built) { return built.piece == wish.piece; }),
                         plan.built.end());
    }
    scene.pieces.erase(std::find_if(scene.pieces.begin(), scene.pieces.end(),
                                    [&](const Piece& piece) { return piece.number == wish.piece; }));
    if (next_number(scene).value <= given) scene.numbers_given = given;
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetNote& wish) {
    Piece* piece = piece_in(scene, wish.piece);
    if (!piece) return no_piece(wish.piece);
    if (const Result<Done> can = check_text(wish.note); !can) return can.problem();
    piece->note = wish.note;
    return scene;
}

Result<Scene> carried_out(Scene scene, const Hang& wish) {
    if (!find_piece(scene, wish.piece)) return no_piece(wish.piece);
    if (const Result<Done> can = check(wish.pose); !can) return can.problem();
    std::vector<Hung>& all = current_plan_in(scene).hung;
    if (Hung* hung = find_in(all, [&](const Hung& h) { return h.piece == wish.piece; })) {
        hung->pose = wish.pose;
    } else {
        all.push_back({.piece = wish.piece, .pose = wish.pose});
    }
    return scene;
}

Result<Scene> carried_out(Scene scene, const TakeDown& wish) {
    if (const Result<Done> can = check_all_there(scene, wish.pieces); !can) return can.problem();
    take_down(current_plan_in(scene), wish.pieces);
    return scene;
}

Result<Scene> carried_out(Scene scene, const MoveTogether& wish) {
    if (const Result<Done> can = check_all_there(scene, wish.pieces); !can) return can.problem();
    Plan& plan = current_plan_in(scene);
    for (const PieceNumber number : wish.pieces)
        if (!find_hung(plan, number))
            return cannot(say("Piece {0} lies in the envelope.", {std::to_string(number.value)}),
                          say("Hang it first."));
    for (Hung& hung : plan.hung) {
        if (!is_among(wish.pieces, hung.piece)) continue;
        hung.pose.at_mm = hung.pose.at_mm + wish.move_mm;
        if (const Result<Done> can = check(hung.pose); !can) return can.problem();
    }
    return scene;
}

Result<Scene> carried_out(Scene scene, const AddBranch& wish) {
    Tree& tree = current_plan_in(scene).tree;
    if (const Result<Done> can = check_room(tree.branches.size(), most_branches); !can) return can.problem();
    Branch branch = wish.branch;
    if (branch.name.empty()) branch.name = free_branch_name(tree);
    if (const Result<Done> can = check_name(branch.name); !can) return can.problem();
    if (branch_in(scene, branch.name))
        return cannot(say("There is a branch {0} already.", {branch.name}), say("Choose another name."));
    if (const Result<Done> can = check(branch, scene.challenge.tolerance_mm); !can) return can.problem();
    if (const Result<Done> can = possible(branch.material); !can) return stays(can.problem());
    if (const Result<Done> can = check_text(branch.material.name); !can) return can.problem();
    tree.branches.push_back(std::move(branch));
    return scene;
}

Result<Scene> carried_out(Scene scene, const RemoveBranch& wish) {
    std::vector<Branch>& all = current_plan_in(scene).tree.branches;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Branch& b) { return b.name == wish.name; });
    if (found == all.end()) return no_branch(wish.name);
    all.erase(found);
    return scene;
}

Result<Scene> carried_out(Scene scene, const ShapeBranch& wish) {
    Branch* branch = branch_in(scene, wish.name);
    if (!branch) return no_branch(wish.name);
    branch->path_mm = wish.path_mm;
    branch->thickness_mm = wish.thickness_mm;
    if (const Result<Done> can = check(*branch, scene.challenge.tolerance_mm); !can) return can.problem();
    return scene;
}

Result<Scene> carried_out(Scene scene, const ShapeTrunk& wish) {
    if (const Result<Done> can = check(wish.trunk); !can) return can.problem();
    Trunk& trunk = current_plan_in(scene).tree.trunk;
    std::string unknown_fields = std::move(trunk.unknown_fields);
    trunk = wish.trunk;
    trunk.unknown_fields = std::move(unknown_fields);
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetMaterial& wish) {
    if (const Result<Done> can = possible(wish.material); !can) return stays(can.problem());
    if (const Result<Done> can = check_text(wish.material.name); !can) return can.problem();
    if (!wish.branch.empty() && !branch_in(scene, wish.branch)) return no_branch(wish.branch);
    for (Branch& branch : current_plan_in(scene).tree.branches)
        if (wish.branch.empty() || branch.name == wish.branch) branch.material = wish.material;
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetBase& wish) {
    if (const Result<Done> can = possible(wish.base); !can) return stays(can.problem());
    current_plan_in(scene).tree.base = wish.base;
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetPaper& wish) {
    if (const Result<Done> can = possible(wish.paper); !can) return stays(can.problem());
    if (const Result<Done> can = check_text(wish.paper.name); !can) return can.problem();
    scene.paper = wish.paper;
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetHands& wish) {
    if (const Result<Done> can = possible(wish.hands); !can) return stays(can.problem());
    scene.hands = wish.hands;
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetTitle& wish) {
    if (const Result<Done> can = check_text(wish.title); !can) return can.problem();
    scene.title = wish.title;
    return scene;
}

Result<Scene> carried_out(Scene scene, const ChoosePlan& wish) {
    if (!find_plan(scene, wish.name)) return no_plan(wish.name);
    scene.current = wish.name;
    return scene;
}

Result<Scene> carried_out(Scene scene, const CopyPlan& wish) {
    if (const Result<Done> can = check_room(scene.plans.size(), most_listed); !can) return can.problem();
    if (const Result<Done> can = check_new_plan_name(scene, wish.name); !can) return can.problem();
    Plan copy = current_plan(scene);
    copy.name = wish.name;
    copy.built.clear();  // the tree that was judged is that of the first
    add_as_current(scene, std::move(copy));
    return scene;
}

Result<Scene> carried_out(Scene scene, const AddPlan& wish) {
    if (const Result<Done> can = check_room(scene.plans.size(), most_listed); !can) return can.problem();
    if (const Result<Done> can = check_new_plan_name(scene, wish.name); !can) return can.problem();
    add_as_current(scene, {.name = wish.name, .tree = current_plan(scene).tree});
    return scene;
}

Result<Scene> carried_out(Scene scene, const RenamePlan& wish) {
    if (wish.name == scene.current) return scene;
    if (const Result<Done> can = check_new_plan_name(scene, wish.name); !can) return can.problem();
    current_plan_in(scene).name = wish.name;
    scene.current = wish.name;
    return scene;
}

Result<Scene> carried_out(Scene scene, const RemovePlan&) {
    if (scene.plans.size() == 1)
        return cannot(say("This is the last plan of the file."), say("Add another one first."));
    const auto gone = scene.plans.begin() + (&current_plan_in(scene) - scene.plans.data());
    const auto next = scene.plans.erase(gone);
    scene.current = next == scene.plans.end() ? scene.plans.back().name : next->name;
    return scene;
}

template <class Taken>
std::string first_free_name(const std::string& stem, Taken taken) {
    for (int i = 1;; ++i)
        if (std::string name = stem + std::to_string(i); !taken(name)) return name;
}

}  // namespace

Result<Scene> apply(const Scene& scene, const Edit& edit) {
    return std::visit([&](const auto& wish) { return carried_out(scene, wish); }, edit);
}

PieceNumber next_number(const Scene& scene) {
    int highest = scene.numbers_given;
    for (const Piece& piece : scene.pieces) highest = std::max(highest, piece.number.value);
    return {highest + 1};
}

std::string free_plan_name(const Scene& scene) {
    return first_free_name("Plan ", [&](const std::string& name) { return find_plan(scene, name) != nullptr; });
}

std::string free_branch_name(const Tree& tree) {
    return first_free_name("b", [&](const std::string& name) {
        return find_in(tree.branches, [&](const Branch& branch) { return branch.name == name; }) != nullptr;
    });
}

}  // namespace boughwork
