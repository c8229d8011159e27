// SPDX-License-Identifier: MIT
#include "tests/book/drawn_plan.h"

#include <algorithm>
#include <cmath>

#include "tests/book/book.h"
#include "tests/book/drawn_challenge.h"
#include "tests/book/paper.h"
#include "tests/book/tree.h"

namespace boughwork::book {

namespace {

Vec2 plain(Point p) { return {static_cast<double>(p.x), static_cast<double>(p.y)}; }

Vec2 polar(double length_mm, double angle_deg) {
    return {length_mm * std::cos(angle_deg / degrees_per_radian), length_mm * std::sin(angle_deg / degrees_per_radian)};
}

/// Something a piece may be hung from, right or wrong.
struct Rail {
    Segment line;
    Point normal;
};

/// Draws one scene, piece by piece.
class Drawing {
public:
    explicit Drawing(std::uint64_t seed) : dice_(seed) {
        scene_.challenge = drawn_challenge(dice_);
        scene_.plans.push_back({.name = scene_.current});
        draw_tree();
        in_chains_ = dice_.one_in(4);
        for (int n = dice_.from_to(1, 10); n > 0; --n) draw_piece();
        touch_limits();
        // The order of the file is not the order of drawing.
        for (std::size_t i = 0; i + 1 < scene_.pieces.size(); ++i)
            std::swap(
                scene_.pieces[i],
                scene_.pieces[i + static_cast<std::size_t>(dice_.below(static_cast<int>(scene_.pieces.size() - i)))]);
    }

    Scene take() { return std::move(scene_); }

private:
    Plan& plan() { return scene_.plans.front(); }
    double t() const { return scene_.challenge.tolerance_mm; }

    void draw_tree() {
        Trunk& trunk = plan().tree.trunk;
        trunk.x_mm = dice_.pick({0.0, dice_.between(-20, 20)});
        trunk.height_mm = dice_.between(150, 400);
        trunk.base_width_mm = dice_.between(30, 70);
        trunk.top_width_mm = dice_.pick({trunk.base_width_mm, dice_.between(15, 60)});
        for (int n = dice_.pick({1, 1, 2, 2, 3, 4}); n > 0; --n) {
            Tree& tree = plan().tree;
            const std::string name = "b" + std::to_string(tree.branches.size() + 1);
            do {
                if (!tree.branches.empty() && tree.branches.back().name == name) tree.branches.pop_back();
                tree.branches.push_back(drawn_branch(dice_, tree, t()));
                tree.branches.back().name = name;
            } while (possible(scene_) != true);
        }
    }

    std::vector<Rail> span_rails() {
        Scales scales(t());
        std::vector<Rail> rails;
        for (const BranchInPlan& branch : tree_in_plan(plan().tree, scales).branches)
            for (const Span& span : branch.spans) rails.push_back({off_the_threshold(span.edge, branch), span.normal});
        return rails;
    }

    /// Where a span is cut off, it is just t deep in something: a piece hung from there would be set aside.
    Segment off_the_threshold(Segment edge, const BranchInPlan& branch) {
        const Real a_bit = std::min<Real>(1e-5L, length(edge) / 3);
        const auto is_cut = [&](Point end) {
            for (const Run& run : branch.runs)
                for (const Point corner : run.shape())
                    if (length(corner - end) < hair_mm) return false;
            return true;
        };
        const Segment whole = edge;
        if (is_cut(whole.from)) edge.from = whole.from + a_bit * direction(whole);
        if (is_cut(whole.to)) edge.to = whole.to - a_bit * direction(whole);
        return edge;
    }

    std::vector<Rail> side_rails(const Hung& hung) {
        const Corners corners = in_plan(find_piece(scene_, hung.piece)->shape, hung.pose);
        Scales scales(t());
        std::vector<Rail> rails;
        for (std::size_t i = 0; i < corners.size(); ++i)
            if (const Point normal = outward_normal(corners, i); down_or_sideways(normal, scales) || dice_.one_in(12))
                rails.push_back({sides_of(corners)[i], normal});
        return rails;
    }

    PieceNumber free_number() {
        PieceNumber number;
        do number.value = dice_.from_to(1, 30);
        while (find_piece(scene_, number));
        return number;
    }

    void draw_piece() {
        if (in_chains_ && !plan().hung.empty() && dice_.percent(70)) return draw_link();
        if (!plan().hung.empty() && dice_.one_in(15)) return draw_double();
        const Shape shape =
            scene_.pieces.empty() || !dice_.one_in(6)
                ? drawn_shape(dice_, dice_.pick({dice_.between(12, 40), dice_.between(25, 90)}), scene_.challenge.step)
                : dice_.pick(scene_.pieces).shape;
        if (dice_.one_in(20))  // Stays in the envelope.
            scene_.pieces.push_back({.number = free_number(), .shape = shape});
        else
            hang(shape, drawn_pose(shape));
    }

    void hang(const Shape& shape, const Pose& pose) {
        const PieceNumber number = free_number();
        scene_.pieces.push_back({.number = number, .shape = shape});
        plan().hung.push_back({.piece = number, .pose = pose});
    }

    /// A piece that fits on a side of another, mostly of the last one.
    void draw_link() {
        const std::vector<Rail> rails = side_rails(dice_.percent(70) ? plan().hung.back() : dice_.pick(plan().hung));
        if (rails.empty()) return;
        const Rail rail = dice_.pick(rails);
        const auto rail_mm = static_cast<double>(length(rail.line));
        const Shape shape = drawn_shape(dice_, std::max(4.0, rail_mm * dice_.between(0.6, 1)), scene_.challenge.step);
        const double spare = rail_mm - side_mm(shape, 1);
        const double from = spare > 0 ? dice_.between(0, spare) : spare / 2;
        hang(shape, laid(shape, 1, dice_.one_in(2), rail, from, dice_.between(0, 1) * t(), 0));
    }

    /// A piece all but on top of another of the same shape, so that both are parents of what hangs there.
    void draw_double() {
        const Hung other = dice_.pick(plan().hung);
        Pose pose = other.pose;
        pose.at_mm = pose.at_mm + polar(dice_.between(0, 1) * t(), dice_.between(0, 360));
        hang(find_piece(scene_, other.piece)->shape, pose);
    }

    static double side_mm(const Shape& shape, int side) {
        return std::sqrt(static_cast<double>(squared_side(shape, side))) / 2000;
    }

    Pose drawn_pose(const Shape& shape) {
        const bool first = plan().hung.empty();
        const int choice = dice_.below(100);
        if (choice < 30 || first) return on_a_rail(shape, span_rails());
        if (choice < 50) return beside_another(shape);
        if (choice < 80) return on_a_rail(shape, side_rails(dice_.pick(plan().hung)));
        if (choice < 92) return corner_near_something(shape);
        return anywhere();
    }

    /// How far off the line, or from the neighbour: often about the tolerance.
    double slight() {
        return dice_.pick({0.0, 0.0, 0.0, t(), -t(), t() + 0.01, -t() - 0.01, dice_.between(-1, 1) * t(),
                           dice_.between(-3, 3) * t()});
    }

    Pose anywhere() {
        return {.at_mm = {dice_.between(-150, 150), dice_.between(-10, 400)},
                .turn_ccw_deg = dice_.pick({0.0, dice_.between(-180, 180)}),
                .flipped = dice_.one_in(2)};
    }

    /// Turned so that a side faces the rail, and moved so that it begins there.
    Pose laid(const Shape& shape, int side, bool flipped, const Rail& rail, double from, double gap, double tilt_deg) {
        Pose pose{.flipped = flipped};
        const auto index = static_cast<std::size_t>(side - 1);
        const Point normal = outward_normal(in_plan(shape, pose), index);
        const Point wanted = -rail.normal;
        pose.turn_ccw_deg = static_cast<double>(std::atan2(cross(normal, wanted), dot(normal, wanted)) * half_turn_deg /
                                                half_turn_rad) +
                            tilt_deg;
        const Segment there = sides_of(in_plan(shape, pose))[index];
        const Point along = direction(rail.line);
        const Point begin = dot(there.from, along) < dot(there.to, along) ? there.from : there.to;
        pose.at_mm =
            plain(rail.line.from + static_cast<Real>(from) * along + static_cast<Real>(gap) * rail.normal - begin);
        return pose;
    }

    int drawn_side(const Shape& shape) {
        if (is_cone(shape) && dice_.percent(80)) return 1;
        return dice_.from_to(1, static_cast<int>(corners_of(shape)));
    }

    double drawn_tilt(double side_mm) {
        const double by_a_tolerance = t() / side_mm * degrees_per_radian;
        return dice_.pick({0.0, 0.0, 0.0, 0.0, 0.0, dice_.between(-1, 1) * by_a_tolerance,
                           dice_.between(-2, 2) * by_a_tolerance, dice_.between(-7, 7)});
    }

    Pose on_a_rail(const Shape& shape, const std::vector<Rail>& rails) {
        if (rails.empty()) return anywhere();
        const Rail rail = dice_.pick(rails);
        const auto rail_mm = static_cast<double>(length(rail.line));
        int side = drawn_side(shape);
        for (int tries = 0; tries < 4 && side_mm(shape, side) > rail_mm; ++tries) side = drawn_side(shape);
        const double own_mm = side_mm(shape, side);
        const double spare = rail_mm - own_mm;
        const double from = dice_.percent(60)
                                ? dice_.between(std::min(0.0, spare), std::max(0.0, spare))
                                : dice_.pick({0.0, spare, -t(), spare + t(), -t() - 0.01, spare + t() + 0.01,
                                              -own_mm / 2, spare + own_mm / 2, slight(), spare + slight()});
        return laid(shape, side, dice_.one_in(2), rail, from, slight(), drawn_tilt(own_mm));
    }

    /// On the same span, next to a piece that was hung before, or over it.
    Pose beside_another(const Shape& shape) {
        const Hung neighbour = dice_.pick(plan().hung);
        const Corners theirs = in_plan(find_piece(scene_, neighbour.piece)->shape, neighbour.pose);
        std::vector<Rail> near;
        for (const Rail& rail : span_rails())
            for (const Point corner : theirs)
                if (distance(corner, rail.line) < 3 * t()) {
                    near.push_back(rail);
                    break;
                }
        if (near.empty()) return on_a_rail(shape, span_rails());
        const Rail rail = dice_.pick(near);
        Real begin = INFINITY;
        Real end = -INFINITY;
        for (const Point corner : theirs) {
            if (std::abs(dot(corner - rail.line.from, rail.normal)) > 3 * t() && dice_.percent(70)) continue;
            const Real along = dot(corner - rail.line.from, direction(rail.line));
            begin = std::min(begin, along);
            end = std::max(end, along);
        }
        if (begin > end) return anywhere();
        const int side = drawn_side(shape);
        const double gap = dice_.pick({0.0, t() / 2, t(), t() + 0.01, 1.5 * t(), 2 * t(), -t() / 2, -t(), -t() - 0.01,
                                       -3 * t(), -10.0, dice_.between(-20, 10)});
        const double from =
            dice_.one_in(2) ? static_cast<double>(end) + gap : static_cast<double>(begin) - gap - side_mm(shape, side);
        return laid(shape, side, dice_.one_in(2), rail, from, dice_.one_in(3) ? slight() : 0.0, 0);
    }

    /// A corner next to a corner or a side of a piece, of the trunk, of the ground or of a branch.
    Pose corner_near_something(const Shape& shape) {
        Corners other;
        Scales scales(t());
        const TreeInPlan tree = tree_in_plan(plan().tree, scales);
        switch (dice_.below(6)) {
            case 0: other = tree.trunk; break;
            case 1: other = dice_.pick(dice_.pick(tree.branches).runs).shape(); break;
            case 2: other = {{-100, 0}, {100, 0}, {100, -10}, {-100, -10}}; break;
            default: {
                const Hung hung = dice_.pick(plan().hung);
                other = in_plan(find_piece(scene_, hung.piece)->shape, hung.pose);
            }
        }
        const Segment side = dice_.pick(sides_of(other));
        const double place = dice_.pick({0.0, 1.0, dice_.between(0, 1)});
        Pose pose{.turn_ccw_deg = dice_.pick({0.0, dice_.between(-180, 180)}), .flipped = dice_.one_in(2)};
        const Point corner = dice_.pick(in_plan(shape, pose));
        pose.at_mm = plain(at(side, place) - corner) + polar(std::abs(slight()), dice_.between(0, 360));
        return pose;
    }

    /// Now and then a limit is exactly what a piece has.
    void touch_limits() {
        Range<Length>& side = scene_.challenge.limits.side;
        const auto* triangle = std::get_if<Triangle>(&dice_.pick(scene_.pieces).shape);
        if (!triangle) return;
        const Range<Length> before = side;
        if (side.least && dice_.one_in(3)) side.least = triangle->sides[0];
        if (side.most && dice_.one_in(3)) side.most = triangle->sides[1];
        if (side.least && side.most && *side.most < *side.least) side = before;
    }

    Dice dice_;
    Scene scene_;
    bool in_chains_ = false;
};

}  // namespace

Branch drawn_branch(Dice& dice, const Tree& tree, double t) {
    Branch branch{.thickness_mm = dice.pick({8.0, dice.between(3, 14)})};
    const double out = dice.pick({-1.0, 1.0});
    const Trunk& trunk = tree.trunk;
    Vec2 start{trunk.x_mm + out * dice.between(-10, 60), dice.between(40, trunk.height_mm)};
    double heading = (out > 0 ? 0 : 180) + dice.pick({0.0, dice.between(-20, 20), dice.between(-60, 60)});
    const bool crosses = !tree.branches.empty() && dice.one_in(3);
    if (crosses) {
        const auto& path = dice.pick(tree.branches).path_mm;
        start = 0.5 * (path[0] + path[1]) - polar(dice.between(10, 80), heading);
    }
    if (dice.one_in(6)) heading = dice.pick({90.0, -90.0, 88.0, -93.0, dice.between(80, 100)});  // Upright.
    branch.path_mm.push_back(start);
    const double reach = dice.one_in(7) ? dice.between(15, 50) : dice.between(100, 260);
    for (int runs = dice.pick({1, 1, 2, 3, 4}), left = runs; left > 0; --left) {
        branch.path_mm.push_back(branch.path_mm.back() + polar(reach / runs * dice.between(0.5, 1.5), heading));
        heading += dice.pick({dice.between(-40, 40), dice.between(-140, 140), 0.0});
    }
    if (dice.one_in(4)) {  // A needless point, or just no longer one.
        const Vec2 first = branch.path_mm[0];
        const Vec2 along = branch.path_mm[1] - first;
        const Vec2 between = first + dice.between(0.2, 0.8) * along +
                             dice.pick({0.0, dice.between(-1, 1) * t}) * quarter_turned_ccw(unit(along));
        branch.path_mm.insert(branch.path_mm.begin() + 1, between);
    }
    if (dice.one_in(2))
        for (Vec2& p : branch.path_mm) p = {std::round(p.x), std::round(p.y)};
    return branch;
}

Scene drawn_scene(std::uint64_t seed) { return Drawing(seed).take(); }

}  // namespace boughwork::book
