// SPDX-License-Identifier: MIT
#include "gui/session/picking.h"

#include <algorithm>
#include <cmath>

#include "engine/geometry/polygon.h"
#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"

namespace boughwork {
namespace {

double distance_to(const Segment& s, Vec2 place) {
    const Vec2 along = s.to - s.from;
    const double squared = dot(along, along);
    const double share = squared > 0 ? std::clamp(dot(place - s.from, along) / squared, 0.0, 1.0) : 0.0;
    return distance(s.from + share * along, place);
}

/// 0 inside.
double distance_to(const Polygon& convex, Vec2 place) {
    if (contains(convex, place)) return 0;
    double least = HUGE_VAL;
    for (std::size_t i = 0; i < convex.size(); ++i) least = std::min(least, distance_to(side(convex, i), place));
    return least;
}

/// The nearest of what it is shown; of those equally near, the first.
class Nearest {
public:
    explicit Nearest(double reach_mm) : reach_mm_(reach_mm) {}

    void look_at(double distance_mm, const Picked& what) {
        if (distance_mm > reach_mm_ || (found() && distance_mm >= distance_mm_)) return;
        distance_mm_ = distance_mm;
        picked_ = what;
    }
    bool found() const { return !std::holds_alternative<std::monostate>(picked_); }
    const Picked& picked() const { return picked_; }

private:
    double reach_mm_;
    double distance_mm_ = 0;
    Picked picked_;
};

Picked pick_handle(const Tree& tree, Vec2 place_mm, double reach_mm, std::optional<std::size_t> chosen_branch,
                   bool trunk_chosen) {
    Nearest nearest(reach_mm);
    if (chosen_branch && *chosen_branch < tree.branches.size()) {
        const std::vector<Vec2>& path = tree.branches[*chosen_branch].path_mm;
        for (std::size_t i = 0; i < path.size(); ++i)
            nearest.look_at(distance(path[i], place_mm), PickedBend{*chosen_branch, i});
    }
    if (trunk_chosen) {
        nearest.look_at(distance(trunk_top_handle_mm(tree.trunk), place_mm), PickedTrunkTop{});
        nearest.look_at(distance(trunk_foot_handle_mm(tree.trunk), place_mm), PickedTrunkFoot{});
    }
    return nearest.picked();
}

}  // namespace

Vec2 trunk_top_handle_mm(const Trunk& trunk) { return {trunk.x_mm + trunk.top_width_mm / 2, trunk.height_mm}; }

Vec2 trunk_foot_handle_mm(const Trunk& trunk) { return {trunk.x_mm + trunk.base_width_mm / 2, 0}; }

Picked pick(const Scene& scene, Vec2 place_mm, double reach_mm, std::optional<std::size_t> chosen_branch,
            bool trunk_chosen) {
    const Plan& plan = current_plan(scene);
    const Picked handle = pick_handle(plan.tree, place_mm, reach_mm, chosen_branch, trunk_chosen);
    if (!std::holds_alternative<std::monostate>(handle)) return handle;

    Nearest nearest(reach_mm);
    for (auto hung = plan.hung.rbegin(); hung != plan.hung.rend(); ++hung)
        if (const Piece* piece = find_piece(scene, hung->piece))
            nearest.look_at(distance_to(posed(piece->shape, hung->pose).outline, place_mm), PickedPiece{hung->piece});
    const TreeShape tree = shape_of(plan.tree, scene.challenge.tolerance_mm);
    for (std::size_t i = tree.branches.size(); i-- > 0;)
        for (const Polygon& run : tree.branches[i].runs) nearest.look_at(distance_to(run, place_mm), PickedBranch{i});
    nearest.look_at(distance_to(tree.trunk, place_mm), PickedTrunk{});
    return nearest.picked();
}

bool is_there(const Scene& scene, const Picked& picked) {
    const std::vector<Branch>& branches = current_plan(scene).tree.branches;
    if (const auto* piece = std::get_if<PickedPiece>(&picked)) return find_piece(scene, piece->piece) != nullptr;
    if (const auto* branch = std::get_if<PickedBranch>(&picked)) return branch->branch < branches.size();
    if (const auto* bend = std::get_if<PickedBend>(&picked))
        return bend->branch < branches.size() && bend->point < branches[bend->branch].path_mm.size();
    return true;
}

std::vector<Picked> all_in_turn(const Scene& scene) {
    std::vector<PieceNumber> numbers;
    for (const Piece& piece : scene.pieces) numbers.push_back(piece.number);
    std::sort(numbers.begin(), numbers.end());

    std::vector<Picked> all;
    for (const PieceNumber number : numbers) all.push_back(PickedPiece{number});
    const std::vector<Branch>& branches = current_plan(scene).tree.branches;
    for (std::size_t branch = 0; branch < branches.size(); ++branch) {
        all.push_back(PickedBranch{branch});
        for (std::size_t point = 0; point < branches[branch].path_mm.size(); ++point)
            all.push_back(PickedBend{branch, point});
    }
    all.push_back(PickedTrunk{});
    all.push_back(PickedTrunkTop{});
    all.push_back(PickedTrunkFoot{});
    return all;
}

}  // namespace boughwork
