// SPDX-License-Identifier: MIT
#pragma once
// Drawings as PNG, SVG and PDF, through cairo.

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/result.h"

namespace boughwork {

/// The bytes of the file, the same for the same drawing: no dates, no counters. `pixels_per_unit`
/// scales the picture of a PNG; SVG and PDF have one point a unit. A Problem when there is no memory
/// for so large a picture, or a text is not UTF-8.
Result<std::string> png_of(const Drawing& drawing, double pixels_per_unit = 1);
Result<std::string> svg_of(const Drawing& drawing);
Result<std::string> pdf_of(const Drawing& drawing);

/// A PNG of pixels as they are on a screen: red, green, blue and a byte that is not looked at, row by row from the top.
Result<std::string> png_of_pixels(int width, int height, const std::vector<std::uint8_t>& rgba);

}  // namespace boughwork
