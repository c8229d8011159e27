// SPDX-License-Identifier: MIT
#include "gui/picture/piece_marks.h"

#include "engine/geometry/shape.h"
#include "gui/picture/outline.h"
#include "gui/picture/piece_card.h"
#include "rules/measure.h"
#include "tests/picture/marks_of.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

PieceReport report_on(const Piece& piece, PieceState state = PieceState::counts, std::vector<Rule> broken = {}) {
    return {.number = piece.number, .state = state, .measures = measure(piece.shape, {}), .broken = std::move(broken)};
}

/// Unturned, as the eye sees it: y down.
PieceLook look(const Piece& piece, const PieceReport& report, double px_per_mm = 1, bool flipped = false) {
    std::vector<Vec2> corners = corners_mm(piece.shape, Pose{.flipped = flipped});
    for (Vec2& corner : corners) corner = px_per_mm * Vec2{corner.x, -corner.y};
    return look_of(piece.shape, report, corners);
}

std::vector<Mark> body(PieceLook look) {
    look.mark_size = fitted(look, 1).mark_size;
    std::vector<Mark> marks;
    draw_body(marks, look, 1);
    return marks;
}

/// Strokes that are arcs or squares in a corner, by how many points they have.
std::vector<Stroke> strokes_with(const std::vector<Mark>& marks, bool closed, std::size_t least, std::size_t most) {
    std::vector<Stroke> found;
    for (Stroke& stroke : all<Stroke>(marks))
        if (stroke.closed == closed && stroke.points.size() >= least && stroke.points.size() <= most)
            found.push_back(std::move(stroke));
    return found;
}
std::vector<Stroke> ticks(const std::vector<Mark>& marks) { return strokes_with(marks, false, 2, 2); }
std::vector<Stroke> squares(const std::vector<Mark>& marks) { return strokes_with(marks, false, 3, 3); }
std::vector<Stroke> arcs(const std::vector<Mark>& marks) { return strokes_with(marks, false, 13, 13); }
std::vector<Stroke> outlines(const std::vector<Mark>& marks) { return strokes_with(marks, true, 3, 99); }

}  // namespace

TEST_CASE("A right triangle wears a small square in its right angle") {
    const Piece piece = triangle(1, 100, 80, 60);
    const std::vector<Mark> marks = body(look(piece, report_on(piece)));
    CHECK(fills(marks, palette::right).size() == 1);
    CHECK(arcs(marks).empty());
    REQUIRE(squares(marks).size() == 1);
    // The right angle lies between the sides of 80 and 60, at corner 3: 60^2 / 100 along, 48 down.
    CHECK(distance(middle(squares(marks)[0].points), {36, 48}) < 1.5 * palette::right_angle_px);
    CHECK(ticks(marks).empty());
}

TEST_CASE("An acute triangle wears one arc in its largest angle, an obtuse one two") {
    const Piece acute = triangle(1, 70, 80, 60);
    const std::vector<Mark> marks = body(look(acute, report_on(acute)));
    CHECK(fills(marks, palette::acute).size() == 1);
    REQUIRE(arcs(marks).size() == 1);
    // Opposite the side of 80, which is the second: corner 1.
    CHECK(distance(middle(arcs(marks)[0].points), {0, 0}) < palette::arc_radius_px);

    const Piece obtuse = triangle(2, 110, 70, 60);
    const std::vector<Mark> twice = body(look(obtuse, report_on(obtuse)));
    CHECK(fills(twice, palette::obtuse).size() == 1);
    REQUIRE(arcs(twice).size() == 2);
    const Vec2 corner = look(obtuse, report_on(obtuse)).corners_px[2];
    for (const Stroke& arc : arcs(twice)) CHECK(distance(middle(arc.points), corner) < palette::arc_radius_px);
}

TEST_CASE("Equal sides wear ticks: one on each of two, three on each of three, none on unequal ones") {
    const Piece isosceles = triangle(1, 90, 75, 75);
    const PieceReport report = report_on(isosceles);
    const std::vector<Stroke> two = ticks(body(look(isosceles, report)));
    REQUIRE(two.size() == 2);
    const std::vector<Vec2> corners = look(isosceles, report).corners_px;
    for (const std::size_t equal : {1u, 2u}) {
        const Segment s = side(corners, equal);
        CHECK(std::any_of(two.begin(), two.end(), [&](const Stroke& tick) {
            return distance(middle(tick.points), 0.5 * (s.from + s.to)) < 1e-9;
        }));
    }
    const Piece equilateral = triangle(2, 80, 80, 80);
    CHECK(ticks(body(look(equilateral, report_on(equilateral)))).size() == 9);
    const Piece scalene = triangle(3, 90, 80, 70);
    CHECK(ticks(body(look(scalene, report_on(scalene)))).empty());
}

TEST_CASE("The ruler decides which sides are equal, not the true length") {
    const Piece piece = triangle(1, 90, 75.2, 74.9);
    CHECK(ticks(body(look(piece, report_on(piece)))).size() == 2);
}

TEST_CASE("A mirrored piece wears its marks in the same corner and on the same sides") {
    const Piece right = triangle(1, 100, 80, 60);
    const std::vector<Stroke> square = squares(body(look(right, report_on(right), 1, true)));
    REQUIRE(square.size() == 1);
    CHECK(distance(middle(square[0].points), {-36, 48}) < 1.5 * palette::right_angle_px);

    const Piece isosceles = triangle(2, 70, 70, 110);  // equal: the first and the second side
    const PieceLook mirrored = look(isosceles, report_on(isosceles), 1, true);
    CHECK(signed_area(mirrored.corners_px) > 0);
    std::vector<double> ticked_lengths;
    for (std::size_t i = 0; i < 3; ++i)
        if (mirrored.ticks[i] > 0) ticked_lengths.push_back(length(side(mirrored.corners_px, i)));
    REQUIRE(ticked_lengths.size() == 2);
    for (const double ticked : ticked_lengths) CHECK(ticked == Approx(70));
}

TEST_CASE("A piece that counts has its kind's fill, one ink outline and its number in the middle") {
    const Piece piece = triangle(17, 100, 80, 60);
    const PieceLook l = look(piece, report_on(piece));
    const std::vector<Mark> marks = body(l);
    REQUIRE(outlines(marks).size() == 1);
    CHECK(outlines(marks)[0].colour == palette::ink);
    const Fitted fit = fitted(l, 1);
    REQUIRE(fit.number_at);
    std::vector<Mark> number;
    draw_number(number, l, *fit.number_at, 1);
    REQUIRE(number.size() == 1);  // no cross, no line
    CHECK(lies_in(box_of(texts(number, "17").at(0)), l.corners_px));
}

TEST_CASE("A close call has a question mark behind its number, with room for it") {
    const Piece near = triangle(15, 95, 80, 50);  // 90.9 degrees, by the cosine rule
    const Piece plain = triangle(15, 100, 80, 60);
    const auto written = [](const Piece& piece) {
        std::vector<Mark> number;
        draw_number(number, look(piece, report_on(piece)), {0, 0}, 1);
        return all<Text>(number).at(0).words;
    };
    CHECK(written(near) == "15?");
    CHECK(written(plain) == "15");
    CHECK(number_size(look(near, report_on(near)), 1).x > number_size(look(plain, report_on(plain)), 1).x);
}

TEST_CASE("A piece that counts by the teacher's ruling has a T beside its number") {
    CHECK(number_words({12}, std::nullopt, true) == "12 T");
    CHECK(number_words({12}, std::nullopt) == "12");
}

TEST_CASE("A piece that does not count has no fill, a double outline and a cross beside its number") {
    const Piece piece = triangle(3, 100, 80, 60);
    const PieceLook l = look(piece, report_on(piece, PieceState::does_not_count, {Rule::ground}));
    const std::vector<Mark> marks = body(l);
    CHECK(all<Fill>(marks).empty());
    const std::vector<Stroke> both = outlines(marks);
    REQUIRE(both.size() == 2);
    for (const Vec2 corner : both[1].points) CHECK(contains(both[0].points, corner));

    std::vector<Mark> number;
    draw_number(number, l, {40, 20}, 1);
    const std::vector<Stroke> cross = ticks(number);
    REQUIRE(cross.size() == 2);
    CHECK(distance(middle(cross[0].points), middle(cross[1].points)) < 1e-9);
    CHECK(bounds(cross[0].points).low.x >= box_of(texts(number, "3").at(0)).high.x);

    std::vector<Mark> below;
    draw_plate(below, l, {{40, 20}, std::nullopt}, 1);
    REQUIRE(fills(below, palette::paper).size() == 1);
    CHECK(lies_in(box_of(texts(number, "3").at(0)), all<Fill>(below).at(0).corners));
    for (const Stroke& stroke : cross) CHECK(lies_in(bounds(stroke.points), all<Fill>(below).at(0).corners));
}

TEST_CASE("A piece that is cut off has a broken link at its top besides") {
    const Piece piece = triangle(3, 100, 80, 60);
    const auto with = [&](std::vector<Rule> broken) {
        return body(look(piece, report_on(piece, PieceState::does_not_count, std::move(broken))));
    };
    CHECK(all<Stroke>(with({Rule::cut_off})).size() == all<Stroke>(with({Rule::ground})).size() + 2);
    const Stroke upper = all<Stroke>(with({Rule::cut_off}))[all<Stroke>(with({Rule::ground})).size()];
    CHECK(bounds(upper.points).high.y < 0);  // above the side it should hang by
}

TEST_CASE("Where a piece would hang there is a grey fill, no outline, and its number") {
    const Piece piece = triangle(3, 100, 80, 60);
    PieceLook l = look(piece, report_on(piece));
    l.standing = Standing::would_hang;
    l.chosen = true;
    std::vector<Mark> marks = body(l);
    draw_choice(marks, l, 1);
    CHECK(fills(marks, palette::would_hang).size() == 1);
    CHECK(all<Stroke>(marks).empty());
}

TEST_CASE("What is chosen has a thick outline, what has the keys a second ring outside it") {
    const Piece piece = triangle(3, 100, 80, 60);
    PieceLook l = look(piece, report_on(piece));
    l.chosen = true;
    std::vector<Mark> chosen;
    draw_choice(chosen, l, 1);
    REQUIRE(outlines(chosen).size() == 1);
    CHECK(outlines(chosen)[0].width > 2 * palette::outline_px);
    CHECK(outlines(chosen)[0].points == l.corners_px);

    l.with_keys = true;
    std::vector<Mark> both;
    draw_choice(both, l, 1);
    REQUIRE(outlines(both).size() == 2);
    for (const Vec2 corner : l.corners_px)
        CHECK(contains(shrunk(outlines(both)[1].points, palette::chosen_outline_px), corner));
}

TEST_CASE("Other polygons and cones have a neutral fill and none of the triangles' marks") {
    for (const Piece& piece : {rectangle(1, 60, 40), cone(2, 25, 70)}) {
        const std::vector<Mark> marks = body(look(piece, report_on(piece)));
        CHECK(fills(marks, palette::no_kind).size() == 1);
        CHECK(ticks(marks).empty());
        CHECK(arcs(marks).empty());
        CHECK(squares(marks).empty());
    }
}

TEST_CASE("A number keeps clear of its piece's outline, arcs and ticks, at every size") {
    std::vector<Piece> pieces;
    for (const double first : {60.0, 80.0, 100.0, 125.0, 150.0})
        for (const double second : {50.0, 80.0, 110.0})
            for (const double third : {50.0, 80.0})
                if (first < second + third && second < first + third)
                    pieces.push_back(triangle(11 + static_cast<int>(pieces.size()), first, second, third));
    REQUIRE(pieces.size() > 20);
    for (const Piece& piece : pieces)
        for (const PieceState state : {PieceState::counts, PieceState::does_not_count})
            for (double zoom = 0.1; zoom < 4; zoom *= 1.15) {
                PieceLook l = look(piece, report_on(piece, state, {}), zoom);
                const Fitted fit = fitted(l, 1);
                if (!fit.number_at) continue;
                l.mark_size = fit.mark_size;
                std::vector<Mark> marks;
                draw_body(marks, l, 1);
                std::vector<Mark> number;
                draw_number(number, l, *fit.number_at, 1);
                const Box box = box_of(all<Text>(number).at(0));
                INFO("piece " << piece.number.value << " at " << zoom << " px a mm");
                CHECK(lies_in(box, l.corners_px));
                const Polygon plate{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
                for (const Stroke& stroke : all<Stroke>(marks))
                    CHECK(cut_line(stroke.points, stroke.closed, plate).empty());
            }
}

TEST_CASE("On a large enough piece the marks are as large as they get, on a small one smaller, on a tiny one none") {
    const Piece piece = triangle(1, 80, 80, 80);
    const PieceReport report = report_on(piece);
    CHECK(fitted(look(piece, report, 1), 1).mark_size == 1);
    const double small = fitted(look(piece, report, 0.3), 1).mark_size;
    CHECK(small > 0);
    CHECK(small < 1);
    CHECK(fitted(look(piece, report, 0.05), 1).mark_size == 0);
}

TEST_CASE("Marks give way before the number has to leave its piece") {
    const Piece piece = triangle(8, 80, 80, 80);
    const PieceReport report = report_on(piece);
    double smallest_inside = 1;
    double smallest_beside = 1;
    for (double zoom = 1; zoom > 0.2; zoom -= 0.01) {
        const Fitted fit = fitted(look(piece, report, zoom), 1);
        double& smallest = fit.number_at ? smallest_inside : smallest_beside;
        smallest = std::min(smallest, fit.mark_size);
        if (!fit.number_at) break;  // just too small: its marks may be as large as ever
    }
    CHECK(smallest_inside < smallest_beside);
}

TEST_CASE("A card shows the piece inside its box with its number, however slim the piece") {
    const PixelBox box{10, 20, 200, 90};
    for (const Piece& piece : {triangle(1, 80, 80, 80), triangle(2, 200, 190, 30), triangle(3, 20, 20, 20),
                               rectangle(4, 300, 10), cone(5, 10, 100)}) {
        INFO("piece " << piece.number.value);
        const std::vector<Mark> marks = piece_card(piece.shape, report_on(piece), box, 1);
        const std::vector<Text> number = texts(marks, std::to_string(piece.number.value));
        REQUIRE(number.size() == 1);
        CHECK(lies_in(box_of(number[0]), box));
        for (const Stroke& stroke : all<Stroke>(marks)) CHECK(lies_in(bounds(stroke.points), box));
    }
}

TEST_CASE("Cards of one scale show the larger piece larger") {
    const PixelBox box{0, 0, 400, 400};
    const Piece small = triangle(1, 20, 20, 20);
    const Piece large = triangle(2, 90, 90, 90);
    const auto width = [&](const Piece& piece) {
        const std::vector<Mark> card = piece_card(piece.shape, report_on(piece), box, 1, 2);
        const Box seen = bounds(all<Fill>(card).at(0).corners);
        return seen.high.x - seen.low.x;
    };
    CHECK(width(small) == Approx(40));
    CHECK(width(large) == Approx(180));
}
