// SPDX-License-Identifier: MIT
// Saves pictures of every state of the page, for people to look at.
#include "tests/window/driven_window.h"

using namespace boughwork;

TEST_CASE("the page at several sizes and scales") {
    struct Size {
        int width, height;
        double scale;
    };
    const Size size = GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1}, Size{2560, 1600, 1});
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.save_picture("page_" + std::to_string(size.width) + "_at_" + std::to_string(static_cast<int>(size.scale)));
    CHECK(it.window().layout().scale == size.scale);
}
