// SPDX-License-Identifier: MIT
#include "gui/picture/ghost_words.h"

#include "tests/picture/marks_of.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

std::vector<Mark> marks(const SceneBuilder& it, int piece, const Camera& camera) {
    LabelPlaces places({}, {}, camera.view);
    return ghost_words(it.scene, current_plan(it.scene), it.check(), {piece}, camera, places, 1);
}

std::vector<std::string> words(const SceneBuilder& it, int piece) {
    std::vector<std::string> said;
    for (const Text& text : all<Text>(marks(it, piece, usual_camera()))) said.push_back(text.words);
    return said;
}

/// A right triangle 30, 40, 50 by its side of 40, whose angles are a right one and an acute one, 40 mm along.
SceneBuilder by_the_leg(bool flipped = false) {
    SceneBuilder it = with_level_branch();
    const Piece piece = triangle(1, 30, 40, 50);
    it.hang(piece, lying_on(under_edge, piece, {.side = 2, .from_mm = 40, .flipped = flipped}));
    it.hang(triangle(2, 80, 80, 80), under(95.5));
    return it;
}

using Words = std::vector<std::string>;

}  // namespace

TEST_CASE("a piece in the hand says its side, the angles there from left to right, and the room on both sides") {
    CHECK(words(by_the_leg(), 1) == Words{"40 mm", "15.5 mm", "side 2: 40 mm", "right angle · acute angle"});
    CHECK(words(by_the_leg(true), 1) == Words{"40 mm", "15.5 mm", "side 2: 40 mm", "acute angle · right angle"});
}

TEST_CASE("all words about a piece in the hand lie on paper, within the view") {
    const SceneBuilder it = by_the_leg();
    Camera camera = usual_camera();
    for (const Vec2 centre : {Vec2{200, 300}, Vec2{200, 640}, Vec2{200, 160}, Vec2{480, 300}}) {
        camera.centre_mm = centre;  // the piece in the middle, and near three edges of the view
        const std::vector<Mark> drawn = marks(it, 1, camera);
        const std::vector<Fill> plates = fills(drawn, palette::paper);
        CHECK(plates.size() == 3);
        for (const Fill& plate : plates) {
            const Box box = bounds(plate.corners);
            CHECK(box.low.x >= camera.view.x);
            CHECK(box.low.y >= camera.view.y);
            CHECK(box.high.x <= camera.view.x + camera.view.width + 1e-9);
            CHECK(box.high.y <= camera.view.y + camera.view.height + 1e-9);
        }
        for (const Text& text : all<Text>(drawn))
            CHECK(std::any_of(plates.begin(), plates.end(), [&](const Fill& plate) {
                const Box box = bounds(plate.corners);
                const double half = 0.4 * 0.5 * text.size * static_cast<double>(text.words.size());
                return text.at.x - half >= box.low.x && text.at.x + half <= box.high.x && text.at.y > box.low.y &&
                       text.at.y < box.high.y;
            }));
    }
}

TEST_CASE("what is kept back is not said of a piece in the hand; its room is") {
    SceneBuilder it = by_the_leg();
    it.challenge().shown.lengths = Shows::after_the_lesson;
    CHECK(words(it, 1) == Words{"40 mm", "15.5 mm", "side 2", "right angle · acute angle"});
    it.challenge().shown.kinds = Shows::after_an_answer;
    CHECK(words(it, 1) == Words{"40 mm", "15.5 mm", "side 2"});
}

TEST_CASE("where no room is left nothing is said of it, and of what hangs from nothing nothing at all") {
    SceneBuilder it = with_level_branch();
    it.hang(triangle(1, 80, 60, 50), under(0));
    it.hang(triangle(2, 80, 60, 50), under(80));
    it.hang(triangle(3, 80, 60, 50), under(200, 50));
    CHECK(words(it, 1).size() == 2);
    CHECK(words(it, 3).empty());
}

TEST_CASE("words about a piece in the hand stand above what holds it, and stay on the paper") {
    SceneBuilder it = by_the_leg();
    const Camera camera = usual_camera();
    const double edge_y = to_px(camera, under_edge.from).y;
    for (const Text& text : all<Text>(marks(it, 1, camera))) CHECK(text.at.y < edge_y);
    Camera below = camera;
    below.centre_mm.y = under_edge.from.y + 10 - camera.view.height / 2;  // the edge lies just below the upper end
    for (const Text& text : all<Text>(marks(it, 1, below))) CHECK(text.at.y >= below.view.y);
}
