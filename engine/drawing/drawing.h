// SPDX-License-Identifier: MIT
#pragma once
// A picture or a printed page as a value: a size and marks. The screen, and cairo for PNG, SVG and
// PDF, each draw it. The page's own units (px on a screen, pt on paper), x to the right, y DOWN.

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "engine/vec.h"

namespace boughwork {

/// sRGB, 0 to 255; alpha 255 is opaque.
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    std::uint8_t alpha = 255;
    friend bool operator==(Colour, Colour) = default;
};

/// A convex polygon, filled.
struct Fill {
    std::vector<Vec2> corners;
    Colour colour;
};

/// A line through points.
struct Stroke {
    std::vector<Vec2> points;
    Colour colour;
    double width = 1;
    bool closed = false;
};

enum class TextAlign { left, centre, right };

/// One line of text; `at` is the middle of its height (of its capitals), at its left, centre or right.
struct Text {
    Vec2 at;
    std::string words;
    double size = 12;  ///< Of the face's em, in the page's units.
    Colour colour;
    TextAlign align = TextAlign::centre;
};

using Mark = std::variant<Fill, Stroke, Text>;

struct Drawing {
    double width = 0;
    double height = 0;
    Colour paper;
    std::vector<Mark> marks;  ///< Drawn in order.
};

}  // namespace boughwork
