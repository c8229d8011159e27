// SPDX-License-Identifier: MIT
#include "gui/picture/contrast.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "gui/picture/palette.h"

using namespace boughwork;
using palette::rgb;

TEST_CASE("Contrast is worked out as WCAG 2.2 does") {
    // Definitions of relative luminance and contrast ratio: WCAG 2.2, W3C Recommendation.
    const Colour white = rgb(0xFFFFFF);
    const Colour black = rgb(0x000000);
    CHECK(contrast(white, black) == Approx(21).epsilon(1e-12));
    CHECK(contrast(white, white) == 1);
    CHECK(contrast(black, white) == contrast(white, black));

    // Worked: the W3C's techniques G183 (printed there as 3.9) and G207 (3.4).
    CHECK(contrast(rgb(0x3366CC), black) == Approx(3.9132).margin(5e-5));
    CHECK(contrast(rgb(0xE3660E), white) == Approx(3.4019).margin(5e-5));
    // Recomputed apart from this project from the same definition.
    CHECK(contrast(rgb(0x949494), white) == Approx(3.0335).margin(5e-5));
    CHECK(contrast(rgb(0x9D9D9D), white) == Approx(2.7120).margin(5e-5));
    CHECK(contrast(rgb(0x767676), white) == Approx(4.5422).margin(5e-5));
    CHECK(contrast(rgb(0x777777), white) == Approx(4.4781).margin(5e-5));
}

TEST_CASE("The yellow, orange and sky blue that the fills come from need an ink outline on white") {
    // Okabe and Ito, "Color Universal Design" (2002, 2008); the ratios recomputed apart from this project.
    CHECK(contrast(rgb(0xE69F00), rgb(0xFFFFFF)) == Approx(2.25).margin(0.005));
    CHECK(contrast(rgb(0x56B4E9), rgb(0xFFFFFF)) == Approx(2.31).margin(0.005));
    CHECK(contrast(rgb(0xF0E442), rgb(0xFFFFFF)) == Approx(1.32).margin(0.005));
}

TEST_CASE("Every colour that has to be told from another can be") {
    for (const palette::Pair& pair : palette::pairs) {
        INFO(pair.what);
        CHECK(contrast(pair.on_top, pair.below) >= pair.least_contrast);
    }
}

TEST_CASE("Every kind's fill is among the pairs that are checked") {
    for (const Kind kind : {Kind::right, Kind::acute, Kind::obtuse}) {
        const Colour fill = palette::fill_of(kind);
        CHECK(std::any_of(std::begin(palette::pairs), std::end(palette::pairs), [&](const palette::Pair& pair) {
            return pair.on_top == palette::ink && pair.below == fill && pair.least_contrast >= 4.5;
        }));
    }
}

TEST_CASE("A grey printer tells the three fills apart, and from the paper") {
    // CIE 1976 L*, from memory: 0, 100, and 53.585 for the middle grey of sRGB, 119 of 255 being 50.03.
    CHECK(grey_lightness(rgb(0x000000)) == Approx(0).margin(1e-9));
    CHECK(grey_lightness(rgb(0xFFFFFF)) == Approx(100).margin(1e-9));
    CHECK(grey_lightness(rgb(0x777777)) == Approx(50.03).margin(0.01));

    constexpr double least_difference = 5;  // twice what the eye just notices side by side (common practice, no source)
    const double fills[] = {grey_lightness(palette::obtuse), grey_lightness(palette::acute),
                            grey_lightness(palette::right), grey_lightness(palette::paper)};
    for (std::size_t i = 0; i + 1 < std::size(fills); ++i) CHECK(fills[i] + least_difference <= fills[i + 1]);
}
