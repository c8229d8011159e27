// SPDX-License-Identifier: MIT
#include "gui/picture/rule_picture.h"

#include <algorithm>

#include "engine/geometry/shape.h"
#include "gui/picture/plan_picture.h"
#include "gui/picture/rule_scenes.h"

namespace boughwork {
namespace {

/// Around what hangs there: of the tree as much as it takes to see what it hangs from.
Box what_matters_mm(const Scene& scene, const Plan& plan) {
    std::vector<Vec2> corners;
    for (const Hung& hung : plan.hung)
        for (const Vec2 corner : corners_mm(find_piece(scene, hung.piece)->shape, hung.pose)) corners.push_back(corner);
    Box box = bounds(corners);
    const double around_mm = 0.35 * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    box.low = box.low - Vec2{around_mm, around_mm};
    box.high = box.high + Vec2{around_mm, around_mm};
    return box;
}

}  // namespace

std::vector<Mark> rule_picture(Rule rule, bool kept, const PixelBox& box, double scale) {
    const RuleScene& shown = rule_scene(rule, kept);
    const Plan& plan = current_plan(shown.scene);
    const Camera camera = showing(what_matters_mm(shown.scene, plan), box, 0);
    return plan_picture(shown.scene, plan, shown.report, camera, {.scale = scale, .bare = true}).marks;
}

}  // namespace boughwork
