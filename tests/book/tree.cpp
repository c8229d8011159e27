// SPDX-License-Identifier: MIT
#include "tests/book/tree.h"

#include <algorithm>

namespace boughwork::book {

namespace {

constexpr Real sharpest_turn_deg = 120;

/// Rulebook 2: what of the path between two kept points is kept too. The farthest point from the chord
/// is, when it is farther than t / 2, and parts the rest.
void keep_between(const std::vector<Point>& path, std::size_t first, std::size_t last, std::vector<Point>& kept,
                  Scales& scales) {
    const Segment chord{path[first], path[last]};
    std::size_t farthest = first;
    Real how_far = 0;
    for (std::size_t i = first + 1; i < last; ++i) {
        const Real d = distance(path[i], chord);
        if (farthest != first && std::abs(d - how_far) < hair_mm) scales.doubt();  // Which one parts the rest?
        if (d > how_far) {
            farthest = i;
            how_far = d;
        }
    }
    if (farthest == first || !scales.more(how_far, scales.t / 2)) return;
    keep_between(path, first, farthest, kept, scales);
    kept.push_back(path[farthest]);
    keep_between(path, farthest, last, kept, scales);
}

/// Rulebook 2, "mitred at bends": where the two edges beside a bend meet, as seen from the bend.
Point mitre(Point direction_in, Point direction_out, Real half_thickness) {
    const Point in = left_of(direction_in);
    const Point out = left_of(direction_out);
    return (half_thickness / (1 + dot(in, out))) * (in + out);
}

/// A shape made of convex parts, and the rim of it as a whole.
struct Whole {
    std::vector<Corners> parts;
    std::vector<Segment> rim;
};

bool inside_whole(Point p, const std::vector<Corners>& parts) {
    for (const Corners& part : parts)
        if (inside(p, part)) return true;
    return false;
}

/// Rulebook 2, "as a whole": a part's side is on the rim where only one side of it is inside.
Whole whole(std::vector<Corners> parts) {
    constexpr Real beside = 1e-9L;
    Whole made{.parts = std::move(parts)};
    std::vector<Segment> sides;
    for (const Corners& part : made.parts)
        for (const Segment& s : sides_of(part)) sides.push_back(s);
    for (const Segment& s : sides) {
        std::vector<Real> changes;
        for (const Segment& other : sides)
            for (const Real place : places_at_distance(s, other, 0)) changes.push_back(place);
        const Point normal = left_of(direction(s));
        const auto on_rim = [&](Point p) {
            return inside_whole(p + beside * normal, made.parts) != inside_whole(p - beside * normal, made.parts);
        };
        for (const Part part : parts_where(s, changes, on_rim)) made.rim.push_back({at(s, part.from), at(s, part.to)});
    }
    return made;
}

/// Rulebook 2: where an edge "lies more than t inside", or does not.
bool deep_inside(Point p, const Whole& shape, Scales& scales) {
    if (!inside_whole(p, shape.parts)) return false;
    Real depth = INFINITY;
    for (const Segment& s : shape.rim) depth = std::min(depth, distance(p, s));
    return scales.more(depth, scales.t);
}

std::vector<Segment> cut_by(const Segment& edge, const Whole& shape, Scales& scales) {
    std::vector<Real> changes;
    for (const Segment& s : shape.rim)
        for (const Real place : places_at_distance(edge, s, scales.t + hair_mm)) changes.push_back(place);
    std::vector<Segment> left;
    for (const Part part : parts_where(edge, changes, [&](Point p) { return !deep_inside(p, shape, scales); }))
        if (scales.more((part.to - part.from) * length(edge), 0))
            left.push_back({at(edge, part.from), at(edge, part.to)});
    return left;
}

Corners trunk_of(const Trunk& trunk) {
    const Real x = trunk.x_mm;
    const Real half_base = static_cast<Real>(trunk.base_width_mm) / 2;
    const Real half_top = static_cast<Real>(trunk.top_width_mm) / 2;
    return {{x - half_base, 0}, {x + half_base, 0}, {x + half_top, trunk.height_mm}, {x - half_top, trunk.height_mm}};
}

std::vector<Corners> shapes_of(const std::vector<Run>& runs) {
    std::vector<Corners> shapes;
    for (const Run& run : runs) shapes.push_back(run.shape());
    return shapes;
}

/// Rulebook 2: the spans of one branch, cut by `others`, numbered along the path; of two on one run the
/// one with the smaller x first.
std::vector<Span> spans_of(const std::vector<Run>& runs, const std::vector<Whole>& others, Scales& scales) {
    std::vector<Span> spans;
    for (const Run& run : runs) {
        const Point left_normal = left_of(direction(run.left));
        std::vector<Span> edges{{run.left, left_normal}, {run.right, -left_normal}};
        if (left_normal.x > 0) std::swap(edges[0], edges[1]);
        for (const Span& long_edge : edges) {
            if (!down_or_sideways(long_edge.normal, scales)) continue;
            std::vector<Segment> left{long_edge.edge};
            for (const Whole& other : others) {
                std::vector<Segment> still_left;
                for (const Segment& part : left)
                    for (const Segment& rest : cut_by(part, other, scales)) still_left.push_back(rest);
                left = std::move(still_left);
            }
            for (const Segment& part : left) spans.push_back({part, long_edge.normal});
        }
    }
    return spans;
}

}  // namespace

std::vector<Point> simplified(const std::vector<Point>& path, Scales& scales) {
    std::vector<Point> kept{path.front()};
    keep_between(path, 0, path.size() - 1, kept, scales);
    kept.push_back(path.back());
    return kept;
}

std::vector<Run> runs_of(const Branch& branch, Scales& scales) {
    std::vector<Point> path;
    for (const Vec2 p : branch.path_mm) path.push_back(point(p));
    path = simplified(path, scales);
    const Real half = static_cast<Real>(branch.thickness_mm) / 2;
    std::vector<Point> directions;
    for (std::size_t i = 0; i + 1 < path.size(); ++i) directions.push_back(direction({path[i], path[i + 1]}));
    for (std::size_t i = 0; i + 1 < directions.size(); ++i)
        if (scales.beyond(angle_between_deg(directions[i], directions[i + 1]), sharpest_turn_deg)) return {};

    std::vector<Point> beside;  // From each point of the path to the corner on its left.
    beside.push_back(half * left_of(directions.front()));
    for (std::size_t i = 0; i + 1 < directions.size(); ++i)
        beside.push_back(mitre(directions[i], directions[i + 1], half));
    beside.push_back(half * left_of(directions.back()));

    std::vector<Run> runs;
    for (std::size_t i = 0; i < directions.size(); ++i) {
        const Run run{{path[i] + beside[i], path[i + 1] + beside[i + 1]},
                      {path[i] - beside[i], path[i + 1] - beside[i + 1]}};
        for (const Segment& edge : {run.left, run.right})
            if (!scales.more(dot(edge.to - edge.from, directions[i]), 0)) return {};
        runs.push_back(run);
    }
    return runs;
}

TreeInPlan tree_in_plan(const Tree& tree, Scales& scales) {
    TreeInPlan made{.trunk = trunk_of(tree.trunk)};
    std::vector<Whole> wholes;
    for (const Branch& branch : tree.branches) {
        made.branches.push_back({.runs = runs_of(branch, scales)});
        wholes.push_back(whole(shapes_of(made.branches.back().runs)));
    }
    for (std::size_t i = 0; i < made.branches.size(); ++i) {
        std::vector<Whole> others{whole({made.trunk})};
        for (std::size_t k = 0; k < wholes.size(); ++k)
            if (k != i) others.push_back(wholes[k]);
        made.branches[i].spans = spans_of(made.branches[i].runs, others, scales);
    }
    return made;
}

Real signed_distance(const Corners& piece, const BranchInPlan& branch) {
    Real deepest = INFINITY;
    for (const Run& run : branch.runs) deepest = std::min(deepest, signed_distance(piece, run.shape()));
    return deepest;
}

}  // namespace boughwork::book
