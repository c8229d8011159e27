// SPDX-License-Identifier: MIT
#pragma once
// From millimetres in the plan to pixels of the picture and back. Pure values and functions.

#include "engine/geometry/polygon.h"
#include "engine/vec.h"

namespace boughwork {

/// A rectangle of pixels, y down.
struct PixelBox {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    friend bool operator==(const PixelBox&, const PixelBox&) = default;
};

/// Which place of the plan lies in the middle of the view, and how large a millimetre is.
struct Camera {
    Vec2 centre_mm;
    double px_per_mm = 1;
    PixelBox view;
    friend bool operator==(const Camera&, const Camera&) = default;
};

inline constexpr double least_px_per_mm = 0.05;
inline constexpr double most_px_per_mm = 40;

Vec2 to_px(const Camera& camera, Vec2 place_mm);
Vec2 to_mm(const Camera& camera, Vec2 place_px);

/// The view that shows all of `box`, with `margin_px` around it.
Camera showing(const Box& box_mm, const PixelBox& view, double margin_px);
/// `factor` times as large, the place under `fixed_px` staying where it is; kept within the limits.
Camera zoomed(const Camera& camera, double factor, Vec2 fixed_px);
Camera panned(const Camera& camera, Vec2 by_px);

}  // namespace boughwork
