// SPDX-License-Identifier: MIT
#include "gui/session/work.h"

#include "engine/geometry/mirroring.h"
#include "engine/geometry/posing.h"
#include "engine/geometry/shape.h"
#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "gui/session/chain.h"
#include "gui/session/places.h"
#include "gui/session/pulling.h"
#include "gui/session/sliding.h"
#include "rules/remedy.h"

namespace boughwork {
namespace {

constexpr double turn_step_deg = 1;

/// To the right along the support, for keys that go left and right; up along an upright one.
Vec2 rightwards(const Segment& edge) {
    const Vec2 way = direction(edge);
    const bool upright = std::abs(way.x) < 1e-9;
    return (upright ? way.y : way.x) < 0 ? -way : way;
}

/// One step of the challenge the way of the arrow.
std::optional<Vec2> arrow_mm(const Challenge& challenge, Action action) {
    const double step = step_mm(challenge);
    switch (action) {
        case Action::nudge_left: return Vec2{-step, 0};
        case Action::nudge_right: return Vec2{step, 0};
        case Action::nudge_up: return Vec2{0, step};
        case Action::nudge_down: return Vec2{0, -step};
        default: return std::nullopt;
    }
}

std::vector<Edit> nudged(const Scene& scene, const Report& report, const std::vector<PieceNumber>& pieces,
                         Vec2 move_mm) {
    const std::optional<Support>& support = find_piece(report, pieces.front())->hangs_from;
    const std::optional<Segment> edge = support ? edge_of(scene, report, *support) : std::nullopt;
    if (edge && move_mm.x != 0) move_mm = move_mm.x * rightwards(*edge);
    return {MoveTogether{with_chains(report, pieces), move_mm}};
}

/// The side by which it hangs, or would if it were pushed up.
int hanging_side(const Shape& shape, const Pose& pose, const PieceReport& report) {
    return report.hangs_from ? report.side : uppermost_side(shape, pose);
}

}  // namespace

std::vector<Edit> slid(const Scene& scene, const Report& report, const std::vector<PieceNumber>& pieces,
                       bool to_the_right) {
    const PieceReport& leader = *find_piece(report, pieces.front());
    const std::optional<Segment> edge = leader.hangs_from ? edge_of(scene, report, *leader.hangs_from) : std::nullopt;
    if (!edge) return {};
    const Slide slide{with_chains(report, pieces), *leader.hangs_from, leader.side, *edge};
    const Vec2 right = rightwards(*edge);
    const std::optional<Vec2> move_mm = slid_on(scene, slide, to_the_right ? right : -right);
    if (!move_mm || length(*move_mm) <= hair_mm) return {};
    return {MoveTogether{slide.pieces, *move_mm}};
}

std::vector<Edit> work_on_piece(const Scene& scene, const Report& report, const std::vector<PieceNumber>& pieces,
                                Action action) {
    const PieceNumber piece = pieces.front();
    const Plan& plan = current_plan(scene);
    const auto rehung = [&](const Pose& pose) { return hung_with_chain(plan, report, piece, pose); };
    if (action == Action::throw_away) return {RemovePiece{piece}};
    if (action == Action::take_down) return {TakeDown{with_chains(report, pieces)}};
    if (action == Action::next_span) {
        const std::optional<Pose> pose = on_next_span(scene, report, piece);
        return pose ? rehung(*pose) : std::vector<Edit>{};
    }
    if (const auto move_mm = arrow_mm(scene.challenge, action)) return nudged(scene, report, pieces, *move_mm);

    const Shape& shape = find_piece(scene, piece)->shape;
    const Pose& pose = find_hung(plan, piece)->pose;
    const PieceReport& now = *find_piece(report, piece);
    const int side = hanging_side(shape, pose, now);  // its middle stays
    const Segment line = paper_side(shape, pose, side);
    const Vec2 middle_mm = 0.5 * (line.from + line.to);
    switch (action) {
        case Action::next_side: return rehung(by_other_side(shape, pose, side, side_after(shape, side)));
        case Action::mirror_image: return rehung(mirrored(pose, middle_mm, line.to - line.from));
        case Action::turn_left: return rehung(turned(pose, turn_step_deg, middle_mm));
        case Action::turn_right: return rehung(turned(pose, -turn_step_deg, middle_mm));
        default: return {};
    }
}

std::vector<Edit> work_on_tree(const Scene& scene, const Report& report, const Picked& what, Action action) {
    if (const auto move_mm = arrow_mm(scene.challenge, action)) return pulled(scene, report, what, *move_mm);
    const auto* bend = std::get_if<PickedBend>(&what);
    const auto* whole = std::get_if<PickedBranch>(&what);
    if (!bend && !whole) return {};
    const Branch& branch = current_plan(scene).tree.branches[bend ? bend->branch : whole->branch];
    switch (action) {
        case Action::remove_branch: return {RemoveBranch{branch.name}};
        case Action::add_bend: return {with_bend(branch, bend ? std::optional(bend->point) : std::nullopt)};
        case Action::remove_bend:
            return bend ? std::vector<Edit>{without_bend(branch, bend->point)} : std::vector<Edit>{};
        default: return {};
    }
}

Wishes copied(const Scene& scene, PieceNumber piece) {
    return {{AddPiece{find_piece(scene, piece)->shape}}, say("copy piece {0}", {std::to_string(piece.value)})};
}

Wishes copied_mirrored(const Scene& scene, PieceNumber piece) {
    const Shape& shape = find_piece(scene, piece)->shape;
    return {{AddPiece{mirror_image(shape).value_or(shape)}},
            say("copy piece {0}, mirrored", {std::to_string(piece.value)})};
}

Wishes reshaped(const Scene& scene, const Report& report, PieceNumber piece, const Shape& shape) {
    Wishes wishes{{ReshapePiece{piece, shape}}, ""};
    const Hung* hung = find_hung(current_plan(scene), piece);
    if (!hung) return wishes;
    const Shape& before = find_piece(scene, piece)->shape;
    const int side = hanging_side(before, hung->pose, *find_piece(report, piece));
    const Segment line = paper_side(before, hung->pose, side);
    wishes.edits.push_back(
        Hang{piece, posed_by(shape, side, hung->pose.flipped, 0.5 * (line.from + line.to), line.to - line.from)});
    return wishes;
}

std::vector<Edit> put_right(const Plan& plan, const Remedy& remedy) {
    const Plan fixed = with_remedy(plan, remedy);
    std::vector<Edit> edits = {Hang{remedy.piece, find_hung(fixed, remedy.piece)->pose}};
    for (const PieceNumber rides : remedy.chain) edits.push_back(Hang{rides, find_hung(fixed, rides)->pose});
    return edits;
}

}  // namespace boughwork
