// SPDX-License-Identifier: MIT
#include "gui/picture/plan_picture.h"

#include "gui/picture/plan_page.h"
#include "gui/picture/report_words.h"
#include "gui/session/picking.h"
#include "rules/description.h"
#include "tests/picture/marks_of.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

std::vector<Mark> marks_of(const SceneBuilder& builder, const PictureOptions& options = {},
                           const Camera& camera = usual_camera()) {
    return plan_picture(builder.scene, builder.scene.plans.front(), builder.check(), camera, options).marks;
}

/// A row of equilateral triangles along the level branch.
SceneBuilder row(int count, double side_mm, double apart_mm) {
    SceneBuilder builder = with_level_branch();
    for (int i = 0; i < count; ++i)
        builder.hang(triangle(i + 1, side_mm, side_mm, side_mm), under(5 + i * (side_mm + apart_mm)));
    return builder;
}

/// The numbers of the pieces as they stand in the picture.
std::vector<Text> numbers(const std::vector<Mark>& marks) {
    std::vector<Text> found;
    for (const Text& text : all<Text>(marks))
        if (text.size == palette::number_px) found.push_back(text);
    return found;
}

}  // namespace

TEST_CASE("Every hung piece is drawn with its number, pieces in the envelope are not") {
    SceneBuilder builder = row(3, 80, 10);
    builder.keep(triangle(9, 90, 80, 70));
    const std::vector<Mark> marks = marks_of(builder);
    CHECK(numbers(marks).size() == 3);
    CHECK(texts(marks, "9").empty());
    CHECK(fills(marks, palette::acute).size() == 3);
}

TEST_CASE("A piece of 20 mm has its number beside it on a short line, clear of every piece and number") {
    const SceneBuilder builder = row(14, 20, 4);
    const std::vector<Mark> marks = marks_of(builder);
    const std::vector<Text> found = numbers(marks);
    REQUIRE(found.size() == 14);
    const std::vector<Fill> pieces = fills(marks, palette::acute);
    REQUIRE(pieces.size() == 14);
    for (std::size_t i = 0; i < found.size(); ++i) {
        for (const Fill& piece : pieces) CHECK_FALSE(overlap(box_of(found[i]), bounds(piece.corners)));
        for (std::size_t k = i + 1; k < found.size(); ++k) CHECK_FALSE(overlap(box_of(found[i]), box_of(found[k])));
        // Nearer to its own piece than to any other.
        const auto gap_to = [&](const Fill& piece) { return distance(middle(piece.corners), found[i].at); };
        const auto nearest = std::min_element(pieces.begin(), pieces.end(),
                                              [&](const Fill& a, const Fill& b) { return gap_to(a) < gap_to(b); });
        CHECK(gap_to(*nearest) < 60);
        CHECK(std::to_string(nearest - pieces.begin() + 1) == found[i].words);
    }
}

TEST_CASE("Numbers do not cover one another, near or far, small or projected") {
    for (const double side_mm : {20.0, 35.0, 60.0})
        for (const double zoom : {0.7, 1.0, 1.6})
            for (const double scale : {1.0, 2.0}) {
                const SceneBuilder builder = row(5, side_mm, 12);
                Camera camera = usual_camera();
                camera.px_per_mm = zoom;
                std::vector<Text> found;
                for (const Text& text : all<Text>(marks_of(builder, {.scale = scale}, camera)))
                    if (text.size == palette::number_px * scale) found.push_back(text);
                INFO(side_mm << " mm, " << zoom << " px a mm, scale " << scale);
                for (std::size_t i = 0; i < found.size(); ++i)
                    for (std::size_t k = i + 1; k < found.size(); ++k)
                        CHECK_FALSE(overlap(box_of(found[i]), box_of(found[k])));
            }
}

TEST_CASE("The held piece is grey where it would hang") {
    const SceneBuilder builder = row(2, 80, 10);
    const std::vector<Mark> marks = marks_of(builder, {.ghost = PieceNumber{2}});
    CHECK(fills(marks, palette::would_hang).size() == 1);
    CHECK(fills(marks, palette::acute).size() == 1);
    CHECK(numbers(marks).size() == 2);
}

TEST_CASE("What is chosen or has the keys is drawn over its neighbours") {
    const SceneBuilder builder = row(2, 80, 2);
    const std::vector<Mark> marks = marks_of(builder, {.chosen_piece = PieceNumber{1}, .with_keys = PieceNumber{1}});
    std::size_t last_fill = 0;
    std::size_t ring = 0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const auto* fill = std::get_if<Fill>(&marks[i]);
        const auto* stroke = std::get_if<Stroke>(&marks[i]);
        if (fill && fill->colour == palette::acute) last_fill = i;
        if (stroke && stroke->width == palette::keys_ring_px) ring = i;
    }
    CHECK(ring > last_fill);
}

TEST_CASE("Pieces that a picture card is about have a halo") {
    const SceneBuilder builder = row(3, 80, 10);
    const auto halos = [](const std::vector<Mark>& marks) {
        const std::vector<Stroke> strokes = all<Stroke>(marks);
        return std::count_if(strokes.begin(), strokes.end(),
                             [](const Stroke& s) { return s.colour == palette::pointed_at; });
    };
    CHECK(halos(marks_of(builder)) == 0);
    CHECK(halos(marks_of(builder, {.highlighted = {{1}, {3}}})) == 2);
}

TEST_CASE("A chosen branch has a handle at each point of its path, a chosen trunk at its two corners") {
    const SceneBuilder builder = SceneBuilder().branch("b1", {{0, 404}, {200, 424}, {400, 404}});
    const auto knobs = [](const std::vector<Mark>& marks) {
        std::vector<Vec2> found;
        for (const Fill& fill : fills(marks, palette::paper))
            if (fill.corners.size() > 20) found.push_back(middle(fill.corners));
        return found;
    };
    CHECK(knobs(marks_of(builder)).empty());
    const std::vector<Vec2> bends = knobs(marks_of(builder, {.chosen_branch = 0}));
    REQUIRE(bends.size() == 3);
    CHECK(distance(bends[1], to_px(usual_camera(), {200, 424})) < 1e-6);
    const std::vector<Vec2> corners = knobs(marks_of(builder, {.chosen_trunk = true}));
    REQUIRE(corners.size() == 2);
    const Trunk& trunk = builder.scene.plans.front().tree.trunk;
    CHECK(distance(corners[0], to_px(usual_camera(), trunk_top_handle_mm(trunk))) < 1e-6);
}

TEST_CASE("Branches carry their names, clear of the pieces") {
    SceneBuilder builder = row(4, 80, 10);
    builder.branch("owl", {{100, 300}, {300, 300}});
    const std::vector<Mark> marks = marks_of(builder);
    for (const char* name : {"b1", "owl"}) {
        REQUIRE(texts(marks, name).size() == 1);
        for (const Fill& piece : fills(marks, palette::acute))
            CHECK_FALSE(overlap(box_of(texts(marks, name)[0]), bounds(piece.corners)));
    }
}

TEST_CASE("A finding is marked where it is: a ring about a short gap, a bar along a long one") {
    SceneBuilder builder = with_level_branch();
    builder.hang(triangle(1, 80, 80, 80), under(0)).hang(triangle(2, 80, 80, 80), under(360));  // 40 past the end
    const Report report = builder.check();
    const Finding& past = finding(report, Rule::runs_past_the_end, {2});
    REQUIRE(past.where_mm.size() == 2);
    const std::size_t index = static_cast<std::size_t>(&past - report.findings.data());

    const auto marked = [&](double zoom) {
        Camera camera = usual_camera();
        camera.px_per_mm = zoom;
        std::vector<Stroke> found;
        for (const Stroke& stroke : all<Stroke>(marks_of(builder, {.finding = index}, camera)))
            if (stroke.colour == palette::finding) found.push_back(stroke);
        return found;
    };
    REQUIRE(marked(0.4).size() == 1);
    CHECK(marked(0.4)[0].closed);
    REQUIRE(marked(1).size() == 3);  // a bar and its two stops
    CHECK(distance(marked(1)[0].points[0], marked(1)[0].points[1]) ==
          Approx(distance(past.where_mm[0], past.where_mm[1])));
}

TEST_CASE("A million pieces out of sight cost nothing: what is far from the view is not drawn") {
    const SceneBuilder builder = row(3, 80, 10);
    Camera far_off = usual_camera();
    far_off.centre_mm = {90'000, 300};
    CHECK(numbers(marks_of(builder, {}, far_off)).empty());
}

TEST_CASE("The page shows the whole plan with title, plan, score, counts and what the kinds mean") {
    SceneBuilder builder = row(4, 80, 10);
    builder.tree().trunk.x_mm = -40;
    builder.hang(triangle(5, 80, 80, 80), {.at_mm = {900, 30}});
    const Report report = builder.check();
    const Drawing page = plan_page(builder.scene, builder.plan(), report);
    CHECK(page.width == 1280);
    CHECK(page.height == 800);
    CHECK(texts(page.marks, "Owls, table 2").size() == 1);
    CHECK(texts(page.marks, "Plan 1: " + score_words(report.score)).size() == 1);
    CHECK(texts(page.marks, "4 pieces count, 1 does not.").size() == 1);
    CHECK(texts(page.marks, kinds_words(builder.challenge())).size() == 1);
    const PixelBox whole{0, 0, page.width, page.height};
    for (const Fill& fill : all<Fill>(page.marks)) CHECK(lies_in(bounds(fill.corners), whole));
    for (const Stroke& stroke : all<Stroke>(page.marks)) CHECK(lies_in(bounds(stroke.points), whole));
    for (const Text& text : numbers(page.marks)) CHECK(lies_in(box_of(text), whole));
}

TEST_CASE("A tree of a kilometre is whole on its page, and a long title stays off the score") {
    SceneBuilder builder = SceneBuilder().branch("b1", {{0, 900'000}, {1'000'000, 900'000}});
    builder.scene.title = std::string(300, 'w') + "\n";
    const Drawing page = plan_page(builder.scene, builder.plan(), builder.check());
    const PixelBox whole{0, 0, page.width, page.height};
    for (const Fill& fill : all<Fill>(page.marks)) CHECK(lies_in(bounds(fill.corners), whole));
    for (const Text& text : all<Text>(page.marks)) {
        CHECK(text.words.size() <= 100);
        CHECK(text.words.find('\n') == std::string::npos);
    }
}

TEST_CASE("What the picture says in words is true to the report") {
    Report report;
    CHECK(counts_words(report) == "0 pieces count.");
    report.pieces = {{.number = {1}, .state = PieceState::counts},
                     {.number = {2}, .state = PieceState::does_not_count},
                     {.number = {3}, .state = PieceState::does_not_count},
                     {.number = {4}, .state = PieceState::in_the_envelope}};
    CHECK(counts_words(report) == "1 piece counts, 2 do not, 1 is in the envelope.");
    CHECK(score_words(1) == "1 point");
    CHECK(score_words(87.5) == "87.5 points");

    Challenge challenge;
    challenge.units = Unit::cm;
    CHECK(measured_words(75, challenge) == "7.5");
    challenge.units = Unit::in;
    challenge.step = {.numerator = 1, .denominator = 4, .unit = Unit::in};
    CHECK(measured_words(10, challenge) == "2 1/2");
    challenge.equilateral_is_isosceles = true;
    challenge.right_within_deg = 0.1;
    CHECK(kinds_words(challenge) ==
          "Here, an isosceles triangle has at least two equal sides. Right means within 0.1 degrees of 90.");
}
