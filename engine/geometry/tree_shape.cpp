// SPDX-License-Identifier: MIT
#include "engine/geometry/tree_shape.h"

#include <algorithm>
#include <utility>

#include "engine/geometry/interval.h"
#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr double greatest_turn_rad = 120.0 / degrees_per_radian;
/// More than a hand can bend; it bounds the time that simplifying takes.
constexpr std::size_t most_points = 1000;

double distance_to(const Segment& s, Vec2 point) {
    const Vec2 along = direction(s);
    const double at = std::clamp(dot(point - s.from, along), 0.0, length(s));
    return distance(point, s.from + at * along);
}

/// The two long edges of a branch as point lists along the path, mitred at the bends.
struct LongEdges {
    std::vector<Vec2> right;
    std::vector<Vec2> left;
};

LongEdges long_edges(const std::vector<Vec2>& path, double thickness_mm) {
    LongEdges edges;
    for (std::size_t i = 0; i < path.size(); ++i) {
        const bool first = i == 0;
        const bool last = i + 1 == path.size();
        const Vec2 before = unit(path[i] - path[first ? i : i - 1]);
        const Vec2 after = unit(path[last ? i : i + 1] - path[i]);
        const Vec2 left_before = quarter_turned_ccw(first ? after : before);
        const Vec2 left_after = quarter_turned_ccw(last ? before : after);
        // The mitre point lies half a thickness from both runs.
        const Vec2 mitre = (thickness_mm / 2 / (1 + dot(left_before, left_after))) * (left_before + left_after);
        edges.left.push_back(path[i] + mitre);
        edges.right.push_back(path[i] - mitre);
    }
    return edges;
}

/// Counter-clockwise; side 0 is the right long edge, side 2 the left one.
std::vector<Polygon> runs_of(const LongEdges& e) {
    std::vector<Polygon> runs;
    for (std::size_t i = 0; i + 1 < e.right.size(); ++i)
        runs.push_back({e.right[i], e.right[i + 1], e.left[i + 1], e.left[i]});
    return runs;
}

/// Something that can cover part of a span: convex parts, and the boundary of their union.
struct Obstacle {
    std::vector<Polygon> parts;
    std::vector<Segment> boundary;
    Box box;
};

Obstacle obstacle(const Polygon& convex) {
    Obstacle result{{convex}, {}, bounds(convex)};
    for (std::size_t i = 0; i < convex.size(); ++i) result.boundary.push_back(side(convex, i));
    return result;
}

Obstacle obstacle(const BranchShape& branch) {
    Obstacle result{branch.runs, {}, bounds(branch.outline)};
    const std::size_t runs = branch.runs.size();
    for (std::size_t i = 0; i < branch.outline.size(); ++i) {
        // The outline goes along the right edges of the runs, around the end, and back on the left.
        const std::size_t own = i < runs ? i : std::min(2 * runs - std::min(2 * runs, i), runs - 1);
        const Segment edge = side(branch.outline, i);
        std::vector<Interval> covered;  // where the branch crosses itself
        for (std::size_t k = 0; k < runs; ++k)
            if (k != own) covered.push_back(inside_convex(edge, branch.runs[k]));
        // Rounding at a mitre may leave a scrap so short that it has no direction.
        for (const Interval open : without({0, length(edge)}, covered))
            if (more_than_mm(open.size(), 0))
                result.boundary.push_back(
                    {edge.from + open.low * direction(edge), edge.from + open.high * direction(edge)});
    }
    return result;
}

/// What is left of the edge without what lies more than `tolerance_mm` inside an obstacle.
std::vector<Segment> uncovered(const Segment& edge, const std::vector<const Obstacle*>& obstacles,
                               double tolerance_mm) {
    std::vector<Interval> deep;
    const Box around = bounds({edge.from, edge.to});
    for (const Obstacle* in_the_way : obstacles) {
        if (!within_gap(around, in_the_way->box, 0)) continue;  // most branches are nowhere near
        std::vector<Interval> near_boundary;
        for (const Segment& b : in_the_way->boundary)
            near_boundary.push_back(within_reach(edge, b, tolerance_mm + hair_mm));
        for (const Polygon& part : in_the_way->parts)
            for (const Interval inner : without(inside_convex(edge, part), near_boundary)) deep.push_back(inner);
    }
    std::vector<Segment> left;
    for (const Interval open : without({0, length(edge)}, deep))
        if (more_than_mm(open.size(), 0))
            left.push_back({edge.from + open.low * direction(edge), edge.from + open.high * direction(edge)});
    return left;
}

/// The spans of one branch, numbered along the path.
std::vector<Span> spans_of(std::size_t branch, const BranchShape& shape, const std::vector<const Obstacle*>& others,
                           double tolerance_mm) {
    std::vector<Span> spans;
    for (const Polygon& run : shape.runs) {
        std::vector<std::pair<Segment, bool>> edges{{side(run, 0), false}, {side(run, 2), true}};
        // Of two, the one with the smaller x faces left; the edges run opposite ways, so their ends tell nothing.
        if (outward_normal(edges[1].first).x < outward_normal(edges[0].first).x) std::swap(edges[0], edges[1]);
        for (const auto& [edge, runs_backwards] : edges) {
            if (!points_down_or_sideways(outward_normal(edge))) continue;
            std::vector<Segment> stretches = uncovered(edge, others, tolerance_mm);
            if (runs_backwards) std::reverse(stretches.begin(), stretches.end());
            for (const Segment& stretch : stretches) spans.push_back({branch, static_cast<int>(spans.size()), stretch});
        }
    }
    return spans;
}

}  // namespace

std::vector<Vec2> simplified(const std::vector<Vec2>& path_mm, double reach_mm) {
    if (path_mm.size() < 3) return path_mm;
    std::vector<bool> keep(path_mm.size(), false);
    keep.front() = keep.back() = true;
    std::vector<std::pair<std::size_t, std::size_t>> stretches{{0, path_mm.size() - 1}};
    while (!stretches.empty()) {
        const auto [first, last] = stretches.back();
        stretches.pop_back();
        double farthest = 0;
        std::size_t at = first;
        for (std::size_t i = first + 1; i < last; ++i) {
            const double d = distance_to({path_mm[first], path_mm[last]}, path_mm[i]);
            if (d > farthest) {
                farthest = d;
                at = i;
            }
        }
        if (!more_than_mm(farthest, reach_mm)) continue;
        keep[at] = true;
        stretches.push_back({first, at});
        stretches.push_back({at, last});
    }
    std::vector<Vec2> path;
    for (std::size_t i = 0; i < path_mm.size(); ++i)
        if (keep[i]) path.push_back(path_mm[i]);
    return path;
}

Result<Done> possible(const Branch& branch, double tolerance_mm) {
    if (!(branch.thickness_mm > 0))
        return impossible(say("A branch must be thicker than nothing."), say("Give it a thickness."));
    if (branch.path_mm.size() < 2)
        return impossible(say("A branch needs at least two points."), say("Give it two ends."));
    if (branch.path_mm.size() > most_points)
        return impossible(say("A branch has at most {0} points.", {std::to_string(most_points)}),
                          say("Leave some out."));
    std::vector<Vec2> sorted = branch.path_mm;
    std::sort(sorted.begin(), sorted.end(), [](Vec2 a, Vec2 b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
    if (std::adjacent_find(sorted.begin(), sorted.end()) != sorted.end())
        return impossible(say("A point of the branch stands twice."), say("Leave one of the two out."));

    const std::vector<Vec2> path = simplified(branch.path_mm, tolerance_mm / 2);
    for (std::size_t i = 1; i + 1 < path.size(); ++i)
        if (angle_between_rad(path[i] - path[i - 1], path[i + 1] - path[i]) > greatest_turn_rad + hair_rad)
            return impossible(say("The branch turns back on itself by more than 120 degrees."),
                              say("Make the bend gentler."));
    const LongEdges edges = long_edges(path, branch.thickness_mm);
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        const Vec2 along = path[i + 1] - path[i];
        if (dot(edges.right[i + 1] - edges.right[i], along) <= 0 || dot(edges.left[i + 1] - edges.left[i], along) <= 0)
            return impossible(say("Two bends of the branch are too near to each other for its thickness."),
                              say("Move them apart, make the bends gentler, or the branch thinner."));
    }
    return Done{};
}

TreeShape shape_of(const Tree& tree, double tolerance_mm) {
    TreeShape shape;
    const Trunk& t = tree.trunk;
    shape.trunk = {{t.x_mm - t.base_width_mm / 2, 0},
                   {t.x_mm + t.base_width_mm / 2, 0},
                   {t.x_mm + t.top_width_mm / 2, t.height_mm},
                   {t.x_mm - t.top_width_mm / 2, t.height_mm}};
    for (const Branch& branch : tree.branches) {
        const LongEdges edges = long_edges(simplified(branch.path_mm, tolerance_mm / 2), branch.thickness_mm);
        BranchShape made{.runs = runs_of(edges), .outline = edges.right, .spans = {}};
        made.outline.insert(made.outline.end(), edges.left.rbegin(), edges.left.rend());
        shape.branches.push_back(std::move(made));
    }

    std::vector<Obstacle> obstacles{obstacle(shape.trunk)};  // the trunk, then the branches
    for (const BranchShape& branch : shape.branches) obstacles.push_back(obstacle(branch));
    for (std::size_t i = 0; i < shape.branches.size(); ++i) {
        std::vector<const Obstacle*> others;
        for (std::size_t k = 0; k < obstacles.size(); ++k)
            if (k != i + 1) others.push_back(&obstacles[k]);
        shape.branches[i].spans = spans_of(i, shape.branches[i], others, tolerance_mm);
    }
    return shape;
}

}  // namespace boughwork
