// SPDX-License-Identifier: MIT
#include "gui/picture/tree_marks.h"

#include "gui/picture/outline.h"
#include "gui/picture/palette.h"

namespace boughwork {

Polygon outline_px(const Camera& camera, const Polygon& outline_mm) {
    Polygon outline;
    for (auto corner = outline_mm.rbegin(); corner != outline_mm.rend(); ++corner)
        outline.push_back(to_px(camera, *corner));  // y turns over, and with it the way round
    return outline;
}

std::vector<Polygon> wood_px(const Camera& camera, const TreeShape& tree) {
    std::vector<Polygon> wood{outline_px(camera, tree.trunk)};
    for (const BranchShape& branch : tree.branches)
        for (const Polygon& run : branch.runs) wood.push_back(outline_px(camera, run));
    return wood;
}

void draw_tree(std::vector<Mark>& marks, const Camera& camera, const TreeShape& tree, double scale) {
    const Polygon trunk = outline_px(camera, tree.trunk);
    marks.push_back(Fill{trunk, palette::trunk});
    marks.push_back(Stroke{trunk, palette::wood, 2 * scale, true});
    for (const BranchShape& branch : tree.branches) {
        for (const Polygon& run : branch.runs) {
            const Polygon outline = outline_px(camera, run);
            marks.push_back(Fill{outline, palette::wood});
            marks.push_back(Stroke{outline, palette::wood, 1, true});  // covers the seam at a mitre
        }
    }
}

void draw_chosen(std::vector<Mark>& marks, const Camera& camera, const Polygon& outline_mm, double scale) {
    marks.push_back(Stroke{outline_px(camera, outline_mm), palette::ink, palette::chosen_outline_px * scale, true});
}

void draw_handle(std::vector<Mark>& marks, Vec2 at_px, double scale) {
    const Polygon knob = circle(at_px, palette::handle_px * scale);
    marks.push_back(Fill{knob, palette::paper});
    marks.push_back(Stroke{knob, palette::ink, palette::keys_ring_px * scale, true});
}

}  // namespace boughwork
