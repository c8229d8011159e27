// SPDX-License-Identifier: MIT
#include "engine/geometry/tree_shape.h"

#include <catch2/catch.hpp>

namespace boughwork {
namespace {

constexpr double t = 1;  // The tolerance of these tests, in mm.

Branch branch(std::vector<Vec2> path, double thickness_mm = 8) {
    return {.name = "b", .path_mm = std::move(path), .thickness_mm = thickness_mm};
}

/// A trunk with upright sides, 40 mm wide.
Trunk post(double x_mm) { return {.x_mm = x_mm, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40}; }

/// The branches with the trunk far away.
TreeShape tree_of(std::vector<Branch> branches) {
    return shape_of(Tree{.trunk = post(-5000), .branches = std::move(branches)}, t);
}

std::vector<Span> spans_of(Branch only) { return tree_of({std::move(only)}).branches[0].spans; }

/// To ten of the hairs by which a limit itself is allowed (tolerance.h).
bool near(Vec2 a, Vec2 b) { return distance(a, b) < 1e-5; }

void check_edge(const Span& span, Vec2 from, Vec2 to) {
    CAPTURE(span.edge.from.x, span.edge.from.y, span.edge.to.x, span.edge.to.y);
    CHECK(near(span.edge.from, from));
    CHECK(near(span.edge.to, to));
}

bool buildable(std::vector<Vec2> path, double thickness_mm = 8) {
    return static_cast<bool>(possible(branch(std::move(path), thickness_mm), t));
}

/// Up or down a path by lengths and headings (degrees, counter-clockwise from +x).
std::vector<Vec2> walk(Vec2 start, std::initializer_list<std::pair<double, double>> legs) {
    std::vector<Vec2> path{start};
    for (const auto& [length_mm, heading_deg] : legs)
        path.push_back(path.back() + turned_ccw({length_mm, 0}, heading_deg / degrees_per_radian));
    return path;
}

TEST_CASE("The trunk stands on the ground with x as its middle") {
    const TreeShape tree =
        shape_of(Tree{.trunk = {.x_mm = 100, .height_mm = 500, .base_width_mm = 60, .top_width_mm = 40}}, t);
    REQUIRE(tree.trunk.size() == 4);
    CHECK(signed_area(tree.trunk) == Approx(50 * 500));
    const Box box = bounds(tree.trunk);
    CHECK(near(box.low, {70, 0}));
    CHECK(near(box.high, {130, 500}));
    CHECK(contains(tree.trunk, {80, 500}));
    CHECK_FALSE(contains(tree.trunk, {79, 500}));
}

TEST_CASE("Pieces can hang from the whole under-edge of a level branch") {
    const TreeShape tree = tree_of({branch({{0, 300}, {200, 300}})});
    REQUIRE(tree.branches[0].runs.size() == 1);
    CHECK(signed_area(tree.branches[0].runs[0]) == Approx(200 * 8));
    CHECK(signed_area(tree.branches[0].outline) == Approx(200 * 8));
    const std::vector<Span>& spans = tree.branches[0].spans;
    REQUIRE(spans.size() == 1);
    CHECK(spans[0].number == 0);
    CHECK(spans[0].branch == 0);
    check_edge(spans[0], {0, 296}, {200, 296});
}

TEST_CASE("The under-edge is the same when the branch grows to the left") {
    const std::vector<Span> spans = spans_of(branch({{200, 300}, {0, 300}}));
    REQUIRE(spans.size() == 1);
    check_edge(spans[0], {0, 296}, {200, 296});
}

TEST_CASE("A bend is mitred and ends its spans") {
    const TreeShape tree = tree_of({branch({{0, 300}, {200, 300}, {200, 100}})});
    REQUIRE(tree.branches[0].runs.size() == 2);
    // Mitres give to one side what they take from the other: the strip's area is length x thickness.
    CHECK(signed_area(tree.branches[0].outline) == Approx(400 * 8));
    const Box box = bounds(tree.branches[0].outline);
    CHECK(near(box.low, {0, 100}));
    CHECK(near(box.high, {204, 304}));
    const std::vector<Span>& spans = tree.branches[0].spans;
    REQUIRE(spans.size() == 3);
    check_edge(spans[0], {0, 296}, {196, 296});
    check_edge(spans[1], {196, 296}, {196, 100});
    check_edge(spans[2], {204, 100}, {204, 304});
    for (int i = 0; i < 3; ++i) CHECK(spans[static_cast<std::size_t>(i)].number == i);
}

TEST_CASE("An arched branch has one span on each of its slopes") {
    // 3-4-5 slopes: the half thickness of 5 reaches 6.25 mm straight down at the bend.
    const std::vector<Span> spans = spans_of(branch({{0, 300}, {80, 360}, {160, 300}}, 10));
    REQUIRE(spans.size() == 2);
    check_edge(spans[0], {3, 296}, {80, 353.75});
    check_edge(spans[1], {80, 353.75}, {157, 296});
}

TEST_CASE("A branch ends square, and nothing hangs from its end edges") {
    // Growing straight to the right and hanging straight down, the end edges look sideways and down.
    const std::vector<Span> level = spans_of(branch({{0, 300}, {200, 300}}, 40));
    REQUIRE(level.size() == 1);
    check_edge(level[0], {0, 280}, {200, 280});
    const std::vector<Span> upright = spans_of(branch({{0, 300}, {0, 100}}, 40));
    REQUIRE(upright.size() == 2);
    for (const Span& span : upright) CHECK(length(span.edge) == Approx(200));
}

TEST_CASE("An upright run has a span on either side, the one with the smaller x first") {
    for (const auto& path : {std::vector<Vec2>{{50, 100}, {50, 300}}, std::vector<Vec2>{{50, 300}, {50, 100}}}) {
        const std::vector<Span> spans = spans_of(branch(path));
        REQUIRE(spans.size() == 2);
        check_edge(spans[0], {46, 300}, {46, 100});
        check_edge(spans[1], {54, 100}, {54, 300});
        CHECK(spans[0].number == 0);
        CHECK(spans[1].number == 1);
    }
}

TEST_CASE("The spans of a leaning run are in the same order, up or down the path") {
    // 3.5 mm of lean in 100 mm: the foot of the right edge is left of the top of the left one.
    for (const auto& path : {std::vector<Vec2>{{50, 100}, {53.5, 200}}, std::vector<Vec2>{{53.5, 200}, {50, 100}}}) {
        const std::vector<Span> spans = spans_of(branch(path, 3));
        REQUIRE(spans.size() == 2);
        CHECK(outward_normal(spans[0].edge).x < 0);
        CHECK(outward_normal(spans[1].edge).x > 0);
    }
}

TEST_CASE("An edge that looks up by no more than five degrees still holds pieces") {
    const auto leaning = [](double deg) { return spans_of(branch(walk({0, 100}, {{200, 90 - deg}}))).size(); };
    CHECK(leaning(0) == 2);
    CHECK(leaning(4.9) == 2);
    CHECK(leaning(5.0) == 2);
    CHECK(leaning(-5.0) == 2);
    CHECK(leaning(5.1) == 1);
    CHECK(leaning(-5.1) == 1);
    CHECK(leaning(45) == 1);
}

TEST_CASE("What lies more than the tolerance inside the trunk is cut off a span") {
    const auto in_tree = [](std::vector<Vec2> path, Trunk trunk) {
        return shape_of(Tree{.trunk = trunk, .branches = {branch(std::move(path))}}, t).branches[0].spans;
    };
    const std::vector<Span> from_the_middle = in_tree({{0, 300}, {200, 300}}, post(0));
    REQUIRE(from_the_middle.size() == 1);
    check_edge(from_the_middle[0], {19, 296}, {200, 296});

    const std::vector<Span> barely_inside = in_tree({{19.5, 300}, {200, 300}}, post(0));
    REQUIRE(barely_inside.size() == 1);
    check_edge(barely_inside[0], {19.5, 296}, {200, 296});

    // A slanting side, 1 mm in 50: the depth is measured square to it. It is 24.08 out at y = 296.
    const std::vector<Span> slanting = in_tree({{0, 300}, {200, 300}}, {.x_mm = 0, .height_mm = 500});
    REQUIRE(slanting.size() == 1);
    check_edge(slanting[0], {24.08 - std::sqrt(1 + 0.02 * 0.02), 296}, {200, 296});
}

TEST_CASE("The tolerance decides how deep inside the trunk a span may reach") {
    const Tree tree{.trunk = post(0), .branches = {branch({{0, 300}, {200, 300}})}};
    check_edge(shape_of(tree, 3).branches[0].spans.at(0), {17, 296}, {200, 296});
    check_edge(shape_of(tree, 0.25).branches[0].spans.at(0), {19.75, 296}, {200, 296});
}

TEST_CASE("A branch through the trunk has two spans, numbered along its path") {
    const auto through = [](std::vector<Vec2> path) {
        return shape_of(Tree{.trunk = post(0), .branches = {branch(std::move(path))}}, t).branches[0].spans;
    };
    const std::vector<Span> to_the_right = through({{-100, 300}, {100, 300}});
    REQUIRE(to_the_right.size() == 2);
    check_edge(to_the_right[0], {-100, 296}, {-19, 296});
    check_edge(to_the_right[1], {19, 296}, {100, 296});
    const std::vector<Span> to_the_left = through({{100, 300}, {-100, 300}});
    REQUIRE(to_the_left.size() == 2);
    CHECK(to_the_left[0].number == 0);
    check_edge(to_the_left[0], {19, 296}, {100, 296});
    check_edge(to_the_left[1], {-100, 296}, {-19, 296});
}

TEST_CASE("A branch wholly inside the trunk has no span") {
    CHECK(shape_of(Tree{.trunk = post(0), .branches = {branch({{-10, 300}, {10, 300}})}}, t).branches[0].spans.empty());
}

TEST_CASE("What lies more than the tolerance inside another branch is cut off a span") {
    const TreeShape tree = tree_of({branch({{0, 300}, {200, 300}}), branch({{100, 200}, {100, 400}})});
    const std::vector<Span>& level = tree.branches[0].spans;
    REQUIRE(level.size() == 2);
    check_edge(level[0], {0, 296}, {97, 296});
    check_edge(level[1], {103, 296}, {200, 296});
    // The upright one is cut on either side, where the level one is 8 mm thick.
    const std::vector<Span>& upright = tree.branches[1].spans;
    REQUIRE(upright.size() == 4);
    double whole = 0;
    for (const Span& span : upright) {
        CHECK(span.branch == 1);
        whole += length(span.edge);
    }
    CHECK(whole == Approx(2 * (200 - 6)));
}

TEST_CASE("A branch is not cut by itself") {
    // The path comes back under its own first run and crosses it.
    const std::vector<Span> spans = spans_of(branch({{0, 300}, {200, 300}, {200, 350}, {100, 350}, {100, 200}}));
    REQUIRE_FALSE(spans.empty());
    check_edge(spans[0], {0, 296}, {204, 296});
}

TEST_CASE("Another branch counts as a whole: no sliver of a span is left inside its bend") {
    // The under-edge of the first runs exactly through the bend of the second, along the mitre's middle.
    const TreeShape tree =
        tree_of({branch({{0, 300}, {200, 300}}, 8), branch({{100, 200}, {100, 296}, {160, 356}}, 20)});
    const std::vector<Span>& spans = tree.branches[0].spans;
    REQUIRE(spans.size() == 2);
    check_edge(spans[0], {0, 296}, {91, 296});
    CHECK(spans[1].edge.from.x > 105);
    // A long mitre that lies along the under-edge itself: both runs of the bend reach past it.
    const TreeShape along =
        tree_of({branch({{0, 300}, {200, 300}}, 8), branch({{60, 216}, {100, 296}, {60, 376}}, 20)});
    REQUIRE(along.branches[0].spans.size() == 2);
}

TEST_CASE("Where the mitres of a branch are rounded, it still cuts what it crosses") {
    // The long edges of this branch, as doubles, overlap by a few 1e-15 mm at the bend at (-89, 116).
    const Branch bent = branch({{-23, 127}, {-50, 141}, {-89, 116}, {-102, 93}, {-119, 23}});
    const TreeShape tree = tree_of({bent, branch({{-98, 78}, {-126, 48}}, 4)});
    CHECK(tree.branches[1].spans.size() == 2);
}

TEST_CASE("A needless point is no bend") {
    CHECK(spans_of(branch({{0, 300}, {100, 300.4}, {200, 300}})).size() == 1);
    check_edge(spans_of(branch({{0, 300}, {100, 300.4}, {200, 300}}))[0], {0, 296}, {200, 296});
    CHECK(spans_of(branch({{0, 300}, {100, 300.6}, {200, 300}})).size() == 2);
    // Half the tolerance decides.
    const Tree tree{.trunk = post(-5000), .branches = {branch({{0, 300}, {100, 300.6}, {200, 300}})}};
    CHECK(shape_of(tree, 2).branches[0].spans.size() == 1);
}

TEST_CASE("A path is simplified by the distance from the chord between the points that stay") {
    using Path = std::vector<Vec2>;
    CHECK(simplified({{0, 0}, {50, 0}, {100, 0}}, 0.5) == Path{{0, 0}, {100, 0}});
    CHECK(simplified({{0, 0}, {30, 0.4}, {60, -0.4}, {100, 0}}, 0.5) == Path{{0, 0}, {100, 0}});
    CHECK(simplified({{0, 0}, {50, 20}, {75, 10.3}, {100, 0}}, 0.5) == Path{{0, 0}, {50, 20}, {100, 0}});
    CHECK(simplified({{0, 0}, {50, 20}, {75, 11}, {100, 0}}, 0.5) == Path{{0, 0}, {50, 20}, {75, 11}, {100, 0}});
    CHECK(simplified({{0, 0}, {100, 0}}, 0.5) == Path{{0, 0}, {100, 0}});
    // The chord is a segment: a point past its end is off it, though on its line.
    CHECK(simplified({{0, 0}, {50, 0}, {40, 0}}, 0.5) == Path{{0, 0}, {50, 0}, {40, 0}});
}

TEST_CASE("A turn of more than 120 degrees is refused") {
    CHECK(buildable(walk({0, 300}, {{100, 0}, {100, 119}})));
    CHECK(buildable(walk({0, 300}, {{100, 0}, {100, -119}})));
    CHECK_FALSE(buildable(walk({0, 300}, {{100, 0}, {100, 121}})));
    CHECK_FALSE(buildable(walk({0, 300}, {{100, 0}, {100, -121}})));
    CHECK_FALSE(buildable({{0, 300}, {100, 300}, {50, 300}}));
    const Result<Done> refused = possible(branch(walk({0, 300}, {{100, 0}, {100, 121}})), t);
    REQUIRE_FALSE(refused);
    CHECK_FALSE(refused.problem().found.empty());
    CHECK_FALSE(refused.problem().to_do.empty());
}

TEST_CASE("A sharp turn at a needless point is no turn") {
    // A hand that wavers by 0.2 mm and goes back: all within half the tolerance of the straight path.
    CHECK(buildable({{0, 300}, {100, 300}, {99.8, 300.1}, {200, 300}}));
}

TEST_CASE("A run whose long edge vanishes in its mitres is refused") {
    // Two right-angled bends the same way take half the thickness each off the inner edge: 8 mm.
    CHECK(buildable({{0, 300}, {100, 300}, {100, 291.9}, {0, 291.9}}));
    CHECK_FALSE(buildable({{0, 300}, {100, 300}, {100, 292.1}, {0, 292.1}}));
    // One to the left and one to the right leave both edges as long as the run.
    CHECK(buildable({{0, 300}, {100, 300}, {100, 297}, {200, 297}}));
    // An end run has one mitre: 4 mm off its inner edge.
    CHECK(buildable({{0, 300}, {4.1, 300}, {4.1, 200}}));
    CHECK_FALSE(buildable({{0, 300}, {3.9, 300}, {3.9, 200}}));
    // A thinner branch can do it.
    CHECK(buildable({{0, 300}, {3.9, 300}, {3.9, 200}}, 7));
}

TEST_CASE("A branch needs two points, none twice, and a thickness") {
    CHECK_FALSE(buildable({}));
    CHECK_FALSE(buildable({{0, 300}}));
    CHECK_FALSE(buildable({{0, 300}, {0, 300}}));
    CHECK_FALSE(buildable({{0, 300}, {100, 300}, {100, 300}, {200, 250}}));
    CHECK_FALSE(buildable({{0, 300}, {100, 300}}, 0));
    CHECK_FALSE(buildable({{0, 300}, {100, 300}}, -8));
    CHECK(buildable({{0, 300}, {100, 300}}, 0.5));
}

}  // namespace
}  // namespace boughwork
