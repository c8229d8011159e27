// SPDX-License-Identifier: MIT
#include "gui/window/layout.h"

#include <catch2/catch.hpp>
#include <vector>

#include "tests/window/driven_window.h"

using namespace boughwork;

namespace {

bool apart(const PixelBox& a, const PixelBox& b) {
    return a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
}

}  // namespace

TEST_CASE("at every size and scale everything has its place, inside the page and beside the rest") {
    for (const double width : {1024, 1280, 1366, 1600, 1920, 2560})
        for (const double height : {700, 768, 800, 1080, 1600})
            for (const double scale : {1.0, 1.25, 1.5, 2.0}) {
                const Layout layout = layout_of(width, height, scale);
                INFO(width << " x " << height << " at " << scale);
                const std::vector<PixelBox> boxes = {layout.title,   layout.pages, layout.tabs,  layout.commands,
                                                     layout.paper,   layout.strip, layout.score, layout.envelope,
                                                     layout.referee, layout.cards};
                for (std::size_t i = 0; i < boxes.size(); ++i) {
                    CHECK(boxes[i].x >= 0);
                    CHECK(boxes[i].y >= 0);
                    CHECK(boxes[i].x + boxes[i].width <= width);
                    CHECK(boxes[i].y + boxes[i].height <= height);
                    for (std::size_t j = 0; j < i; ++j) CHECK(apart(boxes[i], boxes[j]));
                }
                CHECK(layout.paper.width >= layout.px(600));
                CHECK(layout.paper.height >= layout.px(320));
                CHECK(layout.tabs.width >= layout.px(280));
                CHECK(layout.envelope.height >= layout.px(240));
            }
}

TEST_CASE("the scale is what was asked for, unless the window is too small for it") {
    CHECK(layout_of(2560, 1600, 2).scale == 2);
    CHECK(layout_of(1280, 800, 1).scale == 1);
    CHECK(layout_of(1280, 800, 2).scale == Approx(800.0 / 690));
    CHECK(layout_of(1024, 700, 2).scale == 1);
    CHECK(layout_of(800, 600, 2).scale == 1);
    CHECK(layout_of(9000, 9000, 3).scale == 2);
}

TEST_CASE("no line ends between a number and its unit, unless there is no other place") {
    DrivenWindow it;
    const Lettering& lettering = it.window().widgets().lettering();
    const std::string words = "Piece 4 and piece 5 lie over each other by 3.8 mm; move one of them 12 cm away.";
    for (double width = lettering.width_px("other by 3.8 mm;", Face::body); width < 900; width += 5)
        for (const std::string& line : lettering.lines(words, Face::body, width, 20).words) {
            INFO(width << ": " << line);
            CHECK(line.rfind("mm", 0) != 0);
            CHECK(line.rfind("cm", 0) != 0);
            CHECK(lettering.width_px(line, Face::body) <= width);
        }
    const double narrow = lettering.width_px("10 c", Face::body);
    CHECK(lettering.lines("10 cm", Face::body, narrow, 2).words == std::vector<std::string>{"10", "cm"});
}
