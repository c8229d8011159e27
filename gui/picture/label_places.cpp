// SPDX-License-Identifier: MIT
#include "gui/picture/label_places.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/geometry/interval.h"
#include "gui/picture/outline.h"

namespace boughwork {
namespace {

// What it costs to stand in the way, against a pixel of distance. Two numbers on one another cannot
// be read at all; a number outside the view is not seen; one on another piece is taken for its own.
constexpr double over_label = 3000;
constexpr double outside_view = 2000;
constexpr double nearer_to_another = 60;
constexpr double over_piece = 400;
constexpr double line_over_piece = 150;
constexpr double over_wood = 60;
constexpr double line_over_wood = 20;

constexpr double between_px = 3;    // labels keep as far from everything
constexpr double line_px = 7;       // the shortest line from a piece to its number
constexpr int rows = 4;             // how many times farther off a number may stand ...
constexpr double row_height = 0.8;  // ... by so much of its height

bool crosses(const Segment& line, const Polygon& convex) { return !inside_convex(line, convex).empty(); }

Vec2 nearest_in(const Polygon& box, Vec2 point) {
    const Box extent = bounds(box);
    return {std::clamp(point.x, extent.low.x, extent.high.x), std::clamp(point.y, extent.low.y, extent.high.y)};
}

/// How far the outline reaches in a direction.
double reach(const Polygon& outline, Vec2 from, Vec2 towards) {
    double farthest = 0;
    for (const Vec2 corner : outline) farthest = std::max(farthest, dot(corner - from, towards));
    return farthest;
}

}  // namespace

LabelPlaces::LabelPlaces(const std::vector<Polygon>& pieces, const std::vector<Polygon>& wood, const PixelBox& view)
    : view_(view) {
    for (const Polygon& piece : pieces) {
        middles_.push_back(centroid(piece));
        add(piece, over_piece, line_over_piece);
    }
    for (const Polygon& part : wood) add(part, over_wood, line_over_wood);
}

void LabelPlaces::add(Polygon outline, double cost_below_label, double cost_below_leader) {
    const Box box = bounds(outline);
    obstacles_.push_back({std::move(outline), box, cost_below_label, cost_below_leader});
}

void LabelPlaces::occupy(Vec2 at, Vec2 size) { add(rectangle(at, size), over_label, over_label); }

double LabelPlaces::crowding(const Polygon& label, const std::optional<Segment>& leader, std::optional<std::size_t> own,
                             double enough) const {
    const Polygon wide = grown(label, between_px);
    const Box box = bounds(wide);
    const Box line = leader ? bounds({leader->from, leader->to}) : box;
    const Box seen{{view_.x, view_.y}, {view_.x + view_.width, view_.y + view_.height}};
    double cost = 0;
    for (const Vec2 corner : label)
        if (!within_gap({corner, corner}, seen, 0)) cost = outside_view;
    for (std::size_t i = 0; i < obstacles_.size() && cost < enough; ++i) {
        const Obstacle& other = obstacles_[i];
        if (own == i) continue;
        if (within_gap(box, other.box, 0) && overlapping(other.outline, wide)) cost += other.cost_below_label;
        if (leader && within_gap(line, other.box, 0) && crosses(*leader, other.outline))
            cost += other.cost_below_leader;
    }
    return cost;
}

double LabelPlaces::strangeness(Vec2 at, std::size_t own) const {
    const double away = distance(at, middles_[own]);
    const auto nearer = [&](Vec2 middle) { return distance(at, middle) < away - 1e-6; };
    return std::any_of(middles_.begin(), middles_.end(), nearer) ? nearer_to_another : 0;
}

LabelPlace LabelPlaces::beside(std::size_t index, Vec2 size, double scale) {
    const Polygon& piece = obstacles_[index].outline;
    const Vec2 middle = middles_[index];
    // Downward first: pieces hang, so that is where the room is.
    static constexpr double directions_deg[] = {90, 65, 115, 40, 140, 15, 165, -20, 200, -55, 235, -90};
    LabelPlace best;
    double least = std::numeric_limits<double>::infinity();
    for (int row = 0; row < rows; ++row)
        for (std::size_t turn = 0; turn < std::size(directions_deg); ++turn) {
            const Vec2 towards = turned_ccw({1, 0}, directions_deg[turn] / degrees_per_radian);
            const double half_label = 0.5 * (std::abs(towards.x) * size.x + std::abs(towards.y) * size.y);
            const double away =
                reach(piece, middle, towards) + line_px * scale + half_label + row * row_height * size.y;
            const Vec2 at = middle + away * towards;
            double cost = away + 1.5 * scale * static_cast<double>(turn);
            if (cost >= least) continue;  // however free the place may be
            const Polygon label = rectangle(at, size);
            const Segment line{middle, nearest_in(label, middle)};
            const Vec2 along = direction(line);
            const Segment leader{middle + inside_convex(line, piece).high * along, line.to - 2 * scale * along};
            cost += strangeness(at, index);
            cost += crowding(label, leader, index, least - cost);
            if (cost >= least) continue;
            least = cost;
            best = {at, leader};
        }
    occupy(best.at, size);
    return best;
}

Vec2 LabelPlaces::least_crowded(const std::vector<Vec2>& places, Vec2 size) {
    Vec2 best = places.front();
    double least = std::numeric_limits<double>::infinity();
    for (const Vec2 place : places) {
        const double cost = crowding(rectangle(place, size), std::nullopt, std::nullopt, least);
        if (cost >= least) continue;
        least = cost;
        best = place;
    }
    occupy(best, size);
    return best;
}

}  // namespace boughwork
