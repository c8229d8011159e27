// SPDX-License-Identifier: MIT
#include "gui/window/card_pictures.h"

#include <array>

#include "gui/picture/palette.h"

namespace boughwork {
namespace {

/// Draws on a little sheet of 40 by 40, y down, scaled into the box.
class Sketch {
public:
    Sketch(const PixelBox& box, double scale) : scale_(scale) {
        grown_ = std::min(box.width, box.height) / 40;
        corner_ = {box.x + (box.width - 40 * grown_) / 2, box.y + (box.height - 40 * grown_) / 2};
    }

    void shape(const std::vector<Vec2>& corners, Colour fill) {
        marks.push_back(Fill{placed(corners), fill});
        marks.push_back(Stroke{placed(corners), palette::ink, 1.4 * scale_, true});
    }
    void line(const std::vector<Vec2>& points, Colour colour = palette::ink, double width = 1.4) {
        marks.push_back(Stroke{placed(points), colour, width * scale_, false});
    }
    void branch(Vec2 from, Vec2 to) { line({from, to}, palette::wood, 4); }
    void trunk(double x) { line({{x, 2}, {x, 37}}, palette::trunk, 6); }
    void ground() { line({{1, 38}, {39, 38}}, palette::ink, 2); }

    std::vector<Mark> marks;

private:
    std::vector<Vec2> placed(std::vector<Vec2> points) const {
        for (Vec2& point : points) point = corner_ + grown_ * point;
        return points;
    }
    double scale_;
    double grown_ = 1;
    Vec2 corner_;
};

void draw_kind(Sketch& sketch, Kind kind) {
    switch (kind) {
        case Kind::right:
            sketch.shape({{5, 6}, {36, 6}, {5, 34}}, palette::right);
            sketch.line({{12, 6}, {12, 13}, {5, 13}});
            return;
        case Kind::obtuse:
            sketch.shape({{12, 10}, {38, 10}, {2, 31}}, palette::obtuse);
            sketch.line({{18, 10}, {16, 15}, {9, 15}});
            sketch.line({{22, 10}, {19, 18}, {6, 19}});
            return;
        case Kind::acute:
            sketch.shape({{4, 6}, {36, 6}, {17, 36}}, palette::acute);
            sketch.line({{13, 30}, {17, 27}, {22, 29}});
            return;
        case Kind::equilateral:
            sketch.shape({{3, 6}, {37, 6}, {20, 35}}, palette::acute);
            for (const double x : {17.0, 20.0, 23.0}) sketch.line({{x, 2}, {x, 10}});
            for (const double d : {-2.6, 0.0, 2.6}) {
                sketch.line({{8 + d * 0.5, 22.5 + d * 0.87}, {15 + d * 0.5, 18.5 + d * 0.87}});
                sketch.line({{32 - d * 0.5, 22.5 + d * 0.87}, {25 - d * 0.5, 18.5 + d * 0.87}});
            }
            return;
        case Kind::isosceles:
            sketch.shape({{7, 5}, {33, 5}, {20, 37}}, palette::no_kind);
            sketch.line({{9, 22}, {17, 19}});
            sketch.line({{31, 22}, {23, 19}});
            return;
        case Kind::scalene: sketch.shape({{3, 8}, {38, 5}, {12, 34}}, palette::no_kind); return;
    }
}

void draw_rule(Sketch& sketch, CardPicture picture) {
    const Colour blue = palette::acute;
    const Colour yellow = palette::right;
    switch (picture) {
        case CardPicture::whole_side:
            sketch.shape({{7, 10}, {33, 10}, {20, 34}}, blue);
            sketch.branch({1, 8}, {39, 8});
            return;
        case CardPicture::chain:
            sketch.shape({{8, 9}, {34, 9}, {8, 24}}, blue);
            sketch.shape({{8, 24}, {34, 9}, {31, 34}}, yellow);
            sketch.branch({1, 7}, {39, 7});
            return;
        case CardPicture::no_chain:
            sketch.shape({{8, 9}, {34, 9}, {8, 24}}, blue);
            sketch.line({{8, 24}, {34, 9}, {31, 34}, {8, 24}});
            sketch.line({{18, 14}, {36, 34}}, palette::unmet, 2.6);
            sketch.branch({1, 7}, {39, 7});
            return;
        case CardPicture::neighbours:
            sketch.shape({{2, 10}, {18, 10}, {10, 31}}, blue);
            sketch.shape({{22, 10}, {38, 10}, {30, 31}}, yellow);
            sketch.branch({1, 8}, {39, 8});
            return;
        case CardPicture::off_the_ground:
            sketch.shape({{14, 9}, {34, 9}, {24, 27}}, blue);
            sketch.trunk(5);
            sketch.branch({6, 7}, {39, 7});
            sketch.ground();
            return;
        case CardPicture::size:
            sketch.shape({{5, 12}, {35, 12}, {18, 34}}, blue);
            sketch.line({{5, 5}, {35, 5}});
            sketch.line({{5, 2}, {5, 8}});
            sketch.line({{35, 2}, {35, 8}});
            return;
        case CardPicture::pieces:
            sketch.shape({{1, 10}, {13, 10}, {7, 24}}, blue);
            sketch.shape({{14, 10}, {26, 10}, {20, 24}}, yellow);
            sketch.shape({{27, 10}, {39, 10}, {33, 24}}, palette::obtuse);
            sketch.branch({0, 8}, {40, 8});
            return;
        case CardPicture::branches:
            sketch.trunk(20);
            sketch.branch({22, 8}, {39, 5});
            sketch.branch({1, 13}, {18, 16});
            sketch.branch({22, 24}, {38, 24});
            sketch.ground();
            return;
        case CardPicture::on_a_branch:
            sketch.shape({{9, 16}, {21, 16}, {15, 29}}, blue);
            sketch.shape({{24, 16}, {36, 16}, {30, 29}}, yellow);
            sketch.trunk(3);
            sketch.branch({4, 14}, {39, 14});
            return;
        case CardPicture::sheets:
            sketch.shape({{12, 3}, {36, 3}, {36, 33}, {12, 33}}, palette::paper);
            sketch.shape({{5, 8}, {29, 8}, {29, 38}, {5, 38}}, palette::paper);
            return;
        case CardPicture::after_settling:
            sketch.trunk(4);
            sketch.line({{6, 8}, {16, 8.6}, {26, 11}, {35, 16}, {39, 19}}, palette::wood, 4);
            sketch.line({{6, 5}, {39, 5}}, palette::quiet_text, 1);
            sketch.shape({{18, 11}, {32, 17.5}, {20, 30}}, blue);
            sketch.ground();
            return;
        case CardPicture::no_two_alike:
            sketch.shape({{2, 9}, {21, 9}, {11, 31}}, blue);
            sketch.shape({{22, 9}, {39, 9}, {22, 36}}, yellow);
            return;
        case CardPicture::over_the_limit:
            sketch.shape({{3, 10}, {17, 10}, {10, 26}}, blue);
            sketch.line({{23, 10}, {37, 10}, {30, 26}, {23, 10}}, palette::ink, 1.4);
            sketch.line({{22, 28}, {38, 8}}, palette::unmet, 2.4);
            sketch.branch({0, 8}, {40, 8});
            return;
        case CardPicture::kind: return;
    }
}

}  // namespace

std::vector<Mark> card_picture(const PictureCard& card, const PixelBox& box, double scale) {
    Sketch sketch(box, scale);
    if (card.kind) {
        draw_kind(sketch, *card.kind);
    } else {
        draw_rule(sketch, card.picture);
    }
    return std::move(sketch.marks);
}

std::vector<Mark> sign(bool met, const PixelBox& box, double scale) {
    const double r = std::min(box.width, box.height) / 2;
    const Vec2 m{box.x + box.width / 2, box.y + box.height / 2};
    const auto at = [&](double x, double y) { return m + Vec2{x * r, y * r}; };
    if (met) return {Stroke{{at(-0.9, 0.05), at(-0.3, 0.7), at(0.9, -0.7)}, palette::met, 3.4 * scale, false}};
    return {Stroke{{at(-0.7, -0.7), at(0.7, 0.7)}, palette::unmet, 3.4 * scale, false},
            Stroke{{at(-0.7, 0.7), at(0.7, -0.7)}, palette::unmet, 3.4 * scale, false}};
}

}  // namespace boughwork
