// SPDX-License-Identifier: MIT
#include "gui/picture/piece_card.h"

#include <algorithm>

#include "engine/geometry/shape.h"
#include "gui/picture/label_places.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_marks.h"

namespace boughwork {

std::vector<Vec2> corners_within(const Shape& shape, const PixelBox& box, double margin_px,
                                 double no_larger_px_per_mm) {
    std::vector<Vec2> corners = corners_mm(shape);
    for (Vec2& corner : corners) corner.y = -corner.y;
    const Box extent = bounds(corners);
    const double px_per_mm =
        std::max(0.0, std::min({(box.width - 2 * margin_px) / (extent.high.x - extent.low.x),
                                (box.height - 2 * margin_px) / (extent.high.y - extent.low.y), no_larger_px_per_mm}));
    const Vec2 middle_px{box.x + box.width / 2, box.y + box.height / 2};
    const Vec2 middle_mm = 0.5 * (extent.low + extent.high);
    for (Vec2& corner : corners) corner = middle_px + px_per_mm * (corner - middle_mm);
    return corners;
}

std::vector<Mark> piece_drawn(const Shape& shape, const PieceReport& report, std::vector<Vec2> corners_px,
                              const PixelBox& box, double scale) {
    PieceLook look = look_of(shape, report, std::move(corners_px));
    const Fitted fit = fitted(look, scale);
    look.mark_size = fit.mark_size;
    std::vector<Mark> marks;
    draw_body(marks, look, scale);
    if (look.number == PieceNumber{}) return marks;
    LabelPlace number{.at = fit.number_at.value_or(Vec2{}), .leader = std::nullopt};
    if (!fit.number_at) number = LabelPlaces({look.corners_px}, {}, box).beside(0, number_size(look, scale), scale);
    draw_plate(marks, look, number, scale);
    draw_number(marks, look, number.at, scale);
    return marks;
}

std::vector<Mark> piece_card(const Shape& shape, const PieceReport& report, const PixelBox& box, double scale,
                             double no_larger_px_per_mm) {
    const double margin = 8 * scale;  // for ticks, which cross their side
    return piece_drawn(shape, report, corners_within(shape, box, margin, no_larger_px_per_mm), box, scale);
}

}  // namespace boughwork
