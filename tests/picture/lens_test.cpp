// SPDX-License-Identifier: MIT
#include "gui/picture/lens.h"

#include "tests/picture/marks_of.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

struct Looked {
    std::vector<Mark> marks;
    Finding finding;

    /// The bar of that colour: its first and longest stroke of two points that is not a stop.
    double bar_px(Colour colour) const {
        double longest = 0;
        for (const Stroke& stroke : all<Stroke>(marks))
            if (stroke.colour == colour && stroke.points.size() == 2 && stroke.width == 3)
                longest = std::max(longest, distance(stroke.points[0], stroke.points[1]));
        return longest;
    }
    Polygon rim() const {
        for (const Stroke& stroke : all<Stroke>(marks))
            if (stroke.closed && stroke.points.size() > 20) return stroke.points;
        return {};
    }
};

Looked look_at(SceneBuilder& builder, Rule rule, const std::vector<int>& numbers,
               const Camera& camera = usual_camera()) {
    const Report report = builder.check();
    const Finding& found = finding(report, rule, numbers);
    return {lens(builder.scene, builder.plan(), report, found, camera, 1), found};
}

SceneBuilder two_apart(double gap_mm) {
    SceneBuilder builder = with_level_branch();
    builder.challenge().neighbours = Neighbours::apart;
    builder.hang(rectangle(1, 60, 40), under(100)).hang(rectangle(2, 60, 40), under(160 + gap_mm));
    return builder;
}

}  // namespace

TEST_CASE("The lens draws the gap that is there and the gap that is needed to one scale") {
    SceneBuilder builder = two_apart(0.8);
    const Looked looked = look_at(builder, Rule::touching, {1, 2});
    REQUIRE(looked.finding.amount == Approx(0.8));
    const double now_px = looked.bar_px(palette::finding);
    const double needed_px = looked.bar_px(palette::ink);
    CHECK(now_px > 10);  // to be seen, where the plan shows less than a pixel
    CHECK(now_px / needed_px == Approx(0.8 / builder.challenge().tolerance_mm));
    CHECK(texts(looked.marks, "needs more than this").size() == 1);
}

TEST_CASE("For an overlap the lens says how much would be fine") {
    SceneBuilder builder = two_apart(-4);
    const Looked looked = look_at(builder, Rule::overlap, {1, 2});
    CHECK(looked.bar_px(palette::finding) / looked.bar_px(palette::ink) == Approx(4));
    CHECK(texts(looked.marks, "this much is fine").size() == 1);
}

TEST_CASE("The plan in the lens stays within its rim, and the lens within the view") {
    for (const Vec2 at : {Vec2{105, 300}, Vec2{-200, 500}, Vec2{400, 100}}) {
        Camera camera = usual_camera();
        camera.centre_mm = at;
        SceneBuilder builder = two_apart(0.8);
        const Looked looked = look_at(builder, Rule::touching, {1, 2}, camera);
        const Polygon rim = looked.rim();
        REQUIRE(rim.size() > 20);
        CHECK(lies_in(bounds(rim), camera.view));
        const Box outer{bounds(rim).low - Vec2{1e-6, 1e-6}, bounds(rim).high + Vec2{1e-6, 1e-6}};
        for (const Colour fill : {palette::no_kind, palette::wood, palette::ground})
            for (const Fill& seen : fills(looked.marks, fill))
                CHECK(lies_in(bounds(seen.corners), PixelBox{outer.low.x, outer.low.y, outer.high.x - outer.low.x,
                                                             outer.high.y - outer.low.y}));
    }
}

TEST_CASE("The lens does not lie on the place that it looks at") {
    SceneBuilder builder = two_apart(0.8);
    const Looked looked = look_at(builder, Rule::touching, {1, 2});
    CHECK_FALSE(contains(looked.rim(), to_px(usual_camera(), looked.finding.where_mm.front())));
}

TEST_CASE("In a corner of the view the lens rather hides other pieces than the place that it looks at") {
    SceneBuilder builder = with_level_branch();
    builder.challenge().neighbours = Neighbours::apart;
    builder.hang(rectangle(1, 6, 6), under(10)).hang(rectangle(2, 6, 6), under(16.8));
    builder.hang(rectangle(3, 300, 250), under(40)).hang(rectangle(4, 24, 150), {.at_mm = {8, 380}});
    Camera corner = usual_camera();  // the two small pieces are near its upper left corner
    corner.centre_mm = {16 + corner.view.width / 2 - 50, 400 - corner.view.height / 2 + 50};
    const Looked looked = look_at(builder, Rule::touching, {1, 2}, corner);
    CHECK_FALSE(contains(looked.rim(), to_px(corner, looked.finding.where_mm.front())));
}

TEST_CASE("Where nothing is measured the lens shows the piece larger, without bars") {
    SceneBuilder builder = with_level_branch();
    builder.hang(triangle(1, 80, 80, 80), {.at_mm = {100, 200}});
    const Looked looked = look_at(builder, Rule::held_by_nothing, {1});
    CHECK(looked.bar_px(palette::ink) == 0);
    CHECK(texts(looked.marks, "now").empty());
}

TEST_CASE("A finding that says nowhere has no lens") {
    SceneBuilder builder = two_apart(0.8);
    const Report report = builder.check();
    Finding nowhere = finding(report, Rule::touching, {1, 2});
    nowhere.where_mm.clear();
    CHECK(lens(builder.scene, builder.plan(), report, nowhere, usual_camera(), 1).empty());
}
