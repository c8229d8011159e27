// SPDX-License-Identifier: MIT
#include "engine/edit.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/limits.h"
#include "engine/utf8.h"

namespace boughwork {
namespace {

Problem cannot(std::string found, std::string to_do) {
    return {.found = std::move(found), .kept = "The plan stays as it was.", .to_do = std::move(to_do)};
}

Problem too_large() { return cannot("That is more than a kilometre.", "Make it smaller, or bring it nearer."); }
Problem no_piece(PieceNumber number) {
    return cannot("There is no piece " + std::to_string(number.value) + ".", "Choose another piece.");
}
/// A name that is no text cannot be shown, and nothing bears it.
std::string shown(const std::string& name) { return is_utf8(name) ? name : "of that name"; }
Problem no_branch(const std::string& name) {
    return cannot("There is no branch " + shown(name) + ".", "Choose another branch.");
}

// Each check gives what is wrong, or Done.

Result<Done> check_text(const std::string& text) {
    if (!is_utf8(text)) return cannot("That is no text in UTF-8.", "Write it anew.");
    return Done{};
}

Result<Done> check_name(const std::string& name) {
    const auto is_control = [](char c) { return (c >= 0 && c < ' ') || c == '\x7F'; };
    if (name.find_first_not_of(' ') == std::string::npos) return cannot("There is no name yet.", "Write one.");
    if (std::any_of(name.begin(), name.end(), is_control))
        return cannot("A name is one line of letters and signs.", "Write another name.");
    return check_text(name);
}

Result<Done> check_room(std::size_t listed, std::size_t most = most_listed) {
    if (listed >= most) return cannot("There are too many of them.", "Take one out first.");
    return Done{};
}

Result<Done> check_new_plan_name(const Scene& scene, const std::string& name) {
    if (find_plan(scene, name)) return cannot("There is a plan " + name + " already.", "Choose another name.");
    return check_name(name);
}

bool all_within_limits(const Shape& shape) {
    if (const auto* triangle = std::get_if<Triangle>(&shape))
        return std::all_of(triangle->sides.begin(), triangle->sides.end(), [](Length l) { return within_limits(l); });
    if (const auto* cone = std::get_if<Cone>(&shape)) return within_limits(cone->radius) && within_limits(cone->slant);
    const std::vector<ExactPoint>& corners = std::get<Outline>(shape).corners;
    return std::all_of(corners.begin(), corners.end(),
                       [](const ExactPoint& c) { return within_limits(c.x) && within_limits(c.y); });
}

Result<Done> check(const Shape& shape) {
    if (!all_within_limits(shape)) return too_large();
    if (const Result<Done> can = possible(shape); !can) return cannot(can.problem().found, can.problem().to_do);
    return Done{};
}

Result<Done> check(const Pose& pose) {
    if (!within_limits(pose.at_mm)) return too_large();
    if (!(std::abs(pose.turn_ccw_deg) <= greatest_turn_deg)) return cannot("That is too many turns.", "Turn it less.");
    return Done{};
}

Result<Done> check(const Branch& branch, double tolerance_mm) {
    const bool near =
        std::all_of(branch.path_mm.begin(), branch.path_mm.end(), [](Vec2 place) { return within_limits(place); });
    if (!near || !within_limits(branch.thickness_mm)) return too_large();
    const Result<Done> can = possible(branch, tolerance_mm);
    if (!can) return cannot(can.problem().found, can.problem().to_do);
    return Done{};
}

Result<Done> check(const Trunk& trunk) {
    const double sizes[] = {trunk.height_mm, trunk.base_width_mm, trunk.top_width_mm};
    for (const double size : sizes) {
        if (!(size > 0)) return cannot("The trunk would be nothing.", "Give it a height and two widths.");
        if (!within_limits(size)) return too_large();
    }
    if (!within_limits(trunk.x_mm)) return too_large();
    return Done{};
}

Result<Done> check_all_there(const Scene& scene, const std::vector<PieceNumber>& pieces) {
    for (const PieceNumber number : pieces)
        if (!find_piece(scene, number)) return no_piece(number);
    return Done{};
}

// Where a changed copy of the scene is changed.

template <class List, class Matches>
auto find_in(List& list, Matches matches) -> decltype(&list.front()) {
    const auto found = std::find_if(list.begin(), list.end(), matches);
    return found == list.end() ? nullptr : &*found;
}

Plan& current_plan_in(Scene& scene) {
    Plan* plan = find_in(scene.plans, [&](const Plan& p) { return p.name == scene.current; });
    assert(plan && "a scene names one of its plans as current");
    return *plan;
}

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

// One overload for each wish. `scene` is a copy of the scene as it was, and theirs to change.

Result<Scene> carried_out(Scene scene, const AddPiece& wish) {
    if (const Result<Done> can = check(wish.shape); !can) return can.problem();
    if (const Result<Done> can = check_room(scene.pieces.size()); !can) return can.problem();
    const PieceNumber number = next_number(scene);
    if (number.value > greatest_count)
        return cannot("There is no higher number for a piece.", "Throw the piece with the highest number away.");
    scene.pieces.push_back({.number = number, .shape = wish.shape});
    return scene;
}

Result<Scene> carried_out(Scene scene, const RemovePiece& wish) {
    if (!find_piece(scene, wish.piece)) return no_piece(wish.piece);
    for (Plan& plan : scene.plans) take_down(plan, {wish.piece});
    scene.pieces.erase(std::find_if(scene.pieces.begin(), scene.pieces.end(),
                                    [&](const Piece& piece) { return piece.number == wish.piece; }));
    return scene;
}

Result<Scene> carried_out(Scene scene, const SetNote& wish) {
    Piece* piece = find_in(scene.pieces, [&](const Piece& p) { return p.number == wish.piece; });
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
            return cannot("Piece " + std::to_string(number.value) + " lies in the envelope.", "Hang it first.");
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
        return cannot("There is a branch " + branch.name + " already.", "Choose another name.");
    if (const Result<Done> can = check(branch, scene.challenge.tolerance_mm); !can) return can.problem();
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

Result<Scene> carried_out(Scene scene, const SetTitle& wish) {
    if (const Result<Done> can = check_text(wish.title); !can) return can.problem();
    scene.title = wish.title;
    return scene;
}

Result<Scene> carried_out(Scene scene, const ChoosePlan& wish) {
    if (!find_plan(scene, wish.name))
        return cannot("There is no plan " + shown(wish.name) + ".", "Choose another plan.");
    scene.current = wish.name;
    return scene;
}

Result<Scene> carried_out(Scene scene, const CopyPlan& wish) {
    if (const Result<Done> can = check_room(scene.plans.size()); !can) return can.problem();
    if (const Result<Done> can = check_new_plan_name(scene, wish.name); !can) return can.problem();
    Plan copy = current_plan(scene);
    copy.name = wish.name;
    add_as_current(scene, std::move(copy));
    return scene;
}

Result<Scene> carried_out(Scene scene, const AddPlan& wish) {
    if (const Result<Done> can = check_room(scene.plans.size()); !can) return can.problem();
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
    if (scene.plans.size() == 1) return cannot("This is the last plan of the file.", "Add another one first.");
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
    int highest = 0;
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
