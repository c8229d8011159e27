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

constexpr double square_px = 32;        // how finely the view is divided to find what is near
constexpr double between_px = 3;        // labels keep as far from everything
constexpr double shortest_line_px = 7;  // the shortest line from a piece to its number
constexpr int rows = 4;                 // how many times farther off a number may stand ...
constexpr double row_height = 0.8;      // ... by so much of its height

bool crosses(const Segment& line, const Polygon& convex) { return !inside_convex(line, convex).empty(); }

Vec2 nearest_in(const Box& box, Vec2 point) {
    return {std::clamp(point.x, box.low.x, box.high.x), std::clamp(point.y, box.low.y, box.high.y)};
}

Box box_around(Vec2 at, Vec2 size) { return {at - 0.5 * size, at + 0.5 * size}; }

Polygon outline_of(const Box& box) { return rectangle(0.5 * (box.low + box.high), box.high - box.low); }

/// Downward first: pieces hang, so that is where the room is.
const std::vector<Vec2>& directions() {
    static const std::vector<Vec2> units = [] {
        std::vector<Vec2> made;
        for (const double deg : {90, 65, 115, 40, 140, 15, 165, -20, 200, -55, 235, -90})
            made.push_back(turned_ccw({1, 0}, deg / degrees_per_radian));
        return made;
    }();
    return units;
}

/// How far the outline reaches in a direction.
double reach(const Polygon& outline, Vec2 from, Vec2 towards) {
    double farthest = 0;
    for (const Vec2 corner : outline) farthest = std::max(farthest, dot(corner - from, towards));
    return farthest;
}

}  // namespace

LabelPlaces::LabelPlaces(const std::vector<Polygon>& pieces, const std::vector<Polygon>& wood, const PixelBox& view)
    : view_(view),
      columns_(std::max(1, static_cast<int>(std::ceil(view.width / square_px)))),
      rows_(std::max(1, static_cast<int>(std::ceil(view.height / square_px)))),
      in_square_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_)) {
    for (const Polygon& piece : pieces) {
        middles_.push_back(centroid(piece));
        add(piece, over_piece, line_over_piece);
    }
    for (const Polygon& part : wood) add(part, over_wood, line_over_wood);
}

void LabelPlaces::add(Polygon outline, double cost_below_label, double cost_below_leader) {
    const Box box = bounds(outline);
    const Squares squares = squares_of(box);
    for (int y = squares.low_y; y <= squares.high_y; ++y)
        for (int x = squares.low_x; x <= squares.high_x; ++x)
            in_square_[static_cast<std::size_t>(y * columns_ + x)].push_back(obstacles_.size());
    obstacles_.push_back({std::move(outline), box, squares, cost_below_label, cost_below_leader});
}

LabelPlaces::Squares LabelPlaces::squares_of(const Box& box) const {
    const auto square = [](double px, int count) {
        return static_cast<int>(std::clamp(std::floor(px / square_px), 0.0, count - 1.0));
    };
    return {square(box.low.x - view_.x, columns_), square(box.low.y - view_.y, rows_),
            square(box.high.x - view_.x, columns_), square(box.high.y - view_.y, rows_)};
}

template <class Each>
void LabelPlaces::for_each_near(const Box& box, Each each) const {
    const Squares around = squares_of(box);
    for (int y = around.low_y; y <= around.high_y; ++y)
        for (int x = around.low_x; x <= around.high_x; ++x)
            for (const std::size_t i : in_square_[static_cast<std::size_t>(y * columns_ + x)]) {
                const Squares& own = obstacles_[i].squares;
                const bool first_in_common =
                    x == std::max(own.low_x, around.low_x) && y == std::max(own.low_y, around.low_y);
                if (first_in_common && !each(i)) return;
            }
}

void LabelPlaces::occupy(Vec2 at, Vec2 size) { add(rectangle(at, size), over_label, over_label); }

double LabelPlaces::crowding(const Box& label, const std::optional<Segment>& leader, std::optional<std::size_t> own,
                             double enough) const {
    const Vec2 between{between_px, between_px};
    const Box wide{label.low - between, label.high + between};
    const Box line = leader ? bounds({leader->from, leader->to}) : wide;
    const bool seen = label.low.x >= view_.x && label.high.x <= view_.x + view_.width && label.low.y >= view_.y &&
                      label.high.y <= view_.y + view_.height;
    double cost = seen ? 0 : outside_view;
    const Polygon outline = outline_of(wide);
    const Box both{{std::min(wide.low.x, line.low.x), std::min(wide.low.y, line.low.y)},
                   {std::max(wide.high.x, line.high.x), std::max(wide.high.y, line.high.y)}};
    for_each_near(both, [&](std::size_t i) {
        const Obstacle& other = obstacles_[i];
        if (own == i) return true;
        if (within_gap(wide, other.box, 0) && overlapping(other.outline, outline)) cost += other.cost_below_label;
        if (leader && within_gap(line, other.box, 0) && crosses(*leader, other.outline))
            cost += other.cost_below_leader;
        return cost < enough;
    });
    return cost;
}

double LabelPlaces::strangeness(Vec2 at, std::size_t own) const {
    const double away = distance(at, middles_[own]);
    bool is_nearer = false;
    for_each_near({at - Vec2{away, away}, at + Vec2{away, away}}, [&](std::size_t i) {
        is_nearer = i < middles_.size() && distance(at, middles_[i]) < away - 1e-6;
        return !is_nearer;
    });
    return is_nearer ? nearer_to_another : 0;
}

LabelPlace LabelPlaces::beside(std::size_t index, Vec2 size, double scale) {
    const Polygon& piece = obstacles_[index].outline;
    const Vec2 middle = middles_[index];
    LabelPlace best;
    double least = std::numeric_limits<double>::infinity();
    for (int row = 0; row < rows; ++row)
        for (std::size_t turn = 0; turn < directions().size(); ++turn) {
            const Vec2 towards = directions()[turn];
            const double half_label = 0.5 * (std::abs(towards.x) * size.x + std::abs(towards.y) * size.y);
            const double away =
                reach(piece, middle, towards) + shortest_line_px * scale + half_label + row * row_height * size.y;
            const Vec2 at = middle + away * towards;
            double cost = away + 1.5 * scale * static_cast<double>(turn);
            if (cost >= least) continue;  // however free the place may be
            const Box label = box_around(at, size);
            const Segment line{middle, nearest_in(label, middle)};
            const Vec2 along = direction(line);
            const Segment leader{middle + inside_convex(line, piece).high * along, line.to - 2 * scale * along};
            cost += strangeness(at, index);
            if (cost >= least) continue;
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
        const double cost = crowding(box_around(place, size), std::nullopt, std::nullopt, least);
        if (cost >= least) continue;
        least = cost;
        best = place;
    }
    occupy(best, size);
    return best;
}

}  // namespace boughwork
