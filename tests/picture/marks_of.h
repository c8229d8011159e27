// SPDX-License-Identifier: MIT
#pragma once
// Questions to a drawing, for tests.

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/geometry/polygon.h"
#include "gui/picture/palette.h"
#include "gui/session/camera.h"

namespace boughwork::testing {

template <class T>
std::vector<T> all(const std::vector<Mark>& marks) {
    std::vector<T> found;
    for (const Mark& mark : marks)
        if (const T* one = std::get_if<T>(&mark)) found.push_back(*one);
    return found;
}

inline std::vector<Fill> fills(const std::vector<Mark>& marks, Colour colour) {
    std::vector<Fill> found;
    for (Fill& fill : all<Fill>(marks))
        if (fill.colour == colour) found.push_back(std::move(fill));
    return found;
}

inline std::vector<Text> texts(const std::vector<Mark>& marks, const std::string& words) {
    std::vector<Text> found;
    for (Text& text : all<Text>(marks))
        if (text.words == words) found.push_back(std::move(text));
    return found;
}

inline Vec2 middle(const std::vector<Vec2>& points) {
    const Box box = bounds(points);
    return 0.5 * (box.low + box.high);
}

/// Where a text's digits or letters are: wider than they are drawn rather than narrower.
inline Box box_of(const Text& text) {
    const double width = text.size * palette::digit_width * static_cast<double>(text.words.size());
    const double left = text.align == TextAlign::left     ? text.at.x
                        : text.align == TextAlign::centre ? text.at.x - width / 2
                                                          : text.at.x - width;
    const double half_height = 0.5 * palette::capital_height * text.size;
    return {{left, text.at.y - half_height}, {left + width, text.at.y + half_height}};
}

inline bool lies_in(const Box& box, const PixelBox& view) {
    return box.low.x >= view.x && box.low.y >= view.y && box.high.x <= view.x + view.width &&
           box.high.y <= view.y + view.height;
}

inline bool lies_in(const Box& box, const Polygon& convex) {
    const std::vector<Vec2> corners{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
    return std::all_of(corners.begin(), corners.end(), [&](Vec2 corner) { return contains(convex, corner); });
}

inline bool overlap(const Box& a, const Box& b) { return within_gap(a, b, -1e-6); }

/// The camera of a window's paper, 1 px a millimetre.
inline Camera usual_camera() {
    return {.centre_mm = {200, 300}, .px_per_mm = 1, .view = {.x = 54, .y = 0, .width = 900, .height = 500}};
}

}  // namespace boughwork::testing
