// SPDX-License-Identifier: MIT
#include "gui/picture/finding_mark.h"

#include "gui/picture/outline.h"
#include "gui/picture/palette.h"

namespace boughwork {
namespace {

constexpr double ring_px = 14;
constexpr double bar_px = 3;
constexpr double stop_px = 12;

/// On a paper edge, so that they are seen on any fill and on wood.
void draw_edged(std::vector<Mark>& marks, const std::vector<Stroke>& strokes, double scale) {
    for (Stroke edge : strokes) {
        edge.colour = palette::paper;
        edge.width += 3 * scale;
        marks.push_back(std::move(edge));
    }
    marks.insert(marks.end(), strokes.begin(), strokes.end());
}

}  // namespace

void draw_bar(std::vector<Mark>& marks, Vec2 from, Vec2 to, Colour colour, double scale) {
    if (distance(from, to) < 1) {
        marks.push_back(Fill{circle(from, 1.2 * bar_px * scale), colour});
        return;
    }
    const Vec2 half_stop = 0.5 * stop_px * scale * quarter_turned_ccw(unit(to - from));
    std::vector<Stroke> strokes{{{from, to}, colour, bar_px * scale}};
    for (const Vec2 end : {from, to}) strokes.push_back({{end - half_stop, end + half_stop}, colour, bar_px * scale});
    draw_edged(marks, strokes, scale);
}

void draw_finding(std::vector<Mark>& marks, const std::vector<Vec2>& where_px, double scale) {
    if (where_px.empty()) return;
    const Vec2 from = where_px.front();
    const Vec2 to = where_px.back();
    if (distance(from, to) > 2 * ring_px * scale) {
        draw_bar(marks, from, to, palette::finding, scale);
        return;
    }
    draw_edged(marks, {{circle(0.5 * (from + to), ring_px * scale), palette::finding, bar_px * scale, true}}, scale);
}

}  // namespace boughwork
