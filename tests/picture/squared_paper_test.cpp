// SPDX-License-Identifier: MIT
#include "gui/picture/squared_paper.h"

#include <cmath>

#include "tests/picture/marks_of.h"

using namespace boughwork;
using namespace boughwork::testing;

TEST_CASE("At the usual zoom the paper has centimetre squares, or parts of an inch") {
    const Camera camera = usual_camera();
    CHECK(squares(camera, Unit::cm, 1).thin == 1);
    CHECK(squares(camera, Unit::cm, 1).bold == 5);
    CHECK(squares(camera, Unit::mm, 1).thin == 10);
    CHECK(squares(camera, Unit::in, 1).thin == 0.5);
    Camera nearer = camera;
    nearer.px_per_mm = 1.5;
    CHECK(squares(nearer, Unit::in, 1).thin == 0.25);
    CHECK(squares(nearer, Unit::in, 1).bold == 1);
}

TEST_CASE("At every zoom the lines keep apart, bold and labelled lines are lines, and labels keep apart") {
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::in})
        for (const double scale : {1.0, 2.0})
            for (double zoom = least_px_per_mm; zoom <= most_px_per_mm; zoom *= 1.07) {
                Camera camera = usual_camera();
                camera.px_per_mm = zoom;
                const Squares s = squares(camera, unit, scale);
                const double px_per_unit = zoom * to_mm(length_of(unit));
                INFO("unit " << static_cast<int>(unit) << ", " << zoom << " px a mm");
                CHECK(s.thin * px_per_unit >= 6);
                CHECK(std::remainder(s.bold, s.thin) == Approx(0).margin(1e-9));
                CHECK(std::remainder(s.labels, s.thin) == Approx(0).margin(1e-9));

                const std::vector<Text> numbers = all<Text>(rulers(camera, unit, scale));
                for (std::size_t i = 0; i < numbers.size(); ++i)
                    for (std::size_t k = i + 1; k < numbers.size(); ++k)
                        if (overlap(box_of(numbers[i]), box_of(numbers[k])))
                            FAIL("\"" << numbers[i].words << "\" lies on \"" << numbers[k].words << "\"");
            }
}

TEST_CASE("The ruler's numbers stand where the lengths are") {
    const Camera camera = usual_camera();
    const std::vector<Mark> marks = rulers(camera, Unit::cm, 1);
    const std::vector<Text> tens = texts(marks, "10");
    REQUIRE(tens.size() == 2);  // one below, one on the left
    CHECK(tens[0].at.x == Approx(to_px(camera, {100, 0}).x));
    CHECK(tens[1].at.y == Approx(to_px(camera, {0, 100}).y));
    CHECK(texts(marks, "cm").size() == 1);
}

TEST_CASE("Left of the trunk the ruler counts below zero, below the ground it does not") {
    Camera camera = usual_camera();
    camera.centre_mm = {0, 0};
    const std::vector<Mark> marks = rulers(camera, Unit::cm, 1);
    CHECK(texts(marks, "-10").size() == 1);
}

TEST_CASE("Inches on the ruler are mixed fractions") {
    Camera camera = usual_camera();
    camera.px_per_mm = 5;
    camera.centre_mm = {25, 25};
    const std::vector<Mark> marks = rulers(camera, Unit::in, 1);
    CHECK(texts(marks, "1/2").size() == 2);
    CHECK(texts(marks, "1 1/2").size() == 2);
    CHECK(texts(marks, "inch").size() == 1);
}

TEST_CASE("Everything on the paper stays on it, and the rulers beside it") {
    const Camera camera = usual_camera();
    const PixelBox panel = panel_around(camera.view, 1);
    for (const Mark& mark : squared_paper(camera, Unit::cm, 1)) {
        if (const auto* line = std::get_if<Stroke>(&mark)) CHECK(lies_in(bounds(line->points), camera.view));
        if (const auto* fill = std::get_if<Fill>(&mark)) CHECK(lies_in(bounds(fill->corners), camera.view));
    }
    for (const Text& text : all<Text>(rulers(camera, Unit::cm, 1))) CHECK(lies_in(box_of(text), panel));
}

TEST_CASE("A panel has room for the paper and its rulers, to the pixel") {
    for (const double scale : {1.0, 1.5, 2.0}) {
        const PixelBox panel{14, 58, 986, 470};
        const PixelBox view = paper_within(panel, scale);
        CHECK(view.x > panel.x);
        CHECK(view.height < panel.height);
        const PixelBox again = panel_around(view, scale);
        CHECK(again.x == Approx(panel.x));
        CHECK(again.width == Approx(panel.width));
        CHECK(again.height == Approx(panel.height));
    }
}

TEST_CASE("The ground begins at height zero") {
    Camera camera = usual_camera();
    camera.centre_mm = {0, 50};
    const std::vector<Fill> ground = fills(squared_paper(camera, Unit::cm, 1), palette::ground);
    REQUIRE(ground.size() == 1);
    CHECK(bounds(ground[0].corners).low.y == Approx(to_px(camera, {0, 0}).y));
    camera.centre_mm = {0, 5000};
    CHECK(fills(squared_paper(camera, Unit::cm, 1), palette::ground).empty());
}
