// SPDX-License-Identifier: MIT
#include "tests/bench/made_scene.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "engine/geometry/interval.h"
#include "engine/geometry/shape.h"

namespace boughwork {
namespace {

// Sizes as at a fair, in millimetres; the rows are far enough apart for a piece with its child.
constexpr double trunk_half_width_mm = 30;
constexpr double branch_thickness_mm = 8;
constexpr double row_height_mm = 240;
constexpr double from_trunk_to_first_piece_mm = 20;
constexpr double from_last_piece_to_end_mm = 10;
constexpr double steepest_branch_rad = 1.0 / degrees_per_radian;
constexpr double most_rise_mm = 60;  // of a branch's far end, so that long branches do not cross

/// Random numbers that do not depend on the machine's library, as std::uniform_real_distribution may.
class Dice {
public:
    explicit Dice(std::uint32_t seed) : engine_(seed) {}
    double between(double low, double high) { return low + (high - low) * (static_cast<double>(engine_()) * 0x1p-32); }
    bool once_in(std::uint32_t times) { return engine_() % times == 0; }
    std::size_t below(std::size_t count) { return engine_() % count; }

private:
    std::mt19937 engine_;
};

/// A triangle hanging by its first side: corner 1 at (0, 0), corner 2 at (top, 0), corner 3 at (foot, -height).
struct HangingTriangle {
    double top_mm = 0;
    double foot_mm = 0;
    double height_mm = 0;
};

/// Stands for what no corner of the next piece may lie left of.
constexpr HangingTriangle wall{.top_mm = 0, .foot_mm = 0, .height_mm = 1e6};

/// Sides of whole millimetres, as people cut them.
Triangle cut(const HangingTriangle& wanted) {
    const auto whole_mm = [](double mm) { return length_from_mm(std::round(mm)); };
    return {.sides = {whole_mm(wanted.top_mm), whole_mm(std::hypot(wanted.top_mm - wanted.foot_mm, wanted.height_mm)),
                      whole_mm(std::hypot(wanted.foot_mm, wanted.height_mm))}};
}

/// What the cut sides really make.
HangingTriangle hanging(const Triangle& triangle) {
    const double a = to_mm(triangle.sides[0]);
    const double b = to_mm(triangle.sides[1]);
    const double c = to_mm(triangle.sides[2]);
    const double foot = (a * a + c * c - b * b) / (2 * a);
    return {.top_mm = a, .foot_mm = foot, .height_mm = std::sqrt(c * c - foot * foot)};
}

Triangle some_triangle(Dice& dice) {
    const double top = dice.between(45, 120);
    if (dice.once_in(4)) return cut({.top_mm = top, .foot_mm = top / 2, .height_mm = dice.between(35, 100)});
    if (dice.once_in(4)) return cut({.top_mm = top, .foot_mm = 0, .height_mm = dice.between(35, 100)});
    return cut({.top_mm = top, .foot_mm = top * dice.between(-0.2, 1.2), .height_mm = dice.between(35, 100)});
}

/// A flat triangle whose first side is as long as a side of `parent_side_mm`, or a little shorter.
Triangle some_child(double parent_side_mm, Dice& dice) {
    const double top = std::floor(parent_side_mm * dice.between(0.8, 1.0));
    return cut({.top_mm = top, .foot_mm = top * dice.between(0.4, 0.6), .height_mm = top * dice.between(0.25, 0.4)});
}

/// How far right of `left`'s corner 1 a neighbour's may be at the least, when both hang from one straight edge.
double least_step_mm(const HangingTriangle& left, const HangingTriangle& right) {
    const double depth = std::min(left.height_mm, right.height_mm);
    const double gap = (left.foot_mm - left.top_mm) * depth / left.height_mm - right.foot_mm * depth / right.height_mm;
    return left.top_mm + std::max(0.0, gap);
}

/// A triangle in its row: x along the branch's under-edge, y up from it.
struct Placed {
    Triangle triangle;
    Pose pose;
};

struct Row {
    std::vector<Placed> pieces;
    double width_mm = 0;
};

Row tidy_row(int pieces, Dice& dice) {
    Row row;
    HangingTriangle previous = wall;
    double previous_at_mm = 0;
    const auto left_to_hang = [&] { return pieces - static_cast<int>(row.pieces.size()); };
    while (left_to_hang() > 0) {
        const Triangle triangle = some_triangle(dice);
        const HangingTriangle shape = hanging(triangle);
        const double at_mm = previous_at_mm + least_step_mm(previous, shape) +
                             (dice.once_in(12) ? dice.between(-2, 1) : dice.between(3, 10));
        row.pieces.push_back({triangle, {.at_mm = {at_mm, 0}}});
        row.width_mm = std::max(row.width_mm, at_mm + std::max(shape.top_mm, shape.foot_mm));
        previous = shape;
        previous_at_mm = at_mm;

        const bool second_side_looks_down = shape.foot_mm < 0.9 * shape.top_mm;
        if (left_to_hang() == 0 || !second_side_looks_down || !dice.once_in(3)) continue;
        const Vec2 foot{at_mm + shape.foot_mm, -shape.height_mm};
        const Vec2 along = unit(Vec2{at_mm + shape.top_mm, 0} - foot);
        const Triangle child = some_child(to_mm(triangle.sides[1]), dice);
        const HangingTriangle child_shape = hanging(child);
        row.pieces.push_back(
            {child, {.at_mm = foot, .turn_ccw_deg = std::atan2(along.y, along.x) * degrees_per_radian}});
        const Vec2 tip = foot + child_shape.foot_mm * along - child_shape.height_mm * quarter_turned_ccw(along);
        previous = wall;
        previous_at_mm = std::max(tip.x, at_mm + shape.top_mm);
        row.width_mm = std::max(row.width_mm, previous_at_mm);
    }
    return row;
}

Polygon outline(const Placed& placed) { return posed(placed.triangle, placed.pose).outline; }

/// Where the outline begins and ends at the height `y`, which it reaches.
Interval across(const Polygon& convex, double y) {
    Interval all{.low = std::numeric_limits<double>::infinity(), .high = -std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Segment s = side(convex, i);
        if (y < std::min(s.from.y, s.to.y) || y > std::max(s.from.y, s.to.y)) continue;
        const double rise = s.to.y - s.from.y;
        const double x = rise == 0 ? s.from.x : s.from.x + (y - s.from.y) / rise * (s.to.x - s.from.x);
        all = {std::min(all.low, x), std::max(all.high, x)};
    }
    return all;
}

/// How far `right` must go to the right to touch `left` and not overlap it; very far to the left when they
/// are at different heights.
double step_to_touch_mm(const Polygon& left, const Polygon& right) {
    const Box a = bounds(left);
    const Box b = bounds(right);
    double step = -std::numeric_limits<double>::infinity();
    // Between two heights of corners the room left between them changes evenly.
    for (const Polygon* outline : {&left, &right})
        for (const Vec2 corner : *outline) {
            if (corner.y < std::max(a.low.y, b.low.y) || corner.y > std::min(a.high.y, b.high.y)) continue;
            step = std::max(step, across(left, corner.y).high - across(right, corner.y).low);
        }
    return step;
}

/// A piece with its corner 1 at (0, 0), and nearly always a child on its second side. It leans to the left,
/// so that its box and those of its neighbours share much.
std::vector<Placed> some_family(Dice& dice) {
    const double top = dice.between(40, 80);
    const Triangle triangle =
        cut({.top_mm = top, .foot_mm = top * dice.between(-1.0, 0.2), .height_mm = dice.between(50, 110)});
    const HangingTriangle shape = hanging(triangle);
    std::vector<Placed> family{{triangle, {}}};
    if (dice.once_in(8)) return family;
    const Vec2 foot{shape.foot_mm, -shape.height_mm};
    const Vec2 along = Vec2{shape.top_mm, 0} - foot;
    family.push_back({some_child(to_mm(triangle.sides[1]), dice),
                      {.at_mm = foot, .turn_ccw_deg = std::atan2(along.y, along.x) * degrees_per_radian}});
    return family;
}

/// How far from touching a family comes to the one before. Children touch their parents: to balance the
/// answers, most families overlap.
double some_slip_mm(Dice& dice) {
    switch (dice.below(5)) {
        case 0: return dice.between(2, 8);
        case 1: return dice.between(-0.8, 0.8);
        default: return dice.between(-16, -3);
    }
}

/// Families pushed together, so that each piece has others close by on all sides.
Row crowded_row(int pieces, Dice& dice) {
    Row row;
    std::vector<Polygon> previous;
    while (static_cast<int>(row.pieces.size()) < pieces) {
        const std::vector<Placed> family = some_family(dice);
        double at_mm = row.pieces.empty() ? 0 : -std::numeric_limits<double>::infinity();
        for (const Polygon& left : previous)
            for (const Placed& right : family) at_mm = std::max(at_mm, step_to_touch_mm(left, outline(right)));
        if (!row.pieces.empty()) at_mm += some_slip_mm(dice);
        previous.clear();
        for (Placed placed : family) {
            if (static_cast<int>(row.pieces.size()) == pieces) break;
            placed.pose.at_mm.x += at_mm;
            row.pieces.push_back(placed);
            previous.push_back(outline(placed));
            row.width_mm = std::max(row.width_mm, bounds(previous.back()).high.x);
        }
    }
    return row;
}

Challenge some_challenge() {
    Challenge challenge{.name = "Grand fair", .depth_limit = std::nullopt};
    challenge.limits.pieces_per_branch = {.least = 1, .most = std::nullopt};
    challenge.limits.side = {.least = length_from_mm(20), .most = std::nullopt};
    challenge.limits.least_height = length_from_mm(5);
    challenge.criteria = {{.asks = NoTwoAlike{.pieces = 4}},
                          {.asks = KindAppears{.kind = Kind::right, .at_least = 1}},
                          {.asks = KindShare{.kind = Kind::isosceles, .percent = 25}}};
    challenge.score.bonuses = {{.for_what = PerPiece{.kind = Kind::right}, .points = 5},
                               {.for_what = PerDepth{.depth = 2}, .points = 3},
                               {.for_what = IfMet{.criterion = 0}, .points = 10}};
    return challenge;
}

}  // namespace

Scene made_scene(int pieces, std::uint32_t seed, Spacing spacing) {
    Dice dice(seed);
    Scene scene = new_scene();
    scene.challenge = some_challenge();
    Plan& plan = scene.plans.front();

    // About as many branches as pieces on each, so that the tree stays as wide as it is tall.
    const int branches = static_cast<int>(std::ceil(std::sqrt(pieces)));
    const int levels = (branches + 1) / 2;
    plan.tree.trunk = {.height_mm = row_height_mm * (levels + 1),
                       .base_width_mm = 2 * trunk_half_width_mm,
                       .top_width_mm = 2 * trunk_half_width_mm};

    int number = 0;
    for (int b = 0; b < branches; ++b) {
        const int in_row = pieces / branches + (b < pieces % branches ? 1 : 0);
        const Row row = spacing == Spacing::tidy ? tidy_row(in_row, dice) : crowded_row(in_row, dice);
        const bool on_the_right = b % 2 == 0;
        const double steepest_rad = std::min(steepest_branch_rad, most_rise_mm / row.width_mm);
        const double angle_rad = dice.between(-steepest_rad, steepest_rad);
        const Vec2 along = turned_ccw({1, 0}, angle_rad);
        const Vec2 below = -quarter_turned_ccw(along);
        const Vec2 foot{on_the_right ? trunk_half_width_mm : -trunk_half_width_mm, row_height_mm * (b / 2 + 1)};
        const double reach_mm = from_trunk_to_first_piece_mm + row.width_mm + from_last_piece_to_end_mm;
        plan.tree.branches.push_back({.name = "b" + std::to_string(b + 1),
                                      .path_mm = {foot, foot + (on_the_right ? reach_mm : -reach_mm) * along},
                                      .thickness_mm = branch_thickness_mm});

        const double row_starts_mm =
            on_the_right ? from_trunk_to_first_piece_mm : -from_trunk_to_first_piece_mm - row.width_mm;
        const Vec2 origin = foot + row_starts_mm * along + (branch_thickness_mm / 2) * below;
        for (const Placed& placed : row.pieces) {
            const PieceNumber name{++number};
            scene.pieces.push_back({.number = name, .shape = placed.triangle});
            plan.hung.push_back({.piece = name,
                                 .pose = {.at_mm = origin + turned_ccw(placed.pose.at_mm, angle_rad),
                                          .turn_ccw_deg = placed.pose.turn_ccw_deg + angle_rad * degrees_per_radian}});
        }
    }
    // People hang them in any order.
    for (std::size_t i = plan.hung.size(); i > 1; --i) std::swap(plan.hung[i - 1], plan.hung[dice.below(i)]);
    return scene;
}

}  // namespace boughwork
