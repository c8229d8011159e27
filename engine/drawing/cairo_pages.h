// SPDX-License-Identifier: MIT
#pragma once
// Drawings as PNG, SVG and PDF, through cairo.

#include <string>

#include "engine/drawing/drawing.h"
#include "engine/result.h"

namespace boughwork {

/// The bytes of the file. `pixels_per_unit` scales the picture of a PNG, and is as well the size of
/// one page unit for text hinting; SVG and PDF have one point a unit.
Result<std::string> png_of(const Drawing& drawing, double pixels_per_unit = 1);
Result<std::string> svg_of(const Drawing& drawing);
Result<std::string> pdf_of(const Drawing& drawing);

}  // namespace boughwork
