// SPDX-License-Identifier: MIT
#include "gui/session/pulling.h"

#include <algorithm>
#include <utility>

#include "engine/geometry/posing.h"
#include "engine/geometry/tree_shape.h"
#include "gui/session/chain.h"

namespace boughwork {
namespace {

/// The rigid motion of a span: what hangs from it keeps its distance from the end that moved less.
Pose moved_with_span(const Pose& pose, const Segment& before, const Segment& after) {
    const bool hold_from = distance(before.from, after.from) <= distance(before.to, after.to);
    const Vec2 held = hold_from ? before.from : before.to;
    const Vec2 goes_to = hold_from ? after.from : after.to;
    const Vec2 old_way = direction(before);
    const Vec2 new_way = direction(after);
    const double turn_deg = std::atan2(cross(old_way, new_way), dot(old_way, new_way)) * degrees_per_radian;
    return shifted(turned(pose, turn_deg, held), goes_to - held);
}

void append(std::vector<Edit>& edits, std::vector<Edit> more) {
    edits.insert(edits.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// The pieces that hang from the branch itself, each with its chain, where their spans take them.
std::vector<Edit> brought_along(const Scene& scene, const Report& report, std::size_t branch,
                                const ShapeBranch& becomes) {
    const Plan& plan = current_plan(scene);
    const double tolerance_mm = scene.challenge.tolerance_mm;
    Tree tree = plan.tree;
    const std::vector<Span> before = shape_of(tree, tolerance_mm).branches[branch].spans;
    tree.branches[branch].path_mm = becomes.path_mm;
    if (!possible(tree.branches[branch], tolerance_mm)) return {};
    const std::vector<Span> after = shape_of(tree, tolerance_mm).branches[branch].spans;
    if (before.size() != after.size()) return {};  // spans came or went: which is which can't be told

    std::vector<Edit> edits;
    for (const PieceReport& piece : report.pieces) {
        if (!piece.hangs_from || piece.hangs_from->piece || piece.hangs_from->branch != branch) continue;
        for (std::size_t i = 0; i < before.size(); ++i) {
            if (before[i].number != piece.hangs_from->span || before[i].edge == after[i].edge) continue;
            const Pose pose = moved_with_span(find_hung(plan, piece.number)->pose, before[i].edge, after[i].edge);
            append(edits, hung_with_chain(plan, report, piece.number, pose));
        }
    }
    return edits;
}

std::vector<Edit> pulled_bend(const Scene& scene, const Report& report, const PickedBend& bend, Vec2 by_mm) {
    const Branch& branch = current_plan(scene).tree.branches[bend.branch];
    ShapeBranch becomes = {branch.name, branch.path_mm, branch.thickness_mm};
    becomes.path_mm[bend.point] = becomes.path_mm[bend.point] + by_mm;
    std::vector<Edit> edits = {becomes};
    append(edits, brought_along(scene, report, bend.branch, becomes));
    return edits;
}

std::vector<Edit> pulled_branch(const Scene& scene, const Report& report, std::size_t index, Vec2 by_mm) {
    const Branch& branch = current_plan(scene).tree.branches[index];
    ShapeBranch becomes = {branch.name, branch.path_mm, branch.thickness_mm};
    for (Vec2& point : becomes.path_mm) point = point + by_mm;

    MoveTogether riders = {.pieces = {}, .move_mm = by_mm};
    for (const PieceReport& piece : report.pieces)
        if (piece.hangs_from && piece.hangs_from->branch == index) riders.pieces.push_back(piece.number);
    std::vector<Edit> edits = {becomes};
    if (!riders.pieces.empty()) edits.push_back(riders);
    return edits;
}

}  // namespace

std::vector<Edit> pulled(const Scene& scene, const Report& report, const Picked& what, Vec2 by_mm) {
    if (!is_there(scene, what)) return {};
    if (const auto* bend = std::get_if<PickedBend>(&what)) return pulled_bend(scene, report, *bend, by_mm);
    if (const auto* branch = std::get_if<PickedBranch>(&what))
        return pulled_branch(scene, report, branch->branch, by_mm);
    Trunk trunk = current_plan(scene).tree.trunk;
    if (std::holds_alternative<PickedTrunkTop>(what)) {
        trunk.height_mm += by_mm.y;
        trunk.top_width_mm += 2 * by_mm.x;  // its middle stays
        return {ShapeTrunk{trunk}};
    }
    if (std::holds_alternative<PickedTrunkFoot>(what)) {
        trunk.base_width_mm += 2 * by_mm.x;
        return {ShapeTrunk{trunk}};
    }
    return {};
}

Vec2 rounded_point(const Branch& branch, std::size_t point, Vec2 at_mm, Unit unit) {
    constexpr double near_mm = 4;                          // a hand is no steadier than that (a guess)
    constexpr double round_rad = 15 / degrees_per_radian;  // a set square's steps
    const double round_mm = unit == Unit::in ? 12.7 : 10;
    const Vec2 other = branch.path_mm[point == 0 ? 1 : point - 1];
    const Vec2 run = at_mm - other;
    double long_mm = length(run);
    double angle_rad = std::atan2(run.y, run.x);
    const double nearest_rad = std::round(angle_rad / round_rad) * round_rad;
    if (std::abs(angle_rad - nearest_rad) * long_mm <= near_mm) angle_rad = nearest_rad;
    const double nearest_mm = std::max(std::round(long_mm / round_mm), 1.0) * round_mm;
    if (std::abs(long_mm - nearest_mm) <= near_mm) long_mm = nearest_mm;
    return other + long_mm * Vec2{std::cos(angle_rad), std::sin(angle_rad)};
}

Branch next_branch(const Tree& tree) {
    const Trunk& trunk = tree.trunk;
    std::size_t on_the_right = 0;
    for (const Branch& branch : tree.branches)
        if (branch.path_mm.back().x > trunk.x_mm) ++on_the_right;
    const std::size_t on_the_left = tree.branches.size() - on_the_right;
    const bool right = on_the_right <= on_the_left;

    const auto there = static_cast<double>(std::min(on_the_right, on_the_left));
    const double share = std::max(0.85 - 0.25 * there, 0.2);  // of the height; room below for the longest pieces
    const double half_width = (trunk.base_width_mm + share * (trunk.top_width_mm - trunk.base_width_mm)) / 2;
    const double long_mm = 260;  // an A4 sheet's long side less a strip to glue
    const double way = right ? 1 : -1;
    const Vec2 from = {trunk.x_mm + way * half_width, share * trunk.height_mm};
    return {.path_mm = {from, from + Vec2{way * long_mm, 0}}};
}

ShapeBranch with_bend(const Branch& branch, std::optional<std::size_t> point) {
    ShapeBranch becomes = {branch.name, branch.path_mm, branch.thickness_mm};
    std::vector<Vec2>& path = becomes.path_mm;
    std::size_t run = 0;
    if (point) {
        run = std::min(*point, path.size() - 2);
    } else {
        for (std::size_t i = 1; i + 1 < path.size(); ++i)
            if (distance(path[i], path[i + 1]) > distance(path[run], path[run + 1])) run = i;
    }
    path.insert(path.begin() + static_cast<std::ptrdiff_t>(run) + 1, 0.5 * (path[run] + path[run + 1]));
    return becomes;
}

ShapeBranch without_bend(const Branch& branch, std::size_t point) {
    ShapeBranch becomes = {branch.name, branch.path_mm, branch.thickness_mm};
    becomes.path_mm.erase(becomes.path_mm.begin() + static_cast<std::ptrdiff_t>(point));
    return becomes;
}

}  // namespace boughwork
