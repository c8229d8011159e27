// SPDX-License-Identifier: MIT
#include "gui/picture/settled_marks.h"

#include <algorithm>

#include "engine/geometry/shape.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"

namespace boughwork {
namespace {

constexpr double dash_px = 7;
constexpr double gap_px = 5;
constexpr double dash_width_px = 1.4;
constexpr double base_height_px = 7;
constexpr double centre_radius_px = 9;
constexpr double plumb_width_px = 1.6;

/// A line in dashes, from point to point.
void dashed(std::vector<Mark>& marks, const std::vector<Vec2>& points, double scale) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Vec2 along = points[i] - points[i - 1];
        const double whole = length(along);
        for (double from = 0; from < whole; from += (dash_px + gap_px) * scale) {
            const double to = std::min(whole, from + dash_px * scale);
            marks.push_back(Stroke{{points[i - 1] + (from / whole) * along, points[i - 1] + (to / whole) * along},
                                   palette::quiet_text,
                                   dash_width_px * scale});
        }
    }
}

}  // namespace

void draw_flat(std::vector<Mark>& marks, const Camera& camera, const Scene& scene, const Plan& flat,
               const Plan& settled, double scale) {
    const auto drawn = [&](std::vector<Vec2> points_mm) {
        for (Vec2& point : points_mm) point = to_px(camera, point);
        dashed(marks, points_mm, scale);
    };
    for (std::size_t b = 0; b < flat.tree.branches.size(); ++b)
        if (flat.tree.branches[b].path_mm != settled.tree.branches[b].path_mm) drawn(flat.tree.branches[b].path_mm);
    for (std::size_t i = 0; i < flat.hung.size(); ++i) {
        if (flat.hung[i].pose == settled.hung[i].pose) continue;
        std::vector<Vec2> corners = corners_mm(find_piece(scene, flat.hung[i].piece)->shape, flat.hung[i].pose);
        corners.push_back(corners.front());
        drawn(std::move(corners));
    }
}

void draw_tipping(std::vector<Mark>& marks, const Camera& camera, const Tipping& tipping, double scale) {
    const Vec2 left = to_px(camera, {tipping.left_edge_mm, 0});
    const Vec2 right = to_px(camera, {tipping.right_edge_mm, 0});
    const double low = left.y + base_height_px * scale;
    marks.push_back(Fill{{left, right, {right.x, low}, {left.x, low}}, palette::wood});

    const bool tips = tipping.to_the_edge_mm < 0;
    const Colour colour = tips ? palette::finding : palette::ink;
    const Vec2 centre = to_px(camera, tipping.centre_of_mass_mm);
    marks.push_back(Stroke{{centre, {centre.x, left.y}}, colour, plumb_width_px * scale});
    const double r = centre_radius_px * scale;
    const Polygon disc = circle(centre, r);
    marks.push_back(Fill{disc, palette::paper});
    // Two quarters filled: the sign for a centre of mass in physics.
    for (const double turn : {0.0, 2.0}) {
        Polygon quarter{centre};
        constexpr int parts = 8;
        for (int i = 0; i <= parts; ++i)
            quarter.push_back(centre + turned_ccw({r, 0}, (turn + static_cast<double>(i) / parts) * pi / 2));
        marks.push_back(Fill{quarter, colour});
    }
    marks.push_back(Stroke{disc, colour, plumb_width_px * scale, true});
}

}  // namespace boughwork
