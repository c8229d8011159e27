// SPDX-License-Identifier: MIT
#include "gui/window/draw_list_painter.h"

#include <imgui.h>

#include <cmath>

namespace boughwork {
namespace {

ImVec2 on_screen(Vec2 place_px) { return {static_cast<float>(place_px.x), static_cast<float>(place_px.y)}; }

std::vector<ImVec2> on_screen(const std::vector<Vec2>& places_px) {
    std::vector<ImVec2> places;
    places.reserve(places_px.size());
    for (const Vec2 place : places_px) places.push_back(on_screen(place));
    return places;
}

ImU32 packed(Colour c) { return IM_COL32(c.red, c.green, c.blue, c.alpha); }

struct Painter {
    ImDrawList& list;
    Lettering& lettering;

    void operator()(const Fill& fill) const {
        if (fill.corners.size() < 3) return;
        const std::vector<ImVec2> corners = on_screen(fill.corners);
        // An anti-aliased edge would show as a seam between shapes that share it.
        const ImDrawListFlags flags = list.Flags;
        list.Flags &= ~ImDrawListFlags_AntiAliasedFill;
        list.AddConvexPolyFilled(corners.data(), static_cast<int>(corners.size()), packed(fill.colour));
        list.Flags = flags;
    }

    void operator()(const Stroke& stroke) const {
        if (stroke.points.size() < 2) return;
        std::vector<ImVec2> points = on_screen(stroke.points);
        if (points.size() == 2) sharpen(points[0], points[1], stroke.width);
        list.AddPolyline(points.data(), static_cast<int>(points.size()), packed(stroke.colour),
                         stroke.closed ? ImDrawFlags_Closed : ImDrawFlags_None, static_cast<float>(stroke.width));
    }

    void operator()(const Text& text) const {
        lettering.write(list, text.at, text.words, text.size, text.colour, text.align);
    }

    /// A level or upright line lies on whole pixels, or it would be two pale pixels wide.
    static void sharpen(ImVec2& from, ImVec2& to, double width) {
        const float half = std::fmod(std::round(width), 2.0) == 1.0 ? 0.5F : 0.0F;
        if (from.x == to.x) from.x = to.x = std::floor(from.x) + half;
        if (from.y == to.y) from.y = to.y = std::floor(from.y) + half;
    }
};

}  // namespace

void paint(ImDrawList& list, const std::vector<Mark>& marks, Lettering& lettering) {
    for (const Mark& mark : marks) std::visit(Painter{list, lettering}, mark);
}

}  // namespace boughwork
