// SPDX-License-Identifier: MIT
#include "engine/edit_checks.h"

#include <cassert>
#include <cmath>
#include <utility>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/limits.h"
#include "engine/utf8.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

Problem too_large() {
    return cannot(say("That is more than a kilometre."), say("Make it smaller, or bring it nearer."));
}
/// A name that is no text cannot be shown, and nothing bears it.
std::string shown(const std::string& name) { return is_utf8(name) ? name : say("of that name"); }

bool all_within_limits(const Shape& shape) {
    if (const auto* triangle = std::get_if<Triangle>(&shape))
        return std::all_of(triangle->sides.begin(), triangle->sides.end(), [](Length l) { return within_limits(l); });
    if (const auto* cone = std::get_if<Cone>(&shape)) return within_limits(cone->radius) && within_limits(cone->slant);
    const std::vector<ExactPoint>& corners = std::get<Outline>(shape).corners;
    return std::all_of(corners.begin(), corners.end(),
                       [](const ExactPoint& c) { return within_limits(c.x) && within_limits(c.y); });
}

}  // namespace

Problem cannot(std::string found, std::string to_do) {
    return {.found = std::move(found), .kept = say("The plan stays as it was."), .to_do = std::move(to_do)};
}

Problem no_piece(PieceNumber number) {
    return cannot(say("There is no piece {0}.", {std::to_string(number.value)}), say("Choose another piece."));
}
Problem no_branch(const std::string& name) {
    return cannot(say("There is no branch {0}.", {shown(name)}), say("Choose another branch."));
}
Problem no_plan(const std::string& name) {
    return cannot(say("There is no plan {0}.", {shown(name)}), say("Choose another plan."));
}

Result<Done> check_text(const std::string& text) {
    if (!is_utf8(text)) return cannot(say("That is no text in UTF-8."), say("Write it anew."));
    return Done{};
}

Result<Done> check_name(const std::string& name) {
    const auto is_control = [](char c) { return (c >= 0 && c < ' ') || c == '\x7F'; };
    if (name.find_first_not_of(' ') == std::string::npos)
        return cannot(say("There is no name yet."), say("Write one."));
    if (std::any_of(name.begin(), name.end(), is_control))
        return cannot(say("A name is one line of letters and signs."), say("Write another name."));
    return check_text(name);
}

Result<Done> check_room(std::size_t listed, std::size_t most) {
    if (listed >= most) return cannot(say("There are too many of them."), say("Take one out first."));
    return Done{};
}

Result<Done> check_new_plan_name(const Scene& scene, const std::string& name) {
    if (find_plan(scene, name)) return cannot(say("There is a plan {0} already.", {name}), say("Choose another name."));
    return check_name(name);
}

Result<Done> check(const Shape& shape) {
    if (!all_within_limits(shape)) return too_large();
    if (const Result<Done> can = possible(shape); !can) return cannot(can.problem().found, can.problem().to_do);
    return Done{};
}

Result<Done> check(const Pose& pose) {
    if (!within_limits(pose.at_mm)) return too_large();
    if (!(std::abs(pose.turn_ccw_deg) <= greatest_turn_deg))
        return cannot(say("That is too many turns."), say("Turn it less."));
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
        if (!(size > 0)) return cannot(say("The trunk would be nothing."), say("Give it a height and two widths."));
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

Piece* piece_in(Scene& scene, PieceNumber number) {
    return find_in(scene.pieces, [&](const Piece& p) { return p.number == number; });
}

Plan& current_plan_in(Scene& scene) {
    Plan* plan = find_in(scene.plans, [&](const Plan& p) { return p.name == scene.current; });
    assert(plan && "a scene names one of its plans as current");
    return *plan;
}

}  // namespace boughwork
