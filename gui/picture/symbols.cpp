// SPDX-License-Identifier: MIT
#include "gui/picture/symbols.h"

#include <cmath>

#include "engine/geometry/tolerance.h"
#include "gui/picture/palette.h"

namespace boughwork {
namespace {

constexpr int round_parts = 20;

/// From the middle, to the edge of the symbol's square at 1; y down.
Vec2 at_angle(double radius, double angle_rad) { return {radius * std::sin(angle_rad), -radius * std::cos(angle_rad)}; }

class Symbol {
public:
    Symbol(Vec2 middle, double size) : middle_(middle), half_(size / 2) {}

    std::vector<Mark> marks;

    /// Convex, filled.
    void fill(std::vector<Vec2> corners) {
        for (Vec2& corner : corners) corner = middle_ + half_ * corner;
        marks.push_back(Fill{std::move(corners), palette::ink});
    }
    void disc(Vec2 at, double radius) {
        std::vector<Vec2> corners;
        for (int i = 0; i < round_parts; ++i) corners.push_back(at + at_angle(radius, 2 * pi * i / round_parts));
        fill(std::move(corners));
    }
    void line(Vec2 from, Vec2 to) {
        marks.push_back(Stroke{{middle_ + half_ * from, middle_ + half_ * to}, palette::ink, 0.2 * half_});
    }

private:
    Vec2 middle_;
    double half_;
};

void draw_star(Symbol& symbol) {
    std::vector<Vec2> core;
    for (int i = 0; i < 5; ++i) {
        const Vec2 left = at_angle(0.42, 2 * pi * (i - 0.5) / 5);
        symbol.fill({left, at_angle(1, 2 * pi * i / 5), at_angle(0.42, 2 * pi * (i + 0.5) / 5)});
        core.push_back(left);
    }
    symbol.fill(core);
}

/// Between two circles, in upright strips that are convex each.
void draw_moon(Symbol& symbol) {
    const auto outer = [](double y) { return -std::sqrt(std::max(0.0, 1 - y * y)); };
    const auto inner = [](double y) { return 0.85 - std::sqrt(std::max(0.0, 1.7225 - y * y)); };
    for (int i = 0; i < round_parts; ++i) {
        const double top = -1 + 2.0 * i / round_parts;
        const double bottom = -1 + 2.0 * (i + 1) / round_parts;
        symbol.fill({{outer(top) + 0.25, top},
                     {inner(top) + 0.25, top},
                     {inner(bottom) + 0.25, bottom},
                     {outer(bottom) + 0.25, bottom}});
    }
}

void draw_sun(Symbol& symbol) {
    symbol.disc({0, 0}, 0.5);
    for (int i = 0; i < 8; ++i) symbol.line(at_angle(0.66, pi * i / 4), at_angle(1, pi * i / 4));
}

void draw_leaf(Symbol& symbol) {
    std::vector<Vec2> corners;
    const auto bow = [&](double side) {
        for (int i = 0; i < round_parts / 2; ++i) {
            const double along = side * (2.0 * i / (round_parts / 2.0) - 1);
            corners.push_back({side * 0.5 * (1 - along * along), along});
        }
    };
    bow(1);
    bow(-1);
    for (Vec2& corner : corners) corner = turned_ccw(corner, pi / 4) + Vec2{0.12, -0.12};
    symbol.fill(corners);
    symbol.line({-0.9, 0.9}, {-0.4, 0.4});
}

void draw_drop(Symbol& symbol) {
    symbol.disc({0, 0.35}, 0.62);
    symbol.fill({{0, -1}, {0.565, 0.1}, {-0.565, 0.1}});
}

void draw_heart(Symbol& symbol) {
    symbol.disc({-0.44, -0.3}, 0.5);
    symbol.disc({0.44, -0.3}, 0.5);
    symbol.fill({{-0.84, 0}, {0, -0.35}, {0.84, 0}, {0, 0.95}});
}

}  // namespace

std::vector<Mark> symbol_marks(const std::string& name, Vec2 middle, double size) {
    Symbol symbol(middle, size);
    if (name == "star") draw_star(symbol);
    if (name == "moon") draw_moon(symbol);
    if (name == "sun") draw_sun(symbol);
    if (name == "leaf") draw_leaf(symbol);
    if (name == "drop") draw_drop(symbol);
    if (name == "heart") draw_heart(symbol);
    return symbol.marks;
}

}  // namespace boughwork
