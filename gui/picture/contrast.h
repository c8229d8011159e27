// SPDX-License-Identifier: MIT
#pragma once
// How well one colour is told from another.

#include "engine/drawing/drawing.h"

namespace boughwork {

/// 0 (black) to 1 (white), as WCAG 2.2 defines it; alpha is not looked at.
double relative_luminance(Colour colour);

/// WCAG 2.2: 1 (the same) to 21 (black and white), in either order. Never rounded.
double contrast(Colour a, Colour b);

/// How light a grey printer prints it, 0 to 100 in even steps for the eye: L* of CIE 1976.
double grey_lightness(Colour colour);

}  // namespace boughwork
